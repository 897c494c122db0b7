"""Matrix carbon against the minutes of a soak."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from .._core import ParameterSet, ShortSoak, State, default_particle_micrometres
from ..errors import InputError
from ..temperature import ICE_POINT_K
from ..timed_soak import times_to_plot
from .axes import cannot_draw, heading, own_or_given, room_on_top
from .element_styles import style_of_element
from .sweeps import title_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes


def soak_time(
    state: State,
    minutes: Sequence[float] | None = None,
    *,
    particle_micrometres: float = default_particle_micrometres,
    annealed_celsius: float | None = None,
    annealed_fahrenheit: float | None = None,
    parameters: ParameterSet | None = None,
    ax: Axes | None = None,
    **kw: Any,
) -> Axes:
    """Carbon in the matrix after so many minutes, between both limits.

    `State.timed_soak` with its band; time is on a scale of powers. It is flat as long
    as only carbon has moved; where the curve leaves that limit, real particles of many
    sizes have no kink. Times at which the matrix would still hold ferrite are left out.

    Parameters
    ----------
    state : State
        Long-hold limit of a steel that has cementite when annealed.
    minutes : sequence of float, optional
        At temperature, two or more, in any order; 2 to 240 when left out.
    particle_micrometres : float
    annealed_celsius, annealed_fahrenheit : float, optional
    parameters : ParameterSet, optional
        As in `State.timed_soak`.
    ax : matplotlib.axes.Axes, optional
        Where to draw; a new figure when left out.
    **kw
        Passed on to the line, for instance ``linewidth=1``.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    InputError
        What is given is no state; fewer than two times; what `State.timed_soak`
        refuses.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> ax = gs.plot.soak_time(steel.soak(celsius=860))
    >>> ax.get_xlabel()
    'minutes at temperature'
    """
    if not isinstance(state, State):
        what = f"is {type(state).__name__}, not State"
        raise cannot_draw("state", what, "give what steel.soak returns")
    wanted = _powers(2.0, 240.0) if minutes is None else minutes  # those of a shop
    times = times_to_plot(wanted, particle_micrometres)
    if len(times) < 2:
        raise cannot_draw("minutes", "are fewer than two", "give two times or more")
    annealed: dict[str, Any] = {
        "annealed_celsius": annealed_celsius,
        "annealed_fahrenheit": annealed_fahrenheit,
        "parameters": parameters,
    }
    size = {"particle_micrometres": particle_micrometres}
    times, soaks = _long_enough(state, times, {**annealed, **size})
    limit = _limit(state, annealed)
    ax = own_or_given(ax)
    handles = _draw(ax, times, soaks, limit, kw)
    ax.set_xscale("log")
    ax.set_xlim(times[0], times[-1])
    ax.set_xticks(*_ticks(times))
    ax.minorticks_off()
    ax.set_xlabel("minutes at temperature")
    ax.set_ylabel("carbon in the matrix [wt%]")
    heading(ax, *_heading(state, soaks[0], particle_micrometres))
    bands = [soak.band("C") for soak in soaks]
    highest = max(bands[0].long_hold, *(band.high for band in bands))
    room_on_top([(ax, highest)], handles, [])
    ax.set_ylim(bottom=0.1 * math.floor(10.0 * min(b.low for b in bands) - 0.5))
    return ax


def _powers(first: float, last: float) -> list[float]:
    """41 times, each longer by the same factor."""
    return [first * (last / first) ** (i / 40.0) for i in range(40)] + [last]


def _limit(state: State, annealed: dict[str, Any]) -> ShortSoak | None:
    """None where its matrix would hold ferrite."""
    try:
        return state.short_soak_limit(**annealed)
    except InputError as error:
        if [p.place for p in error.problems] != ["state"]:
            raise
        return None


def _long_enough(
    state: State, times: list[float], given: dict[str, Any]
) -> tuple[list[float], list[ShortSoak]]:
    """Times from the first on that leaves no ferrite, and their soaks; where the last
    alone does, times before it as well."""
    state.timed_soak(times[-1], **given)  # refused when this is
    low, high = -1, len(times) - 1
    while high - low > 1:
        middle = (low + high) // 2
        try:
            state.timed_soak(times[middle], **given)
            high = middle
        except InputError as error:
            if not error.problems[0].place.startswith("state after"):
                raise
            low = middle
    if high == len(times) - 1:
        return _long_enough(state, _powers(*times[-2:]), given)
    return times[high:], state.timed_soaks(times[high:], **given)


def _draw(
    ax: Axes,
    times: Sequence[float],
    soaks: Sequence[ShortSoak],
    limit: ShortSoak | None,
    kw: dict[str, Any],
) -> list[Any]:
    color = style_of_element("C").line
    bands = [soak.band("C") for soak in soaks]
    look: dict[str, Any] = {"color": color, "linewidth": 2.0, **kw}
    look = {"label": "timed soak", **look}
    handles: list[Any] = ax.plot(times, [band.value for band in bands], **look)
    lows, highs = [band.low for band in bands], [band.high for band in bands]
    band = ax.fill_between(times, lows, highs, color=color, alpha=0.15, linewidth=0.0)
    band.set_label("band, a factor of three in time")
    thin: dict[str, Any] = {"color": "0.35", "linewidth": 1.1}
    dashed = {**thin, "linestyle": "--", "label": "short-soak limit"}
    handles += [band, ax.axhline(bands[0].long_hold, label="long-hold limit", **thin)]
    if limit is not None:
        handles.append(ax.axhline(limit.state.matrix.weight_percent["C"], **dashed))
    return handles


def _ticks(times: Sequence[float]) -> tuple[list[float], list[str]]:
    """Plain numbers: 1, 2, 5, 10, ... minutes within the times; else both ends."""
    steps = [a * 10.0**n for n in range(-3, 6) for a in (1, 2, 5)]
    chosen = [step for step in steps if times[0] <= step <= times[-1]]
    if len(chosen) < 2:
        chosen = [times[0], times[-1]]
    return chosen, [f"{step:g}" for step in chosen]


def _heading(
    state: State, soak: ShortSoak, micrometres: float
) -> tuple[str, list[str]]:
    """Title and notes."""
    annealed = soak.annealed_kelvin - ICE_POINT_K
    return f"{title_of([state])} at {state.celsius:g} °C", [
        f"{state.analysis.brief()} [wt%]; annealed at {annealed:g} °C, M3C of "
        f"{micrometres:g} µm",
        f"Whole section at temperature. {state.parameters}",
    ]
