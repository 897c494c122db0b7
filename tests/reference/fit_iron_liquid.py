#!/usr/bin/env python3
"""Fits the numbers of the layer that goes with iron as measured and liquid.

    python3 tests/reference/fit_iron_liquid.py           # prints, changes nothing
    python3 tests/reference/fit_iron_liquid.py --write   # writes the numbers

Over the records of liquid_layer that iron_liquid_layer names. The prior of C-Fe is the
published number, that of the others the one of fit_liquid.py.
"""

import fit_liquid
from iron_liquid_layer import BOARD
from layer_board.fit import Fit, main

FIT = Fit(
    BOARD,
    source="iron liquid, fit",
    start={
        ("liquid", (("C", "Fe"),), "1"): (-124320.0, 5000.0),
        ("liquid", (("C", "Fe"),), "T"): (28.5, 4.0),
        ("liquid", (("C", "Fe"),), "1", 1): (19300.0, 5000.0),
        **fit_liquid.FIT.start,
    },
    step=0.1,  # temperatures are found to 0.005 C
    bends=True,
)

if __name__ == "__main__":
    main(FIT, __doc__)
