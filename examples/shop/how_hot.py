"""How hot the punch steels may get: where they melt, and the window that is left."""

import _page as page
import gibbsteel as gs
import high_speed_m2
import matrix_type_variant

WITH_LIQUID = gs.default_parameters("liquid")
COOLING_CURVES = "cooling curves, Barkalow, Kraft and Goldstein 1972"
OVERHEATED = 1280  # [C]
RICHER = 20  # [%]
HARD = 60.0  # [HRC] as quenched
PINNING = 1.0  # [vol%] of carbide that keep the grains of austenite small


MELTED = gs.Steel(
    {"C": 0.8, "Cr": 4, "Mo": 5, "W": 6, "V": 2},
    name="0.8C-6W-5Mo-4Cr-2V",
    parameters=WITH_LIQUID,
)
M2 = high_speed_m2.STEEL.with_parameters(WITH_LIQUID)
HEAT_7 = matrix_type_variant.HEAT_7.with_parameters(WITH_LIQUID)


def melting() -> None:
    page.heading(f"{MELTED.name}, a kind of M2: where it melts")
    measured = MELTED.melting_range()
    page.compared(
        "begins to melt",
        measured.solidus_celsius,
        "C",
        (1228, 1252),
        digits=0,
        source=COOLING_CURVES,
        why="the layer was fitted to it, and to T1, which draws it up; cooling curves "
        "show the last liquid of a segregated ingot, and a uniform bar begins to melt "
        "there or a little higher",
    )
    page.compared(
        "molten above",
        measured.liquidus_celsius,
        "C",
        (1427, 1443),
        digits=0,
        source=COOLING_CURVES,
        fitted="this liquidus",
    )
    print()
    print(M2.melting_range())


def windows() -> list[gs.State]:
    page.heading("The window that is left")
    ends = []
    for steel in (M2, HEAT_7):
        window = steel.hardening_window(
            hardness=gs.quantities.hardness_hrc(),
            least_hardness=HARD,
            least_pinning_volume_percent=PINNING,
        )
        print(page.filled(f"{steel.name}: {window.text}"))
        ends += [s for s in (window.at_floor, window.at_ceiling) if s.usable]
    print()
    return ends


def streaks() -> None:
    page.heading(f"Melting where carbon and alloy are {RICHER} % above the bar's")
    for steel in (M2, HEAT_7):
        streak = steel.changed(
            {symbol: percent * (1 + RICHER / 100) for symbol, percent in alloy(steel)},
            name=f"streak of {steel.name}",
        )
        solidus = streak.melting_range().solidus_celsius
        below = steel.melting_range().solidus_celsius - solidus
        print(f"  {streak.name}: from {solidus:.0f} C, the bar {below:.0f} C higher")
    print(
        page.filled(
            "M2 has its eutectic in the streak and beside it; in practice its streaks "
            "melt earlier too, where carbides had no time to dissolve."
        )
    )
    print()


def alloy(steel: gs.Steel) -> list[tuple[str, float]]:
    return [(s, p) for s, p in steel.analysis.given.items() if s != "Fe"]


def overheated() -> list[gs.State]:
    page.heading(f"The day the controller ran away to {OVERHEATED} C")
    states = [steel.soak(celsius=OVERHEATED) for steel in (M2, HEAT_7)]
    for state in states:
        liquid = state.volume_percent_of("liquid")
        print(f"  {state.steel}: {liquid:.1f} vol% liquid")
    return states


def main() -> None:
    melting()
    print()
    states = windows()
    streaks()
    states += overheated()
    page.warnings(states)
    print(page.CAUTION)


if __name__ == "__main__":
    main()
