#!/usr/bin/env python3
"""Prints how the layer with niobium, titanium and nitrogen does against its records.

    python3 element_scoreboard.py           one line per record, then the counts
    python3 element_scoreboard.py --freeze  writes what passes to frozen.json
    python3 element_scoreboard.py --page    writes the tables of the layer's page

frozen.json lies in element_layer/ and is not written while a frozen record is lost.

gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

from element_layer import BOARD
from layer_board.command import main

if __name__ == "__main__":
    raise SystemExit(main(BOARD, __doc__))
