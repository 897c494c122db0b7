"""M2 and the matrix-type steel: what dissolves where, and what a twin still holds."""

import _page as page
import gibbsteel as gs
from high_speed_m2 import STEEL as M2
from matrix_type_variant import HEAT_7

KINDS = ("M3C", "M7C3", "M23C6", "M6C", "MC")


def dissolution(steel: gs.Steel) -> None:
    page.heading(f"{steel.name}: where each carbide is gone, 700 to 1250 C")
    for kind in KINDS:
        print("  " + steel.dissolution_temperature(kind).text)
    print()


def half_percent(steel: gs.Steel) -> None:
    search = steel.temperature_for(matrix_carbon=0.50, celsius=(950, 1250))
    for crossing in search.crossings:
        print(f"{steel.name}: 0.50 wt% matrix carbon at {crossing.celsius:.0f} C")
    if not search.crossings:
        print(search)


def main() -> None:
    for steel in (M2, HEAT_7):
        dissolution(steel)
    for steel in (M2, HEAT_7):
        half_percent(steel)
    print()
    others = list(range(1000, 1200, 25))
    print(M2.twin_study(celsius=1200, others_celsius=others))
    print("What heats within the limits of M2 do at 1200 C: examples/grade_limits.py")
    print(page.CAUTION)


if __name__ == "__main__":
    main()
