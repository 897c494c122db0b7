"""Where a curve is not to be trusted: the warnings of states as temperature ranges."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from .._core import State

# Words for a figure; the whole sentence is in the warnings of the result. Warnings
# about the certificate (307, 313, 314) are no matter of a figure.
WORDS = {
    "gibbsteel.warning.308": "not usable (gap)",
    "gibbsteel.warning.301": "temperature outside the validity of the file",
    "gibbsteel.warning.302": "composition outside the validity of the file",
    "gibbsteel.warning.303": "no liquid in the file: melting not predicted",
    "gibbsteel.warning.304": "near or above the solidus of a similar steel",
    "gibbsteel.warning.315": "partly or wholly molten",
    "gibbsteel.warning.316": "melts lower than predicted",
    "gibbsteel.warning.317": "close to melting",
    "gibbsteel.warning.305": "matrix not austenite alone",
    "gibbsteel.warning.306": "sigma, Laves or mu may form (not in the file)",
    "gibbsteel.warning.309": "no volume data for a phase (gap)",
    "gibbsteel.warning.310": "known weak spot of the file",
    "gibbsteel.warning.358": "no published record of a steel like it",
    "gibbsteel.warning.312": "carbide former not modelled",
    "gibbsteel.warning.318": "much that is not modelled: not this steel's numbers",
    "gibbsteel.warning.319": "no carbon",
}

# Of hardening estimates. 330 says what 305 does; 335 and 357 are about steels, not
# about temperatures.
OF_ESTIMATES = {
    "gibbsteel.warning.331": "outside the range of an equation",
    "gibbsteel.warning.332": "martensite start not above the end of the quench",
    "gibbsteel.warning.333": "nitrogen left out",
    "gibbsteel.warning.334": "mass fractions stand for volume",
    "gibbsteel.warning.336": "minutes may leave more carbide, less carbon",
    "gibbsteel.warning.337": "estimates of the solid part",
    "gibbsteel.warning.338": "hardness offset fitted with other numbers",
}
_NO_VALUE = "no value (gap)"
Ranges = tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class Caution:
    """One kind of warning and the temperatures that it holds for.

    Attributes
    ----------
    label : str
        Words for the figure.
    ranges : tuple of (float, float)
        From and to [C], half-way to the neighbouring soaks.
    """

    label: str
    ranges: tuple[tuple[float, float], ...]


def ranges_where(
    celsius: Sequence[float], flags: Sequence[bool]
) -> tuple[tuple[float, float], ...]:
    """Ranges of an ascending series where a flag is set, half-way to the neighbours.

    Examples
    --------
    >>> ranges_where([900.0, 1000.0, 1100.0], [False, True, True])
    ((950.0, 1100.0),)
    """
    found: list[tuple[float, float]] = []
    last = len(celsius) - 1
    for i, flag in enumerate(flags):
        if not flag:
            continue
        low = celsius[i] if i == 0 else 0.5 * (celsius[i - 1] + celsius[i])
        high = celsius[i] if i == last else 0.5 * (celsius[i] + celsius[i + 1])
        if found and found[-1][1] == low:
            low = found.pop()[0]
        found.append((low, high))
    return tuple(found)


def cautions_of(states: Sequence[State]) -> list[Caution]:
    """The cautions of states in ascending temperature, in the order of `WORDS`."""
    celsius = [state.celsius for state in states]
    codes = [{warning.code for warning in state.warnings} for state in states]
    found = []
    for code, words in WORDS.items():
        ranges = ranges_where(celsius, [code in here for here in codes])
        if ranges:
            found.append(Caution(words, ranges))
    return found


def cautions_of_steels(
    labels: Sequence[str],
    steels: Sequence[Sequence[State]],
    codes: Sequence[Sequence[set[str]]],
    no_value: Sequence[Sequence[bool]],
) -> list[Caution]:
    """The cautions of several steels on one Axes, from the codes of each state; with
    the names of the steels where not all carry it. Last where there is no number."""
    flagged = {
        words: [[code in state for state in steel] for steel in codes]
        for code, words in {**WORDS, **OF_ESTIMATES}.items()
    }
    flagged[_NO_VALUE] = [list(flags) for flags in no_value]
    found = []
    for words, flags in flagged.items():
        places = [
            ranges_where([state.celsius for state in states], of_steel)
            for states, of_steel in zip(steels, flags, strict=True)
        ]
        who = [name for name, ranges in zip(labels, places, strict=True) if ranges]
        if who:
            names = "" if len(who) == len(labels) else f" ({', '.join(who)})"
            found.append(Caution(words + names, _joined(places)))
    return found


def _joined(several: Sequence[Ranges]) -> Ranges:
    """What lies in any of them."""
    joined: list[tuple[float, float]] = []
    for low, high in sorted(one for ranges in several for one in ranges):
        if joined and low <= joined[-1][1]:
            low, high = joined[-1][0], max(high, joined.pop()[1])
        joined.append((low, high))
    return tuple(joined)


def common_ranges(several: Sequence[Ranges]) -> Ranges:
    """What lies in all of them.

    Examples
    --------
    >>> common_ranges([((900.0, 950.0),), ((930.0, 990.0), (1000.0, 1010.0))])
    ((930.0, 950.0),)
    """
    common = several[0]
    for ranges in several[1:]:
        ends = [(max(a, c), min(b, d)) for a, b in common for c, d in ranges]
        common = tuple((low, high) for low, high in ends if low < high)
    return common


def not_usable(states: Sequence[State]) -> tuple[tuple[float, float], ...]:
    """Temperature ranges of states that are not usable."""
    celsius = [state.celsius for state in states]
    return ranges_where(celsius, [not state.usable for state in states])
