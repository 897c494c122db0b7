"""What the layers have in common that are compared with records of their own.

`board` judges the records of one layer, `page` writes the computed part of its page,
`example` runs the example on it, `change` says what a layer gains and loses that moves
terms, `fit` fits terms to records, `command` is its scoreboard. A folder with records
says in its `__init__.py` which layer they are about; `layers.py` beside this folder
names all of them.
"""

from .board import Board

__all__ = ["Board"]
