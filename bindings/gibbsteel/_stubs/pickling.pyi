"""bind_pickling.cpp; see ../_core.pyi."""

from typing import Never

def _pickle_mark(class_name: str, format: int) -> str:
    """What a pickle of this class and format carries."""

def _check_pickle_mark(mark: object, class_name: str, newest: int) -> None:
    """Refuses the mark of another class or of a later format."""

def _refuse_damaged_pickle(class_name: str) -> Never:
    """Raises InputError."""
