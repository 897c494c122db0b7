"""The layer that goes with iron as measured where there is liquid.

Its records are those of the layer with liquid. It was fitted to the reactions and
carbon activities of Fe-C and to what that layer was fitted to; solidus and liquidus of
steels are held back, and the curves of Fe-C between the reactions.
"""

from pathlib import Path

import liquid_layer
from layer_board import Board

REACTIONS = ("FEC-07", "FEC-09", "FEC-10", "FEC-13", "FEC-14", "FEC-63")
MEANING = {"fit": "fitted to", "held back": "held back: not fitted to"}


def records():
    """Of the layer with liquid; `use` says what this layer did with each."""
    return [
        {**r, "use": "fit" if _is_fitted(r) else "held back"}
        for r in liquid_layer.BOARD.records()
    ]


def _is_fitted(record):
    system, _, name = record["id"].partition("/")
    reaction = system == "systems" and name.split(":")[0] in REACTIONS
    return reaction or record["use"] == "fit"


BOARD = Board(
    folder=Path(__file__).resolve().parent,
    stem="iron_as_measured_liquid",
    name="layer with iron as measured and liquid",
    meaning=MEANING,
    below=("liquid", "iron_as_measured"),
    borrowed=records,
)

__all__ = ["BOARD"]
