"""Columns of a sweep as numpy arrays."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from ._core import Problem, Sweep
from .errors import InputError
from .rows import kinds_of, unit_of, wide_row

VIEWS = (
    "kelvin",
    "carbide_volume_percent",
    "carbide_mass_percent",
    "carbon_activity",
    "gibbs_energy",
    "density",
)


def array(self: Sweep, name: str) -> npt.NDArray[np.float64]:
    """One number of every state, as a read-only array of shape (n,).

    Parameters
    ----------
    name : str
        ``"kelvin"`` [K], ``"carbide_volume_percent"``, ``"carbide_mass_percent"``,
        ``"carbon_activity"``, ``"gibbs_energy"`` [J/mol of atoms] and ``"density"``
        [g/cm3] are views: nothing is copied, and the array keeps the sweep alive.
        Any other column of numbers of ``to_frame(wide=True)``, such as
        ``"matrix_C_weight_percent"`` or ``"temperature_C"``, is a copy.

    Returns
    -------
    numpy.ndarray
        float64, not writeable; NaN for a state that is not usable.

    Raises
    ------
    InputError
        There is no such column (gibbsteel.input.290).

    Examples
    --------
    >>> import gibbsteel as gs
    >>> sweep = gs.Steel({"C": 0.8}).sweep(celsius=[650, 700])
    >>> sweep.array("carbide_volume_percent").round(1)
    array([12.1, 12. ])
    """
    view = self._view(name)
    if view is not None:
        return view
    kinds = kinds_of(self)
    rows = [wide_row(state, kinds) for state in self]
    if not (unit_of(name) and any(name in row for row in rows)):
        columns = (column for row in rows for column in row if unit_of(column))
        remedy = "choose from: " + ", ".join(dict.fromkeys([*VIEWS, *columns]))
        what = f"there is no column of numbers {name!r}"
        raise InputError([Problem("gibbsteel.input.290", "name", what, remedy)])
    nan = float("nan")
    values = np.array([row.get(name, nan) for row in rows], dtype=np.float64)
    values.flags.writeable = False
    return values
