"""52100 at 845 C: why the shop must not use the long-hold limit for bearing steel.

The shop grinds guide bushes from spheroidized 52100 and hardens them in oil after half
an hour at 845 C. Carbide is left undissolved, and the microscope shows how much.
"""

import _page as page
import gibbsteel as gs

STEEL = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}, name="52100")


def main() -> None:
    long_hold = STEEL.soak(celsius=845)
    short = long_hold.with_measured_carbide({"M3C": 6.0})
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
    print(f"    band {band.low:.2f} to {band.high:.2f} wt%")
    quenched = short.state.hardening(coldest_celsius=20)
    page.compared(
        "martensite start",
        quenched.martensite_start.value,
        "C",
        (235, 255),
        digits=0,
        source="record BRG-07, 245 +-10 C",
    )
    page.compared(
        "retained austenite", quenched.retained_austenite.value, "vol%", (6, 12)
    )
    page.compared(
        "as-quenched hardness", quenched.hardness_hrc.value, "HRC", (64, 66.5)
    )
    print()
    print(quenched)
    print(page.CAUTION)


if __name__ == "__main__":
    main()
