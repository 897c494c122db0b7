"""52100 at 845 C: why the shop must not use the long-hold limit for bearing steel.

The shop grinds guide bushes from spheroidized 52100 and hardens them in oil after half
an hour at 845 C. Carbide is left undissolved, and the microscope shows how much.
"""

import _page as page
import gibbsteel as gs

STEEL = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}, name="52100")


def compare_estimates(quenched: gs.HardeningEstimates) -> None:
    page.compared(
        "martensite start",
        quenched.martensite_start.value,
        "C",
        (235, 255),
        digits=0,
        source="record BRG-07, 245 +-10 C: another heat; its soak, 860 C, from memory",
    )
    page.compared(
        "retained austenite of the matrix",
        quenched.retained_austenite_of_matrix.value,
        "vol%",
        (6, 14),
        source="record BRG-13, 10 +-4 vol% from 850 C; from memory",
    )
    page.compared(
        "as-quenched hardness",
        quenched.hardness_hrc.value,
        "HRC",
        (64, 66),
        source="record BRG-12, 65 +-1 HRC; from memory",
        fitted=True,
    )


def main() -> None:
    long_hold = STEEL.soak(celsius=845)
    count = gs.MeasuredCarbide("M3C", 6.0, standard_deviation=0.5)
    short = long_hold.with_measured_carbide([count])
    page.heading("52100 at 845 C, oil to 20 C")
    page.compared(
        "matrix carbon, long-hold limit",
        long_hold.matrix.weight_percent["C"],
        "wt%",
        (0.80, 0.88),
        digits=2,
        source="the same steel after very long holds; from memory",
    )
    band = short.band("C")
    page.compared(
        "matrix carbon with 6 vol% M3C left",
        short.state.matrix.weight_percent["C"],
        "wt%",
        (0.62, 0.66),
        digits=2,
        source="bearing steel as hardened in practice; from memory",
    )
    print(
        f"    band {band.low:.2f} to {band.high:.2f} wt%, "
        "for an invented count of 6.0 +- 0.5 vol%"
    )
    quenched = short.state.hardening(coldest_celsius=20)
    compare_estimates(quenched)
    print()
    print(quenched)
    print(page.CAUTION)


if __name__ == "__main__":
    main()
