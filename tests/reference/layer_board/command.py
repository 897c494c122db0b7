"""The scoreboard of one layer: prints its records, freezes them, writes its page."""

import argparse
import json
from pathlib import Path

import scoreboard

from . import page
from .board import counts, outcomes, passes


def main(board, about, write_page=page.write):
    options = _options(about)
    judged = outcomes(board.records(), board.parameters(options.file))
    print(scoreboard.HEADER)
    for outcome in judged:
        print(scoreboard.line(outcome))
    for use in board.meaning:
        print(
            "{}: {} records, {} within 1, {} within 2".format(use, *counts(judged, use))
        )
    now = passes(judged)
    lost = sorted(set(board.frozen()) - set(now))
    for name in lost:
        print(f"{name}: passed when frozen, now not")
    if options.freeze and not lost:
        board.frozen_file.write_text(json.dumps(now, indent=1) + "\n", encoding="utf-8")
    if options.page:
        write_page(board, judged)
    return 1 if lost else 0


def _options(about):
    parser = argparse.ArgumentParser(description=about.splitlines()[0])
    parser.add_argument("--freeze", action="store_true", help="update frozen.json")
    parser.add_argument("--page", action="store_true", help="update the page")
    parser.add_argument("--file", type=Path, help="another form of the layer")
    options = parser.parse_args()
    if options.file and (options.freeze or options.page):
        parser.error("--file only prints: frozen list and page are of the layer")
    return options
