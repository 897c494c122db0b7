"""M2 and the matrix-type steel: what dissolves where, and what a twin still holds."""

import _page as page
import gibbsteel as gs
from high_speed_m2 import STEEL as M2
from matrix_type_variant import HEAT_7

# No grade has these limits: what the shop would order heat 7 to, invented.
HEAT_7_LIMITS = {
    "C": (0.52, 0.58),
    "Cr": (4.3, 4.7),
    "Mo": (2.6, 2.9),
    "W": (1.85, 2.15),
    "V": (0.9, 1.1),
}
WATCHED = (("C in the matrix", "wt%", 2), ("carbide", "vol%", 1))
KINDS = ("M3C", "M7C3", "M23C6", "M6C", "MC")


def dissolution(steel: gs.Steel) -> None:
    page.heading(f"{steel.name}: where each carbide is gone, 700 to 1250 C")
    for kind in KINDS:
        print("  " + steel.dissolution_temperature(kind).text)


def m23c6_of_m2() -> None:
    """M2 has M23C6 when annealed; in the parameter file it dissolves too early."""
    page.compared(
        "M23C6 is gone above",
        M2.dissolution_temperature("M23C6").celsius,
        "C",
        (1060, 1130),
        digits=0,
        source="record M2-M23C6-solvus, 1095 +-35 C in short austenitizing, Kayser "
        "and Cohen 1952, from memory; its note: equilibrium about 950 to 1050 C",
        why="M23C6 of M2 is not stable enough in the file; T1, O1 and steels with "
        "tungsten and no chromium, which it was fitted to as well, allow no more",
    )
    annealed = M2.soak(celsius=750)
    amounts = ", ".join(
        f"{annealed.volume_percent_of(kind):.1f} {kind}"
        for kind in KINDS
        if annealed.volume_percent_of(kind) > 0
    )
    page.note(
        "X-ray work on annealed powder (record M2-A-phases-RS) saw only M6C and MC, "
        "but would not see a few percent of another carbide. Computed at 750 C, vol%: "
        f"{amounts}."
    )


def half_percent(steel: gs.Steel) -> None:
    search = steel.temperature_for(matrix_carbon=0.50, celsius=(950, 1250))
    for crossing in search.crossings:
        print(f"{steel.name}: 0.50 wt% matrix carbon at {crossing.celsius:.0f} C")
    if not search.crossings:
        print(search)


def heat_7_band() -> None:
    """Band of the matrix-type steel; that of M2 is in examples/grade_limits.py."""
    band = HEAT_7.tolerance_band(
        celsius=1120, ranges=HEAT_7_LIMITS, furnace_celsius=5, samples=64
    )
    if not band.usable or band.unusable:
        raise SystemExit(str(band))
    print("punch heat 7 at 1120 C +- 5 C, invented limits (no grade has them):")
    for name, unit, digits in WATCHED:
        low, _, high = band[name].sampled.percentiles
        worst = (band[name].lowest_corner.value, band[name].highest_corner.value)
        print(
            f"  {name}: nine heats in ten {low:.{digits}f} to {high:.{digits}f} "
            f"{unit}, worst found {worst[0]:.{digits}f} to {worst[1]:.{digits}f}"
        )


def main() -> None:
    dissolution(M2)
    m23c6_of_m2()
    print()
    dissolution(HEAT_7)
    print()
    for steel in (M2, HEAT_7):
        half_percent(steel)
    print()
    others = list(range(1000, 1200, 25))
    print(M2.twin_study(celsius=1200, others_celsius=others))
    heat_7_band()
    print("What heats within the limits of M2 do at 1200 C: examples/grade_limits.py")
    page.warnings(s.soak(celsius=c) for s in (M2, HEAT_7) for c in (700, 1200, 1250))
    print(page.CAUTION)


if __name__ == "__main__":
    main()
