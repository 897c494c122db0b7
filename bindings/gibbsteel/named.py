"""Dicts by element or phase: a name that is not there is refused with a way out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, NoReturn, TypeVar

from ._core import Occurrence, Problem, State, element_problem
from .errors import InputError, NotThereError

_T = TypeVar("_T")
_Refuse = Callable[[Any], list[Problem]]

_NO_FORCE = "a phase that is suppressed or lacks its elements has none; present: "
_NO_POTENTIAL = "an element that is absent has none"


class Named(dict[str, _T]):
    """A dict, but for what ``[]`` says of a name that is not there.

    ``in``, ``get``, iteration, comparison and pickles are those of the dict.
    """

    __slots__ = ("_refuse",)

    def __init__(self, items: Mapping[str, _T], refuse: _Refuse) -> None:
        super().__init__(items)
        self._refuse = refuse

    def __missing__(self, name: Any) -> NoReturn:
        raise NotThereError(self._refuse(name))

    def __reduce__(self) -> tuple[Any, ...]:
        return dict, (dict(self),)


def by_element(values: dict[str, float], place: str) -> Named[float]:
    """Numbers by element.

    Examples
    --------
    >>> carbon = by_element({"C": 0.5}, "weight_percent")
    >>> carbon["C"], carbon.get("Co", 0.0), "Co" in carbon
    (0.5, 0.0, False)
    """

    def refuse(symbol: Any) -> list[Problem]:
        is_content = place != "chemical_potential"
        way = f'get("{symbol}", 0.0) gives 0 for it' if is_content else _NO_POTENTIAL
        return [element_problem(place, str(symbol), list(values), way)]

    return Named(values, refuse)


def by_kind(state: State, values: dict[str, float]) -> Named[float]:
    """Driving forces by kind of phase."""

    def refuse(kind: Any) -> list[Problem]:
        if kind not in state.kinds:
            return _refusal(state, kind)
        remedy = _NO_FORCE + (", ".join(values) or "none")
        what = f"holds no {kind!r}"
        return [Problem("gibbsteel.input.288", "driving_force", what, remedy)]

    return Named(values, refuse)


def by_name(state: State, found: dict[str, Occurrence], role: str) -> Named[Occurrence]:
    """Occurrences of one role by name."""

    def refuse(name: Any) -> list[Problem]:
        if name not in state:
            return _refusal(state, name)
        what = f"{name!r} is no {role}"
        remedy = f"take state[{name!r}], which is any phase"
        return [Problem("gibbsteel.input.288", f"{role}s", what, remedy)]

    return Named(found, refuse)


def _refusal(state: State, name: Any) -> list[Problem]:
    """What the state says of a name that it does not hold."""
    try:
        state[str(name)]
    except InputError as error:
        return error.problems
    return []
