"""0.68C-13Cr strip from 1000 to 1100 C: hardness and chromium left for corrosion.

The shop cuts spring fingers from stainless strip; they are hardened between plates.
"""

import _page as page
import gibbsteel as gs

STEEL = gs.Steel({"C": 0.68, "Cr": 13.0, "Mn": 0.7, "Si": 0.4}, name="0.68C-13Cr strip")


def main() -> None:
    page.heading("0.68C-13Cr strip, between plates to 20 C")
    print("soak C   carbide vol%   matrix C   matrix Cr   Ms C   austenite vol%   HRC")
    rows = []
    for celsius in range(1000, 1101, 10):
        state = STEEL.soak(celsius=celsius)
        quenched = state.hardening(coldest_celsius=20)
        rows.append((celsius, state, quenched))
        matrix = state.matrix.weight_percent
        print(
            f"{celsius:6d} {state.carbide_volume_percent:14.1f} {matrix['C']:10.2f} "
            f"{matrix['Cr']:11.1f} {quenched.martensite_start.value:6.0f} "
            f"{quenched.retained_austenite.value:16.0f} "
            f"{quenched.hardness_hrc.value:5.1f}"
        )
    peak, _, best = max(rows, key=lambda row: row[2].hardness_hrc.value)
    print()
    low_carbon = (
        "the file's matrix carbon is up to 0.2 wt% low in 13 to 17Cr stainless\n"
        "    grades (warning 310), and hardness and austenite follow it"
    )
    page.compared(
        "peak hardness", best.hardness_hrc.value, "HRC", (61, 64), why=low_carbon
    )
    page.compared(
        "retained austenite where the hardness peaks",
        best.retained_austenite.value,
        "vol%",
        (10, 20),
        source="peak at about 15 %: producer's statement, from memory",
        why=low_carbon,
    )
    page.compared("soak of the peak", peak, "C", (1040, 1080), digits=0, why=low_carbon)
    print()
    for warning in rows[0][1].warnings:
        print(f"! [{warning.code}] {warning.text}")
    print(page.CAUTION)


if __name__ == "__main__":
    main()
