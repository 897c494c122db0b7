#!/usr/bin/env python3
"""Prints how the layer with niobium, titanium and nitrogen does against its records.

    python3 element_scoreboard.py           one line per record, then the counts
    python3 element_scoreboard.py --freeze  writes what passes to frozen.json
    python3 element_scoreboard.py --page    writes the tables of the layer's page

frozen.json lies in element_layer/ and is not written while a frozen record is lost.

gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

import argparse
import json

import scoreboard
from element_layer import board, page
from evaluate.verdict import PASS

FROZEN = board.FOLDER / "frozen.json"


def frozen():
    return json.loads(FROZEN.read_text("utf-8"))


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--freeze", action="store_true", help="update frozen.json")
    parser.add_argument("--page", action="store_true", help="update the page")
    options = parser.parse_args()
    judged = board.outcomes(board.records(), board.parameters())
    print(scoreboard.HEADER)
    for outcome in judged:
        print(scoreboard.line(outcome))
    for use in board.USES:
        print(
            "{}: {} records, {} within 1, {} within 2".format(
                use, *board.counts(judged, use)
            )
        )
    passes = [o.record["id"] for o in judged if o.verdict == PASS]
    lost = sorted(set(frozen()) - set(passes)) if FROZEN.exists() else []
    for name in lost:
        print(f"{name}: passed when frozen, now not")
    if options.freeze and not lost:
        FROZEN.write_text(json.dumps(passes, indent=1) + "\n", encoding="utf-8")
    if options.page:
        page.write(judged)
    return 1 if lost else 0


if __name__ == "__main__":
    raise SystemExit(main())
