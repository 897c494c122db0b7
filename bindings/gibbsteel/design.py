"""Compositions that meet several targets at once."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from . import _core
from ._core import Design, DesignTarget, MakeableSteps, Problem, Quantity, State
from .arguments import count, items_of, listed
from .composition_for import range_of
from .errors import InputError
from .matrix_twin import steps_of
from .progress import Callback, counting
from .soak_options import soak_options
from .steel import Steel
from .target_quantity import QuantityLike, as_quantity
from .temperature import one_with_unit

_CODE = "gibbsteel.input.269"
_VARY = 'give lowest and highest weight percent by element: vary={"C": (0.3, 0.9)}'


def target(
    quantity: QuantityLike,
    *,
    equal: float | None = None,
    at_least: float | None = None,
    at_most: float | None = None,
    tolerance: float | None = None,
    celsius: Any = None,
    fahrenheit: Any = None,
    kelvin: Any = None,
) -> DesignTarget:
    """One number of a soak and what it shall be.

    Parameters
    ----------
    quantity : Quantity or callable
        See `gibbsteel.quantities`; or a function that gets a State.
    equal, at_least, at_most : float
        Exactly one of them, in the unit of the quantity.
    tolerance : float, optional
        How far off still counts as met, in the unit of the quantity; its inverse is the
        weight of the target. When left out, 1 % of the value, at least 0.005, for
        ``equal=``; a limit is kept, and missed as soon as it is not.
    celsius, fahrenheit, kelvin : float
        Temperature of the soak: exactly one of them.

    Returns
    -------
    DesignTarget
        For the list of targets of `design`.

    Raises
    ------
    InputError
        None or several of the wishes, or of the temperatures.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> gs.target(gs.quantities.matrix("C"), at_least=0.5, celsius=1120)
    <DesignTarget: C in the matrix [wt%] at least 0.5 at 1120 C>
    """
    quantity = as_quantity(quantity)
    wishes = {"equal": equal, "at least": at_least, "at most": at_most}
    given = {sense: value for sense, value in wishes.items() if value is not None}
    if len(given) != 1:
        what = "got " + (" and ".join(given) if given else "no wish")
        remedy = "give exactly one of equal=, at_least= and at_most="
        raise InputError([Problem(_CODE, f"targets, {quantity.name}", what, remedy)])
    sense, wanted = next(iter(given.items()))
    at = one_with_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
    return _target(quantity, at, sense, float(wanted), tolerance)


def _target(
    quantity: Quantity,
    at: tuple[float, str],
    sense: str,
    wanted: float,
    tolerance: float | None,
) -> DesignTarget:
    return DesignTarget(quantity, at[0], sense, wanted, tolerance, at[1])


def matrix_targets(
    state: State,
    elements: Sequence[str] = (),
    *,
    celsius: Any = None,
    fahrenheit: Any = None,
) -> list[DesignTarget]:
    """The matrix of a state as targets.

    Parameters
    ----------
    state : State
    elements : sequence of str
        These only; every element of the matrix but Fe when left out.
    celsius, fahrenheit : float, optional
        Temperature at which the new steel shall have it; that of the state when left
        out.

    Returns
    -------
    list of DesignTarget
        One per element, to be equal.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> state = gs.Steel(C=0.6, Cr=4.0).soak(celsius=1050)
    >>> [t.quantity.name for t in gs.matrix_targets(state)]
    ['C in the matrix', 'Cr in the matrix']
    """
    targets = _core.matrix_targets(state, list(elements))
    if celsius is None and fahrenheit is None:
        return targets
    at = one_with_unit(celsius=celsius, fahrenheit=fahrenheit)
    return [_target(t.quantity, at, t.sense, t.wanted, t.tolerance) for t in targets]


def design(
    start: Steel,
    *,
    vary: Mapping[str, tuple[float, float]],
    targets: DesignTarget | Iterable[DesignTarget],
    rounding: bool | MakeableSteps = False,
    starts: int | None = None,
    candidates: int | None = None,
    progress: bool | Callback = False,
    graphite: bool = False,
    suppressed: Sequence[str] = (),
) -> Design:
    """The composition that meets several targets best, Eq. (D1).

    Parameters
    ----------
    start : Steel
        Elements that are not varied keep its weight percents.
    vary : mapping of str to tuple of float
        Lowest and highest weight percent of each free element.
    targets : DesignTarget or iterable of DesignTarget
        See `target` and `matrix_targets`. What shall be equal is met in the least
        squares sense; limits are kept, where a composition is found that can.
    rounding : bool or MakeableSteps
        Round the result to weight percents that can be ordered, and judge that. Where
        the nearest ones break a limit, others within a few steps keep it if they can.
    starts, candidates : int, optional
        Compositions that the search starts from besides `start`, and how many are
        looked at to choose them.
    progress : bool or callable
        True counts soaks (tqdm). A callable gets the number of soaks done and stops the
        search by returning False. Ctrl-C stops it too: ``status`` is then ``"stopped"``
        and the best so far is shown.
    graphite, suppressed
        As for `Steel.soak`.

    Returns
    -------
    Design
        ``.status`` is ``"met"``, ``"compromise"``, ``"infeasible"``, ``"not
        converged"`` or ``"stopped"``; ``.steel`` is the result and ``.targets`` says
        how each came out.

    Raises
    ------
    InputError
        With every problem of elements, bounds and targets.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heat = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "V": 1.0}, name="heat 7")
    >>> carbon = gs.target(gs.quantities.matrix("C"), equal=0.45, celsius=1100)
    >>> gs.design(heat, vary={"C": (0.3, 1.0)}, targets=[carbon]).status
    'met'
    """
    free = [
        (symbol, *range_of(percent, f"elements, {symbol}", _CODE))
        for symbol, percent in items_of(vary, "vary", _VARY)
    ]
    steps = steps_of(rounding)
    wanted = listed(targets, DesignTarget, "targets", "make each with gs.target(...)")
    soak = soak_options(graphite, None, suppressed, False, None)
    how: dict[str, Any] = {"steps": steps, "soak": soak}
    chosen = {"starts": (starts, 1000), "candidates": (candidates, 100000)}
    how |= {
        name: count(number, name, 0, most, _CODE)
        for name, (number, most) in chosen.items()
        if number is not None
    }
    with counting(progress) as callback:
        return _core.design(start._core, free, wanted, progress=callback, **how)
