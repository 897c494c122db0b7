#!/usr/bin/env python3
"""Fits the numbers of the niobium, titanium and nitrogen layer that say so.

    python3 tests/reference/fit_elements.py           # prints the fit, changes nothing
    python3 tests/reference/fit_elements.py --write   # writes the numbers to the layer

Over the records of element_layer/records.json whose `use` is "fit". Half a minute.
"""

from element_layer import BOARD
from layer_board.fit import Fit, main

FIT = Fit(
    BOARD,
    source="Nb-Ti-N fit",
    start={
        ("austenite", (("Fe", "Nb"), "vacancy"), "1"): (0.0, 40000.0),
        ("austenite", (("Fe", "Nb"), "vacancy"), "T"): (0.0, 10.0),
        ("austenite", (("Fe", "Ti"), "vacancy"), "1"): (-40000.0, 40000.0),
        ("austenite", (("Fe", "Ti"), "vacancy"), "T"): (0.0, 10.0),
        ("austenite", ("V", "N"), "1"): (-217100.0, 4000.0),
        ("ferrite", (("Fe", "Nb"), "vacancy"), "1"): (0.0, 40000.0),
        ("ferrite", (("Fe", "Ti"), "vacancy"), "1"): (-40000.0, 40000.0),
    },
)

if __name__ == "__main__":
    main(FIT, __doc__)
