#!/usr/bin/env python3
"""Prints how the layer with iron as measured and liquid does against its records.

    python3 iron_liquid_scoreboard.py             one line per record, then the counts
    python3 iron_liquid_scoreboard.py --file X    with another form of the layer
    python3 iron_liquid_scoreboard.py --freeze    writes what passes to frozen.json
    python3 iron_liquid_scoreboard.py --page      writes the tables of the page

frozen.json lies in iron_liquid_layer/ and is not written while a frozen record is lost.
The page is that of both layers with iron as measured.

gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

import iron_page
from iron_liquid_layer import BOARD
from layer_board.command import main

if __name__ == "__main__":
    raise SystemExit(main(BOARD, __doc__, iron_page.write))
