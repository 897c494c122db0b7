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


def _number_columns(sweep: Sweep) -> dict[str, list[float]]:
    kinds = kinds_of(sweep)
    rows = [wide_row(state, kinds) for state in sweep]
    names = dict.fromkeys(name for row in rows for name in row if unit_of(name))
    nan = float("nan")
    return {name: [float(row.get(name, nan)) for row in rows] for name in names}


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
    columns = _number_columns(self)
    if name not in columns:
        choice = dict.fromkeys([*VIEWS, *columns])
        remedy = "choose from: " + ", ".join(choice)
        what = f"there is no column of numbers {name!r}"
        raise InputError([Problem("gibbsteel.input.290", "name", what, remedy)])
    values = np.array(columns[name], dtype=np.float64)
    values.flags.writeable = False
    return values
