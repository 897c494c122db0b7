"""What gibbsteel raises. Every error lists all its problems with stable codes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ._core import Problem


class GibbsteelError(Exception):
    """Base of everything gibbsteel raises.

    Attributes
    ----------
    problems : list of Problem
        At least one; each has ``code``, ``place``, ``what`` and ``remedy``.
    code : str
        Stable code of the first problem, such as ``"gibbsteel.input.203"``.
    """

    def __init__(self, problems: Sequence[Problem]) -> None:
        super().__init__("\n".join(str(problem) for problem in problems))
        self.problems = list(problems)

    @property
    def code(self) -> str:
        """Stable code of the first problem."""
        return self.problems[0].code

    def __reduce__(self) -> tuple[type[GibbsteelError], tuple[list[Problem]]]:
        return type(self), (self.problems,)


class DataError(GibbsteelError, ValueError):
    """A parameter file cannot be used (codes 1xx)."""


class InputError(GibbsteelError, ValueError):
    """An argument cannot be used (codes 2xx)."""


class NotThereError(InputError, KeyError):
    """A dict by element or phase does not hold the name."""

    def __str__(self) -> str:
        return "\n".join(str(problem) for problem in self.problems)
