#!/usr/bin/env python3
"""Writes thermo_data/ACCURACY.md and its parity plots.

    python3 accuracy.py              all records, then the page and the plots
    python3 accuracy.py --no-plots   the page only
    python3 accuracy.py --folder X   into another folder than thermo_data
    python3 accuracy.py --layer FILE --folder X   with a layer on the shipped file

The page of the shipped file also counts the records of the layers in layers.py, each
computed with its own layer; the page of another layer does not.

gibbsteel must be importable (PYTHONPATH of the build tree, or installed); the plots
need matplotlib.
"""

import argparse
import sys
from pathlib import Path

import gibbsteel as gs
from accuracy_page import page, plots
from evaluate import library, record_file
from evaluate.verdict import judge
from layers import BOARDS, on_iron

FOLDER = Path(__file__).resolve().parent.parent.parent / "thermo_data"


def main(arguments=None):
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--no-plots", action="store_true", help="the page only")
    parser.add_argument("--folder", type=Path, default=FOLDER, help="where to write")
    parser.add_argument("--layer", type=Path, help="laid on the shipped file")
    options = parser.parse_args(arguments)
    if options.layer and options.folder == FOLDER:
        parser.error("--layer needs --folder: the page of the shipped file stays")
    if options.layer:
        below = gs.default_parameters()
        library.use(gs.load_parameters(options.layer, on_top_of=below))
    outcomes = [judge(record) for record in record_file.records()]
    layered, iron = [], []
    if not options.layer:
        layered = [(board, board.outcomes()) for board in BOARDS]
        iron = on_iron()
    text = page.page(outcomes, record_file.left_out(), layered, iron)
    file = options.folder / "ACCURACY.md"
    file.write_text(text, encoding="utf-8")
    of_layers = sum(len(judged) for _, judged in layered)
    print(f"{file.name}: {len(outcomes)} records, {of_layers} of layers")
    if not options.no_plots:
        plots.draw(outcomes, options.folder / "accuracy")
        print(f"accuracy: {', '.join(plots.FILES)}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
