"""Two punch steels, soaked from 1000 to 1200 C: which carbides, and what is left.

A small cold-heading tool shop chooses a steel for its punches. Heat 7 is of the
matrix-style kind (little carbide, tough), heat 12 a full-carbide high-speed steel. The
heats and the shop are invented.
"""

import gibbsteel as gs

HEATS = [
    gs.Steel(
        {"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0, "Mn": 0.3, "Si": 0.3},
        name="punch heat 7 (matrix-style)",
    ),
    gs.Steel(
        {"C": 0.90, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9, "Mn": 0.3, "Si": 0.3},
        name="punch heat 12 (full-carbide)",
    ),
]


def introduce(state: gs.State) -> None:
    """Says in words what the first row of a table means."""
    carbides = state.carbides.items()
    kinds = ", ".join(f"{c.volume_percent:.1f} % {name}" for name, c in carbides)
    print(
        f"{state.steel}: at {state.celsius:.0f} C the steel is {kinds} by volume, the\n"
        f"rest is matrix with {state.matrix.weight_percent['C']:.2f} % of carbon by "
        "weight. That carbon sets the as-quenched\n"
        "hardness; Cr, Mo, W and V in the matrix set the tempering response; what is\n"
        "in the carbides takes no part in either.\n"
    )


def main() -> None:
    for steel in HEATS:
        sweep = steel.sweep(celsius=range(1000, 1201, 25))
        if sweep.failures > 0:
            raise SystemExit(f"{sweep!r}\n{sweep}")
        print("=" * 78)
        introduce(sweep[0])
        print(sweep)


if __name__ == "__main__":
    main()
