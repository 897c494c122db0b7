"""What figures against temperature need from a sweep."""

from __future__ import annotations

from collections.abc import Sequence

from .._core import State, Sweep
from .axes import cannot_draw

_REMEDY = "give what steel.sweep(celsius=range(900, 1231, 5)) returns"


def states_of(sweep: object) -> list[State]:
    """The states in ascending temperature; InputError for no sweep, or an empty one."""
    if not isinstance(sweep, Sweep):
        raise cannot_draw("sweep", f"is {type(sweep).__name__}, not Sweep", _REMEDY)
    if len(sweep) == 0:
        raise cannot_draw("sweep", "holds no soaks", _REMEDY)
    return sorted(sweep, key=lambda state: state.celsius)


def celsius_of(states: Sequence[State]) -> list[float]:
    """Temperatures [C]."""
    return [state.celsius for state in states]


def title_of(states: Sequence[State]) -> str:
    """The name of the steel."""
    return states[0].steel or "steel"


def volume_basis(state: State) -> str:
    """Which volumes a figure shows: words that follow the composition."""
    place = "the soak" if state.at_soak_temperature else "room"
    return f"; volumes at {place} temperature"


def notes_of(states: Sequence[State], *, volumes: bool = False) -> list[str]:
    """Composition and basis of volumes; long-hold limit and edition of the file."""
    basis = volume_basis(states[0]) if volumes else ""
    return [
        f"{states[0].analysis.brief()} [wt%]{basis}",
        f"Long-hold limit. {states[0].parameters}",
    ]
