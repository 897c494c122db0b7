#!/usr/bin/env python3
"""Fits the numbers of the layer with liquid that say so.

    python3 tests/reference/fit_liquid.py           # prints the fit, changes nothing
    python3 tests/reference/fit_liquid.py --write   # writes the numbers to the layer

Over the records of liquid_layer/records.json whose `use` is "fit". The prior is what
the interaction of carbon in liquid iron and the melting minimum of Fe-W say.
"""

from layer_board.fit import Fit, main
from liquid_layer import BOARD

FIT = Fit(
    BOARD,
    source="liquid, fit",
    start={
        ("liquid", (("C", "Fe", "Mo"),), "1", 1): (0.0, 40000.0),
        ("liquid", (("C", "Fe", "W"),), "1", 1): (-120000.0, 40000.0),
        ("liquid", (("C", "Fe", "V"),), "1", 1): (-60000.0, 40000.0),
    },
    step=0.1,  # temperatures are found to 0.005 C
)

if __name__ == "__main__":
    main(FIT, __doc__)
