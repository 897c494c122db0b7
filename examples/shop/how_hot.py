"""How hot the punch steels may get: where they melt, and the window that is left."""

import _page as page
import gibbsteel as gs
import high_speed_m2
import matrix_type_variant

WITH_LIQUID = gs.default_parameters("liquid")
COOLING_CURVES = "cooling curves of 6W-5Mo-4Cr-2V, Barkalow, Kraft and Goldstein 1972"
OVERHEATED = 1240  # [C]: the controller of the shop once ran away to this
PINNING = 2.0  # [vol%] of carbide that keep the grains of austenite small


def molten(steel: gs.Steel) -> gs.Steel:
    """The same steel, with the layer that has a liquid."""
    return gs.Steel(
        dict(steel.analysis.given), name=steel.name, parameters=WITH_LIQUID
    )


M2 = molten(high_speed_m2.STEEL)
HEAT_7 = molten(matrix_type_variant.HEAT_7)


def melting_of_m2() -> None:
    page.heading("M2: where it melts")
    melting = M2.melting_range()
    fitted = "three temperatures of this kind, by the layer"
    page.compared(
        "begins to melt",
        melting.solidus_celsius,
        "C",
        (1228, 1252),
        digits=0,
        source=COOLING_CURVES,
        fitted=fitted,
    )
    page.compared(
        "molten above",
        melting.liquidus_celsius,
        "C",
        (1427, 1443),
        digits=0,
        source=COOLING_CURVES,
        fitted=fitted,
    )
    print()
    print(melting)


def windows() -> list[gs.State]:
    page.heading("The window that is left")
    ends = []
    for steel in (M2, HEAT_7):
        window = steel.hardening_window(
            hardness_hrc=62, least_pinning_volume_percent=PINNING
        )
        print(f"{steel.name}: {window.text}")
        ends += [s for s in (window.at_floor, window.at_ceiling) if s.usable]
    print()
    return ends


def overheated() -> list[gs.State]:
    page.heading(f"What {OVERHEATED} C would have done, plus or minus 20 C")
    states = []
    for steel in (M2, HEAT_7):
        for celsius in (OVERHEATED - 20, OVERHEATED, OVERHEATED + 20):
            state = steel.soak(celsius=celsius)
            liquid = state.volume_percent_of("liquid")
            print(f"  {steel.name} at {celsius} C: {liquid:.1f} vol% liquid")
            states.append(state)
    return states


def main() -> None:
    melting_of_m2()
    print()
    states = windows() + overheated()
    page.warnings(states)
    print(page.CAUTION)


if __name__ == "__main__":
    main()
