#!/usr/bin/env python3
"""Prints how the layer with iron as measured does against its records.

    python3 iron_scoreboard.py             one line per record, then the counts
    python3 iron_scoreboard.py --file X    the same with another form of the layer
    python3 iron_scoreboard.py --freeze    writes what passes to frozen.json
    python3 iron_scoreboard.py --page      writes the tables of the layer's page

frozen.json lies in iron_layer/ and is not written while a frozen record is lost. The
page is that of both layers with iron as measured.

gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

import iron_page
from iron_layer import BOARD
from layer_board.command import main

if __name__ == "__main__":
    raise SystemExit(main(BOARD, __doc__, iron_page.write))
