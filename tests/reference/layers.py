"""The layers that have records of their own, in the order of the accuracy page."""

import element_layer
import liquid_layer

BOARDS = (element_layer.BOARD, liquid_layer.BOARD)
