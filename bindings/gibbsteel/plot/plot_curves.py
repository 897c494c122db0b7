"""One quantity of one or more steels against the soak temperature."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from .. import _core
from .._core import Quantity, State, Sweep
from ..temperature import ICE_POINT_K, many_kelvin
from .axes import (
    SMALL,
    axis_label,
    cannot_draw,
    check_quantity,
    degrees,
    fahrenheit_on_the_right,
    heading,
    markers,
    own_or_given,
    room_on_top,
    temperature_axis,
)
from .cautions import cautions_of_steels, common_ranges, not_usable
from .steel_styles import style_of_steel
from .sweeps import as_list, celsius_of, labels_of, notes_of_steels, states_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_BAND = {"alpha": 0.14, "linewidth": 0.0}


@dataclass(frozen=True)
class _Curve:
    """A steel: its states in ascending temperature, and the quantity of each."""

    label: str
    states: list[State]
    values: list[float]
    low: list[float]  # empty: no band
    high: list[float]
    codes: list[set[str]]  # of warnings


def curves(
    sweeps: Sweep | Iterable[Sweep],
    quantity: Quantity,
    *,
    at_celsius: float | Iterable[float] = (),
    at_fahrenheit: float | Iterable[float] = (),
    ax: Axes | None = None,
    fahrenheit: bool = False,
    **kw: Any,
) -> Axes:
    """One quantity against the soak temperature: a line per steel, on one Axes.

    Parameters
    ----------
    sweeps : Sweep or iterable of Sweep
        One per steel; the temperatures need not be the same.
    quantity : Quantity
        For instance ``gs.quantities.hardness_hrc()``.
    at_celsius, at_fahrenheit : float or iterable of float
        Temperatures to mark, for instance that of ``gs.matching_temperature``.
    ax : matplotlib.axes.Axes, optional
        Where to draw; a new figure when left out.
    fahrenheit : bool
        Adds a second temperature scale in degrees Fahrenheit on top; on the right as
        well where the quantity is a temperature.
    **kw
        Passed on to the lines, for instance ``linewidth=1``.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    InputError
        Nothing to draw, what is no sweep or holds no soaks; what is no quantity; a
        temperature to mark that lies outside the soaks; a kind of phase or an element
        that a steel lacks.

    Notes
    -----
    The light fill is the band of a hardening estimate, see ``Quantity.band``. A line
    has a gap where a soak is not usable or has no such number; hatched is where that
    is so of every steel. Bars are those of `carbides`, with the names of the steels
    where not all are meant. The scale begins at 0 only where the numbers reach down to
    half of the highest.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> lean = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "V": 1}, name="punch heat 7")
    >>> rich = lean.changed(C=0.65, name="punch heat 8")
    >>> sweeps = [s.sweep(celsius=range(1000, 1201, 50)) for s in (lean, rich)]
    >>> ax = gs.plot.curves(sweeps, gs.quantities.hardness_hrc(), at_celsius=1120)
    >>> ax.get_ylabel()
    'as-quenched hardness [HRC]'
    """
    check_quantity(quantity)
    found = _curves(sweeps, quantity)
    celsius = [c for curve in found for c in celsius_of(curve.states)]
    marked = _marks(min(celsius), max(celsius), at_celsius, at_fahrenheit)
    ax = own_or_given(ax)
    raised = temperature_axis(ax, celsius, fahrenheit)
    handles = [_draw(ax, i, curve, kw) for i, curve in enumerate(found)]
    if any(math.isfinite(x) for curve in found for x in curve.low):
        handles.append(_band_of_legend())
    ax.set_ylabel(axis_label(quantity))
    if fahrenheit and quantity.unit == "C":
        fahrenheit_on_the_right(ax, quantity.name)
    labels = [curve.label for curve in found]
    states = [curve.states for curve in found]
    title = f"{labels[0]}: {quantity.name}" if len(found) == 1 else quantity.name
    heading(ax, title, notes_of_steels(labels, states, quantity), raised)
    codes = [curve.codes for curve in found]
    cautions = cautions_of_steels(labels, states, codes, _lack(found))
    lowest, highest = _limits(found)
    gaps = common_ranges([not_usable(of_steel) for of_steel in states])
    floor = _floor(lowest, highest)
    share = room_on_top([(ax, highest)], handles, cautions, gaps, floor)
    for i, (place, both) in enumerate(marked):
        words = degrees(place, fahrenheit or both)
        _draw_mark(ax, place, share, words, left=i == 0)
    return ax


def _curves(sweeps: Sweep | Iterable[Sweep], quantity: Quantity) -> list[_Curve]:
    given = as_list(sweeps)
    if not given:
        raise cannot_draw("sweeps", "are none", "give one sweep per steel in a list")
    states = [states_of(sweep) for sweep in given]
    labels = labels_of(states)
    table = _core.compare([s for each in states for s in each], [quantity], "celsius")
    row = table.rows[-1]
    codes = [{w.code for w in table.warnings_of(i)} for i in range(len(table))]
    found, first = [], 0
    for label, of_steel in zip(labels, states, strict=True):
        here = slice(first, first := first + len(of_steel))
        numbers = row.values[here], row.low[here], row.high[here]
        found.append(_Curve(label, of_steel, *numbers, codes[here]))
    return found


def _marks(
    lowest: float, highest: float, in_celsius: Any, in_fahrenheit: Any
) -> list[tuple[float, bool]]:
    """Temperatures [C] in ascending order, and whether they were given in F."""
    found = []
    for unit, given in (("celsius", in_celsius), ("fahrenheit", in_fahrenheit)):
        several = isinstance(given, Iterable) and not isinstance(given, (str, bytes))
        for kelvin in many_kelvin(**{unit: given if several else [given]}):
            found.append((kelvin - ICE_POINT_K, unit == "fahrenheit"))
    for place, _ in found:
        if not lowest <= round(place, 6) <= highest:
            what = f"is {place:g} °C, outside the soaks, {lowest:g} to {highest:g} °C"
            raise cannot_draw("at", what, "mark temperatures among those of the soaks")
    return sorted(found)


def _draw(ax: Axes, place: int, curve: _Curve, kw: dict[str, Any]) -> Any:
    celsius = celsius_of(curve.states)
    look = style_of_steel(place).of_line()
    look["markevery"] = markers(len(celsius), place)
    (line,) = ax.plot(celsius, curve.values, label=curve.label, **{**look, **kw})
    if curve.low:
        fill = {"color": line.get_color(), "zorder": 1.0, **_BAND}
        ax.fill_between(celsius, curve.low, curve.high, gid="band", **fill)
    return line


def _band_of_legend() -> Any:
    from matplotlib.patches import Patch

    label = "band of the estimate"
    return Patch(facecolor="0.3", edgecolor="none", alpha=0.2, label=label)


def _draw_mark(ax: Axes, celsius: float, share: float, words: str, left: bool) -> None:
    """A thin upright line over a share of the height, its temperature beside it."""
    look: dict[str, Any] = {"color": "0.35", "linewidth": 0.9, "linestyle": "--"}
    ax.axvline(celsius, ymax=share, gid="mark", **look)
    ax.annotate(
        words,
        (celsius, 0.0),
        xycoords=ax.get_xaxis_transform(),
        xytext=(-3.0 if left else 3.0, 4.0),
        textcoords="offset points",
        rotation="vertical",
        ha="right" if left else "left",
        va="bottom",
        fontsize=SMALL,
        gid="mark",
        bbox={"facecolor": "white", "edgecolor": "none", "pad": 1.0, "alpha": 0.8},
    )


def _lack(found: Sequence[_Curve]) -> list[list[bool]]:
    """Usable soaks without such a number."""
    return [
        [s.usable and math.isnan(v) for s, v in zip(c.states, c.values, strict=True)]
        for c in found
    ]


def _limits(found: Sequence[_Curve]) -> tuple[float, float]:
    """Lowest and highest number that is drawn; 0 and 0 without any."""
    numbers = [x for c in found for x in (*c.values, *c.low, *c.high)]
    known = [x for x in numbers if not math.isnan(x)]
    return (min(known), max(known)) if known else (0.0, 0.0)


def _floor(lowest: float, highest: float) -> float:
    """Where the scale begins."""
    if 0.0 <= lowest <= 0.5 * highest:
        return 0.0
    return lowest - 0.08 * (highest - lowest if highest > lowest else 1.0)
