"""Energies of single phases: methods added to the compiled PhaseModel."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from ._core import PhaseDerivatives, PhaseModel
from .temperature import one_kelvin


def derivatives(
    self: PhaseModel,
    *,
    site_fractions: Sequence[float],
    celsius: Any = None,
    fahrenheit: Any = None,
    kelvin: Any = None,
) -> PhaseDerivatives:
    """Gibbs energy and all derivatives per mole of formula units, Eq. (G1).

    Parameters
    ----------
    site_fractions : sequence of float
        One per entry of ``constituents``, each in [0, 1].
    celsius, fahrenheit, kelvin : float
        Exactly one of them.

    Returns
    -------
    PhaseDerivatives
        Energies [J/mol of formula units] and derivatives with their shapes.

    Raises
    ------
    InputError
        Number of site fractions; temperature without or in a wrong unit.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> model = gs.default_parameters().phase_model("austenite", ["Fe", "C"])
    >>> d = model.derivatives(site_fractions=[1.0, 0.04, 0.96], celsius=1000)
    >>> d.dy.shape, d.dy2.shape
    ((3,), (3, 3))
    """
    at = one_kelvin(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
    return self._evaluate(at, [float(y) for y in site_fractions])


def gibbs_energy(
    self: PhaseModel,
    *,
    site_fractions: Sequence[float],
    celsius: Any = None,
    fahrenheit: Any = None,
    kelvin: Any = None,
) -> float:
    """Gibbs energy [J/mol of formula units], Eq. (G1).

    Parameters
    ----------
    site_fractions : sequence of float
        One per entry of ``constituents``, each in [0, 1].
    celsius, fahrenheit, kelvin : float
        Exactly one of them.

    Returns
    -------
    float
        Per mole of formula units [J/mol].

    Examples
    --------
    >>> import gibbsteel as gs
    >>> model = gs.default_parameters().phase_model("austenite", ["Fe"])
    >>> model.gibbs_energy(site_fractions=[1.0, 1.0], celsius=1000) < 0.0
    True
    """
    return derivatives(
        self,
        site_fractions=site_fractions,
        celsius=celsius,
        fahrenheit=fahrenheit,
        kelvin=kelvin,
    ).value


PhaseModel.derivatives = derivatives  # type: ignore[assignment]
PhaseModel.gibbs_energy = gibbs_energy  # type: ignore[assignment]
