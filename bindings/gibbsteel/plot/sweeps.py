"""What figures against temperature need from a sweep."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from .._core import Quantity, State, Sweep
from .axes import cannot_draw

_SEVERAL = (
    "give one sweep; several steels: gs.plot.compare([sweep, other]) side by side, "
    "gs.plot.curves([sweep, other], quantity) on one Axes"
)
_MOST_LISTED = 6  # compositions above a figure
_REMEDY = "give what steel.sweep(celsius=range(900, 1231, 5)) returns"


def states_of(sweep: object) -> list[State]:
    """The states in ascending temperature; InputError for no sweep, or an empty one."""
    if not isinstance(sweep, Sweep):
        remedy = _SEVERAL if isinstance(sweep, (list, tuple)) else _REMEDY
        raise cannot_draw("sweep", f"is {type(sweep).__name__}, not Sweep", remedy)
    if len(sweep) == 0:
        raise cannot_draw("sweep", "holds no soaks", _REMEDY)
    return sorted(sweep, key=lambda state: state.celsius)


def as_list(sweeps: object) -> list[Any]:
    """A single one, or what is none, as a list of one; for `states_of` to check."""
    if isinstance(sweeps, Sweep) or not isinstance(sweeps, Iterable):
        return [sweeps]
    return list(sweeps)


def celsius_of(states: Sequence[State]) -> list[float]:
    """Temperatures [C]."""
    return [state.celsius for state in states]


def title_of(states: Sequence[State]) -> str:
    """The name of the steel."""
    return states[0].steel or "steel"


def labels_of(steels: Sequence[Sequence[State]]) -> list[str]:
    """Their names; numbered where several have the same."""
    names = [title_of(states) for states in steels]
    return [
        f"{name} ({names[: i + 1].count(name)})" if names.count(name) > 1 else name
        for i, name in enumerate(names)
    ]


def limit_words(quantity: Quantity, at: str = "") -> str:
    """'Long-hold limit. ', or what is left of it for a soak of minutes, which the name
    of the quantity tells."""
    if ", timed soak of " in quantity.name or ", short soak" in quantity.name:
        return f"Soaks{at}. " if at else ""
    return f"Long-hold limit{at}. "


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


def notes_of_steels(
    labels: Sequence[str], steels: Sequence[Sequence[State]], quantity: Quantity
) -> list[str]:
    """Composition of each steel; limit, edition of the file and basis of volumes, which
    stand with each steel where they differ."""
    firsts = [states[0] for states in steels]
    heads = [f"{label}: " if len(steels) > 1 else "" for label in labels]
    notes = [
        f"{head}{state.analysis.brief()} [wt%]"
        for head, state in zip(heads, firsts, strict=True)
    ]
    volumes = quantity.unit == "vol%"
    told = [_sets(firsts), [volume_basis(state) if volumes else "" for state in firsts]]
    same = [parts[0].removeprefix("; ") for parts in told if len(set(parts)) == 1]
    rest = "; ".join(part for part in same if part)
    common = limit_words(quantity) + rest[:1].upper() + rest[1:]
    for parts in told:
        if len(set(parts)) > 1:
            notes = [note + part for note, part in zip(notes, parts, strict=True)]
    if len(notes) > _MOST_LISTED:
        notes[_MOST_LISTED:] = [f"and {len(notes) - _MOST_LISTED} more"]
    return [*notes, common.strip()] if common else notes


def _sets(states: Sequence[State]) -> list[str]:
    """Title and edition of their parameter sets, after a semicolon where they differ,
    with the hash where that of another one is the same."""
    hashes: dict[str, set[str]] = {}
    for state in states:
        hashes.setdefault(state.parameters, set()).add(state.parameters_hash)
    if len({state.parameters_hash for state in states}) == 1:
        return [state.parameters for state in states]
    return [
        f"; {state.parameters}, {state.parameters_hash}"
        if len(hashes[state.parameters]) > 1
        else f"; {state.parameters}"
        for state in states
    ]
