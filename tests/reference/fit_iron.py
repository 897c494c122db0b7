#!/usr/bin/env python3
"""Fits the numbers of the layer with iron as measured.

    python3 tests/reference/fit_iron.py           # prints the fit, changes nothing
    python3 tests/reference/fit_iron.py --write   # writes the numbers to the layer

Over the records of the shipped file that iron_layer/fitted_to.json names. The prior is
the published number, with a standard deviation about as large as the changes that the
misses ask for.
"""

from iron_layer import BOARD
from layer_board.fit import Fit, main

FIT = Fit(
    BOARD,
    source="iron, fit",
    start={
        ("austenite", ("Fe", ("C", "vacancy")), "1"): (-34671.0, 3000.0),
        ("austenite", ("Fe", ("C", "vacancy")), "T"): (0.0, 3.0),
        ("austenite", (("Cr", "Fe"), "C"), "1", 1): (0.0, 20000.0),
        ("ferrite", ("Fe", "C"), "1"): (322050.0, 6000.0),
        ("ferrite", (("Co", "Fe"), "vacancy"), "1"): (-23669.3, 1000.0),
    },
    step=0.05,  # temperatures are found to 0.005 C
    loss="huber",  # as the calibration of the shipped file has it
)

if __name__ == "__main__":
    main(FIT, __doc__)
