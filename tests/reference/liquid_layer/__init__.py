"""The layer with liquid: its records and how their quantities are computed."""

from pathlib import Path

from layer_board import Board

from . import kinds

BOARD = Board(
    folder=Path(__file__).resolve().parent,
    stem="liquid",
    name="layer with liquid",
    need="liquid",
    lacking="No liquid in the parameter file.",
    meaning={"fit": "fitted to", "held back": "held back: not fitted to"},
)

__all__ = ["BOARD", "kinds"]
