"""A matrix-type punch steel against a variant with 0.1 C and 3 Co more.

Which of the two is the better punch can only be told at equal as-quenched hardness: at
which temperature does the variant get there, and what do both hold then?
"""

import _page as page
import gibbsteel as gs

HEAT_7 = gs.Steel(
    {"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0, "Mn": 0.3, "Si": 0.3},
    name="punch heat 7",
)
HEAT_8 = HEAT_7.changed(C=0.65, Co=3.0, name="punch heat 8")


def main() -> None:
    page.heading("punch heat 7 against punch heat 8 (0.1 C and 3 Co more)")
    reference = HEAT_7.soak(celsius=1120)
    hardness = gs.quantities.hardness_hrc()
    states = [reference]
    for quantity in (hardness, gs.quantities.matrix("C")):
        match = gs.matching_temperature(
            reference=reference, steel=HEAT_8, quantity=quantity, celsius=(950, 1200)
        )
        for crossing in match.search.crossings:
            print(f"the same {quantity.name} at {crossing.celsius:.0f} C")
            states.append(crossing.state)
    more = [gs.quantities.martensite_start(), gs.quantities.retained_austenite()]
    print()
    print(gs.compare(states, quantities=[*more, hardness]))
    band = reference.hardening().hardness_hrc
    print(
        f"The band of heat 7 is {band.low:.0f} to {band.high:.0f} HRC, wider than all "
        "change over these soaks:\nequal matrix carbon is the sharper comparison."
    )
    print("No handbook number: both heats are invented.")
    print(page.CAUTION)


if __name__ == "__main__":
    main()
