"""bind_errors.cpp; see ../_core.pyi."""

from typing import ClassVar

from .compiled import _Compiled

class Problem(_Compiled):
    """One thing wrong with a file or an argument."""

    def __init__(self, code: str, place: str, what: str, remedy: str) -> None: ...
    @property
    def code(self) -> str:
        """Stable code, such as ``"gibbsteel.input.203"``."""
    @property
    def place(self) -> str:
        """File and JSON pointer, or argument."""
    @property
    def what(self) -> str:
        """What is wrong."""
    @property
    def remedy(self) -> str:
        """What would be right."""
    def __eq__(self, other: object) -> bool: ...
    __hash__: ClassVar[None]  # type: ignore[assignment]
