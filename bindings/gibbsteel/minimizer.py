"""The minimizer without the facade, for those who want mole fractions and potentials."""

from __future__ import annotations

from collections.abc import Sequence

from . import _core
from ._core import Equilibrium, ParameterSet, SolveOptions
from .parameters import default_parameters


def minimize(
    elements: Sequence[str],
    mole_fractions: Sequence[float],
    kelvin: float,
    *,
    phases: Sequence[str] | None = None,
    parameters: ParameterSet | None = None,
    options: SolveOptions | None = None,
) -> Equilibrium:
    """Global minimum of the Gibbs energy at fixed temperature and composition, Eq. (E1).

    Parameters
    ----------
    elements : sequence of str
        Symbols of the elements present.
    mole_fractions : sequence of float
        One per element, each > 0, sum 1.
    kelvin : float
        Temperature [K].
    phases : sequence of str, optional
        Candidate phases; all but graphite when left out.

    Returns
    -------
    Equilibrium
        Look at ``result.report.usable`` first.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> result = gs.minimize(["Fe"], [1.0], 1300.0)
    >>> [point["phase"] for point in result.present]
    ['austenite']
    """
    chosen = default_parameters() if parameters is None else parameters
    if phases is None:
        phases = [name for name in chosen.phases if name != "graphite"]
    return _core.minimize(
        chosen,
        list(elements),
        [float(x) for x in mole_fractions],
        float(kelvin),
        list(phases),
        options if options is not None else SolveOptions(),
    )
