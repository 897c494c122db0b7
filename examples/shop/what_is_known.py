"""What was ever measured near the steels on the list: whose numbers can be believed?

Before the shop believes a table it asks how the same file does on published
measurements of the steels most like it, and whether there are any.
"""

import textwrap

import gibbsteel as gs

LIST = (
    (gs.Steel(C=0.86, Cr=4.2, Mo=5.0, W=6.3, V=1.9, Mn=0.3, Si=0.3, name="M2"), 1210),
    (gs.Steel(C=1.52, Cr=11.8, Mo=0.8, V=0.8, Mn=0.3, Si=0.3, name="D2"), 1020),
    (gs.Steel(C=1.05, Cr=16.8, Mo=0.5, Mn=0.5, Si=0.5, name="440C"), 1050),
    (gs.Steel(C=0.55, Cr=4.5, Mo=2.75, W=2.0, V=1.0, name="punch heat 7"), 1120),
    (gs.Steel(C=2.3, Cr=14.0, Mo=1.0, V=9.0, Mn=0.5, name="9V powder steel"), 1120),
)


def overview(found: list[gs.Evidence]) -> None:
    print("steel            soak C   nearest measured steel      away   met")
    for one in found:
        row = one.rows[0]
        print(
            f"{one.steel:16s} {one.celsius:6.0f}   {row.steel:25s} {one.nearest:5.1f}"
            f"   {one.met} of {one.computed}"
        )
    print("Up to 1 away: measured on steels of this kind; up to 3: on related ones.")
    print()


def main() -> None:
    found = [steel.evidence(celsius=celsius) for steel, celsius in LIST]
    overview(found)
    for one in found[3:]:
        print(textwrap.fill(repr(one)[1:-1], 78))
    print()
    print(found[2])


if __name__ == "__main__":
    main()
