"""Matrix carbon between the short-soak and the long-hold limit, and after minutes."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from .._core import ParameterSet, ShortSoak, State, Sweep, default_particle_micrometres
from ..errors import InputError
from ..temperature import ICE_POINT_K
from ..timed_soak import times_to_plot
from .axes import cannot_draw, heading, own_or_given, room_on_top, temperature_axis
from .cautions import Caution, cautions_of, not_usable, ranges_where
from .element_styles import style_of_element
from .sweeps import celsius_of, states_of, title_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes


def soak_limits(
    sweep: Sweep,
    *,
    minutes: float | Sequence[float] = (),
    particle_micrometres: float = default_particle_micrometres,
    annealed_celsius: float | None = None,
    annealed_fahrenheit: float | None = None,
    parameters: ParameterSet | None = None,
    ax: Axes | None = None,
    fahrenheit: bool = False,
    **kw: Any,
) -> Axes:
    """Carbon in the matrix against the soak temperature, by both limits.

    As a rule a soak of minutes lies between them, in the shaded area:
    `State.short_soak_limit` below, the long-hold limit above.

    Parameters
    ----------
    sweep : Sweep
        Soaks of one steel that has cementite when annealed, in any order.
    minutes : float or sequence of float
        One thin line for each: `State.timed_soak`.
    particle_micrometres : float
        Of the annealed cementite, for these lines.
    annealed_celsius, annealed_fahrenheit : float, optional
    parameters : ParameterSet, optional
        As in `State.short_soak_limit`.
    ax : matplotlib.axes.Axes, optional
        Where to draw; a new figure when left out.
    fahrenheit : bool
        Adds a second temperature scale in degrees Fahrenheit on top.
    **kw
        Passed on to the lines, for instance ``linewidth=1``.

    Returns
    -------
    matplotlib.axes.Axes

    Raises
    ------
    InputError
        What is given is no sweep or holds no soaks; an annealed steel that the limit
        says nothing of (gibbsteel.input.284); no soak with a matrix of austenite.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    >>> sweep = steel.sweep(celsius=range(800, 901, 20))
    >>> ax = gs.plot.soak_limits(sweep, minutes=[15, 60])
    >>> ax.get_ylabel()
    'carbon in the matrix [wt%]'
    """
    states = states_of(sweep)
    times = times_to_plot(minutes, size := particle_micrometres)
    given = {
        "annealed_celsius": annealed_celsius,
        "annealed_fahrenheit": annealed_fahrenheit,
        "parameters": parameters,
    }
    soaks = [_limit(state, given) for state in states]
    short = [_carbon(soak.state if soak else None) for soak in soaks]
    if all(math.isnan(carbon) for carbon in short):
        what = "has no soak at which the matrix is austenite by both limits"
        raise cannot_draw("sweep", what, "give temperatures of hardening")
    after = {m: [_after(s, m, size, given) for s in states] for m in times}
    ax = own_or_given(ax)
    celsius = celsius_of(states)
    raised = temperature_axis(ax, celsius, fahrenheit)
    pairs = zip(states, soaks, strict=True)
    long_hold = [_carbon(state if soak else None) for state, soak in pairs]
    handles = _draw(ax, celsius, short, long_hold, kw)
    handles += _draw_minutes(ax, celsius, after)
    ax.set_ylabel("carbon in the matrix [wt%]")
    annealed = next(soak.annealed_kelvin for soak in soaks if soak) - ICE_POINT_K
    notes = _notes(states, annealed, size if after else None)
    heading(ax, title_of(states), notes, raised)
    highest = max(c for c in [*short, *long_hold] if not math.isnan(c))
    cautions = [*cautions_of(states), *_too_cold(states, soaks)]
    room_on_top([(ax, highest)], handles, cautions, not_usable(states))
    return ax


def _limit(state: State, given: dict[str, Any]) -> ShortSoak | None:
    """None where the matrix is not austenite alone, by one of the limits."""
    if not state.usable or list(state.matrix_phases) != ["austenite"]:
        return None
    try:
        return state.short_soak_limit(**given)
    except InputError as error:
        found = [(problem.code, problem.place) for problem in error.problems]
        if found == [("gibbsteel.input.284", "state")]:
            return None  # too cold, it would hold ferrite; or partly molten
        raise


def _too_cold(
    states: Sequence[State], soaks: Sequence[ShortSoak | None]
) -> list[Caution]:
    """Below all short soaks, where the long hold is austenite already."""
    first = next(i for i, soak in enumerate(soaks) if soak)
    flags = [
        i < first and list(state.matrix_phases) == ["austenite"]
        for i, state in enumerate(states)
    ]
    ranges = ranges_where(celsius_of(states), flags)
    return [Caution("too cold for a short soak", ranges)] if ranges else []


def _carbon(state: State | None) -> float:
    """In the matrix [wt%]."""
    return math.nan if state is None else state.matrix.weight_percent["C"]


def _draw(
    ax: Axes,
    celsius: Sequence[float],
    short: Sequence[float],
    long_hold: Sequence[float],
    kw: dict[str, Any],
) -> list[Any]:
    color = style_of_element("C").line
    look: dict[str, Any] = {"color": color, "linewidth": 2.0, **kw}
    above = {"label": "long-hold limit", **look}
    below = {"label": "short-soak limit", "linestyle": "--", **look}
    handles = [*ax.plot(celsius, long_hold, **above), *ax.plot(celsius, short, **below)]
    between = ax.fill_between(
        celsius, short, long_hold, color=color, alpha=0.15, linewidth=0.0
    )
    between.set_label("a soak of minutes")
    return [*handles, between]


def _after(
    state: State, minutes: float, micrometres: float, given: dict[str, Any]
) -> float:
    """Carbon in the matrix; NaN where there is no such soak."""
    if not state.usable or list(state.matrix_phases) != ["austenite"]:
        return math.nan
    try:
        soak = state.timed_soak(minutes, particle_micrometres=micrometres, **given)
        return _carbon(soak.state)
    except InputError as error:
        if error.problems[0].place.startswith("state after"):
            return math.nan  # too short or too cold, it would hold ferrite
        raise


def _draw_minutes(
    ax: Axes, celsius: Sequence[float], after: dict[float, list[float]]
) -> list[Any]:
    """Thin lines, to tell apart in print as well."""
    styles = [":", "-.", (0, (6.0, 1.5)), "-"]
    handles = []
    for number, (minutes, carbon) in enumerate(after.items()):
        look: dict[str, Any] = {"color": "0.25", "linewidth": 1.2, "zorder": 3.0}
        look["linestyle"] = styles[number % len(styles)]
        handles += ax.plot(celsius, carbon, label=f"{minutes:g} min", **look)
    return handles


def _notes(
    states: Sequence[State], annealed_celsius: float, micrometres: float | None
) -> list[str]:
    size = (
        ""
        if micrometres is None
        else f", M3C of {micrometres:g} µm; minutes known to a factor of three"
    )
    return [
        f"{states[0].analysis.brief()} [wt%]; annealed at {annealed_celsius:g} °C"
        + size,
        "Short-soak limit: carbon has moved, metals have not. "
        f"{states[0].parameters}",
    ]
