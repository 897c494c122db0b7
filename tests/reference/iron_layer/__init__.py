"""The layer with iron as measured: the records of the shipped file, judged with it.

It has no records of its own: it changes terms that the shipped file has, so what it
gains and loses are records of that file. Which it was fitted to was chosen by system:
of Fe-C the activities and the eutectoid, no solubility; of chromium steels the binary
diagrams, 52100 and the 2.25C-12Cr steel, neither D2 nor a stainless steel.
"""

import json
from pathlib import Path

from evaluate import record_file
from layer_board import Board

FOLDER = Path(__file__).resolve().parent
FITTED = json.loads((FOLDER / "fitted_to.json").read_text("utf-8"))
MEANING = {"fit": "fitted to", "held back": "held back: not fitted to"}


def records():
    """Of the shipped file; `use` says what the layer did with each."""
    return [
        {**r, "use": "fit" if r["id"] in FITTED else "held back"}
        for r in record_file.records()
    ]


BOARD = Board(
    folder=FOLDER,
    stem="iron_as_measured",
    name="layer with iron as measured",
    meaning=MEANING,
    borrowed=records,
)

__all__ = ["BOARD"]
