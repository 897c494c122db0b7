#!/usr/bin/env python3
"""Prints which way more Co, Si, Mn or Ni moves soaked steels, against practice.

    python3 signs.py               every direction, its size, then the counts
    python3 signs.py --layer FILE  with a layer on the shipped file

gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

import argparse
import sys
from pathlib import Path

import gibbsteel as gs
from element_signs import changes
from evaluate import library


def main(arguments=None):
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--layer", type=Path, help="laid on the shipped file")
    layer = parser.parse_args(arguments).layer
    if layer:
        library.use(gs.load_parameters(layer, on_top_of=gs.default_parameters()))
    found = changes.changes()
    library.use(None)
    for one in found:
        print(changes.line(one))
    judged = [one for one in found if one.judged]
    right = sum(one.right for one in judged)
    print(
        f"{right} of {len(judged)} directions right, "
        f"{len(found) - len(judged)} without carbide, not judged"
    )
    return 0


if __name__ == "__main__":
    sys.exit(main())
