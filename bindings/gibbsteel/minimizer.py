"""The minimizer without the facade: mole fractions in, chemical potentials out."""

from __future__ import annotations

from collections.abc import Sequence

from . import _core
from ._core import Equilibrium, ParameterSet, SolveOptions
from .names import as_names
from .parameters import default_parameters


def minimize(
    elements: Sequence[str],
    mole_fractions: Sequence[float],
    kelvin: float,
    *,
    phases: str | Sequence[str] | None = None,
    parameters: ParameterSet | None = None,
    options: SolveOptions | None = None,
) -> Equilibrium:
    """Global minimum of the Gibbs energy at one temperature and composition, Eq. (E1).

    Parameters
    ----------
    elements : sequence of str
        Symbols of the elements present.
    mole_fractions : sequence of float
        One per element, each > 0, sum 1.
    kelvin : float
        Temperature [K].
    phases : str or sequence of str, optional
        Candidate phases; all but graphite when left out.
    parameters : ParameterSet, optional
        `default_parameters` when left out.
    options : SolveOptions, optional
        Settings of the minimizer.

    Returns
    -------
    Equilibrium
        Look at ``result.report.usable`` first.

    Raises
    ------
    InputError
        Unknown element or phase; mole fractions that do not sum to 1.

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
        as_names(elements),
        [float(x) for x in mole_fractions],
        float(kelvin),
        as_names(phases),
        options if options is not None else SolveOptions(),
    )
