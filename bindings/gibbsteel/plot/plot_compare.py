"""Two or more steels side by side on the same scales."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import TYPE_CHECKING, Any

from .._core import Sweep
from .axes import cannot_draw, no_such_option, pyplot
from .plot_carbides import carbides
from .plot_element_shares import carbon_shares
from .plot_matrix import matrix
from .sweeps import as_list, celsius_of, states_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes

_PLOTS: dict[str, Callable[..., Axes]] = {
    "carbides": carbides,
    "matrix": matrix,
    "carbon_shares": carbon_shares,
}


def compare(
    sweeps: Sweep | Iterable[Sweep],
    what: str = "carbides",
    *,
    axes: Sequence[Axes] | None = None,
    **kw: Any,
) -> list[Axes]:
    """Two or more steels side by side, with the same scales.

    Parameters
    ----------
    sweeps : Sweep or iterable of Sweep
        One per steel; the temperatures need not be the same.
    what : str
        ``"carbides"``, ``"matrix"`` or ``"carbon_shares"``.
    axes : sequence of matplotlib.axes.Axes, optional
        One per sweep; a new figure when left out.
    **kw
        Passed on to the figure of each steel, for instance ``kind="lines"``.

    Returns
    -------
    list of matplotlib.axes.Axes
        One per sweep.

    Raises
    ------
    InputError
        Nothing to compare, what is no sweep, another `what`, too few axes.

    Examples
    --------
    >>> import gibbsteel as gs, matplotlib
    >>> matplotlib.use("Agg")  # no window
    >>> lean = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "V": 1}, name="punch heat 7")
    >>> rich = gs.Steel({"C": 0.9, "Cr": 4.1, "Mo": 5, "W": 6.2, "V": 1.9})
    >>> sweeps = [s.sweep(celsius=range(1000, 1201, 100)) for s in (lean, rich)]
    >>> left, right = gs.plot.compare(sweeps)
    >>> left.get_ylim() == right.get_ylim()
    True
    """
    if what not in _PLOTS:
        raise no_such_option("what", what, list(_PLOTS))
    chosen = as_list(sweeps)
    celsius = [c for sweep in chosen for c in celsius_of(states_of(sweep))]
    if not chosen:
        raise cannot_draw("sweeps", "are none", "give two or more sweeps in a list")
    places = _places(len(chosen), axes)
    second: list[Axes] = []  # with the scale of carbon, on the right
    for sweep, ax in zip(chosen, places, strict=True):
        before = list(ax.figure.axes)
        _PLOTS[what](sweep, ax=ax, **kw)
        second += [new for new in ax.figure.axes if new not in before]
    _same_limits(places, min(celsius), max(celsius))
    _same_limits(second, min(celsius), max(celsius), label_on_the_left=False)
    return places


def _places(count: int, axes: Sequence[Axes] | None) -> list[Axes]:
    if axes is None:
        size = (0.8 + 4.0 * count, 4.8)
        new = pyplot().subplots(1, count, figsize=size, layout="constrained")[1]
        return [new] if count == 1 else list(new)
    given = list(getattr(axes, "flat", axes))
    if len(given) != count:
        what = f"are {len(given)} for {count} sweeps"
        raise cannot_draw("axes", what, "give one per sweep")
    return given


def _same_limits(
    axes: Sequence[Axes], low: float, high: float, label_on_the_left: bool = True
) -> None:
    """The widest limits for all; a scale is labelled on the outermost axes only."""
    if not axes:
        return
    top = max(ax.get_ylim()[1] for ax in axes)
    margin = 0.01 * (high - low) if high > low else 10.0
    outermost = axes[0] if label_on_the_left else axes[-1]
    for ax in axes:
        ax.set_xlim(low - margin, high + margin)
        ax.set_ylim(0.0, top)
        if ax is not outermost:
            ax.set_ylabel("")
