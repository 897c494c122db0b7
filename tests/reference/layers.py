"""The layers that have records of their own, in the order of the accuracy page."""

import element_layer
import iron_layer
import iron_liquid_layer
import liquid_layer
from layer_board.board import laid, outcomes

BOARDS = (element_layer.BOARD, liquid_layer.BOARD)


def on_iron():
    """(name, outcomes) of the shipped file and of these layers, on iron as measured."""
    iron, melt, elements = iron_layer.BOARD, iron_liquid_layer.BOARD, BOARDS[0]
    of_elements = outcomes(elements.records(), laid([iron.layer, elements.layer]))
    return [
        ("shipped file", iron.outcomes()),
        (elements.name, of_elements),
        (liquid_layer.BOARD.name, melt.outcomes()),
    ]
