"""What a heat at the edge of its composition range will do.

A small cold-heading tool shop buys AISI M2 by grade and hardens punches at 1200 C in a
salt bath that holds 5 C. Every heat within the limits of the grade may arrive: which
carbide and which matrix will they have, and which limit should the shop ask the mill to
narrow? The shop is invented; the limits are the usual ones of AISI and ASTM A600 for
M2, regular carbon, from memory.
"""

import gibbsteel as gs

LIMITS = {
    "C": (0.78, 0.88),
    "Mn": (0.15, 0.40),
    "Si": (0.20, 0.45),
    "Cr": (3.75, 4.50),
    "V": (1.75, 2.20),
    "W": (5.50, 6.75),
    "Mo": (4.50, 5.50),
}
MIDDLE = {symbol: round((low + high) / 2, 3) for symbol, (low, high) in LIMITS.items()}


def main() -> None:
    steel = gs.Steel(MIDDLE, name="M2, middle of the limits")
    band = steel.tolerance_band(celsius=1200, ranges=LIMITS, furnace_celsius=5)
    if not band.usable or band.unusable:
        raise SystemExit(str(band))
    print(band)
    carbon = band["C in the matrix"]
    low, _, high = carbon.sampled.percentiles
    largest = max(carbon.contributions, key=lambda c: c.sampled_share)
    print(
        f"Matrix carbon: nine heats in ten lie between {low:.2f} and {high:.2f} wt%;\n"
        "the worst corners found are "
        f"{carbon.lowest_corner.value:.2f} and {carbon.highest_corner.value:.2f}. "
        f"{largest.input} matters most ({100 * largest.sampled_share:.0f} % of the\n"
        "variance): it is the limit to narrow."
    )


if __name__ == "__main__":
    main()
