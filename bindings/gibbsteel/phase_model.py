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
    """Gibbs energy [J/mol of formula units], Eq. (G1); see `derivatives`."""
    return derivatives(
        self,
        site_fractions=site_fractions,
        celsius=celsius,
        fahrenheit=fahrenheit,
        kelvin=kelvin,
    ).value


PhaseModel.derivatives = derivatives  # type: ignore[assignment]
PhaseModel.gibbs_energy = gibbs_energy  # type: ignore[assignment]
