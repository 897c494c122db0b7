#!/usr/bin/env python3
"""Prints how the layer with liquid does against its records.

    python3 liquid_scoreboard.py             one line per record, then the counts
    python3 liquid_scoreboard.py --file X    the same with another form of the layer
    python3 liquid_scoreboard.py --freeze    writes what passes to frozen.json
    python3 liquid_scoreboard.py --page      writes the tables of the layer's page

frozen.json lies in liquid_layer/ and is not written while a frozen record is lost.

gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

from layer_board.command import main
from liquid_layer import BOARD

if __name__ == "__main__":
    raise SystemExit(main(BOARD, __doc__))
