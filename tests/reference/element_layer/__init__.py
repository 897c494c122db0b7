"""The layer with niobium, titanium and nitrogen: records, quantities, file."""

from pathlib import Path

from layer_board import Board

from . import kinds

BOARD = Board(
    folder=Path(__file__).resolve().parent,
    stem="niobium_titanium_nitrogen",
    name="layer with niobium, titanium, nitrogen",
    need="an element that the file does not have",
    lacking="Ti, Nb, Al and N are not elements of the file.",
    meaning={
        "fit": "fitted to",
        "taken over": "what its terms were taken from",
        "held back": "held back: neither fitted to nor taken over",
    },
)

__all__ = ["BOARD", "kinds"]
