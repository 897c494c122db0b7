"""Published measurements near a soak: a part of `Steel`; measurements in files."""

from __future__ import annotations

import os
from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

from . import _core
from ._core import Evidence, EvidenceRow, Measurement, RecordedMeasurement
from .arguments import count, require
from .optional import needed
from .temperature import one_with_unit
from .trace import about_set, trace

if TYPE_CHECKING:
    import pandas as pd

_MOST_SOAKS = 5


def published_measurements() -> list[RecordedMeasurement]:
    """Published measurements of soaked steels that ship with the package.

    Returns
    -------
    list of RecordedMeasurement
        Those of the reference suite about a steel soaked at a stated temperature: what
        the matrix, the carbides or the residue hold, amounts of carbide, martensite
        start, retained austenite and hardness. ``.measurement`` of each goes into
        `calibrate`.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> known = gs.published_measurements()
    >>> known[0].measurement.steel, known[0].confidence
    ('bearing steel 1.1C-1.4Cr (52100 class)', 'high')
    """
    return _core.published_measurements()


def load_measurements(file: str | os.PathLike[str]) -> list[RecordedMeasurement]:
    """Read and check a file of measurements, for instance those of a shop.

    Parameters
    ----------
    file : path
        JSON; the format is described in ``thermo_data/MEASUREMENTS.md``.

    Returns
    -------
    list of RecordedMeasurement
        In the order of the file.

    Raises
    ------
    DataError
        With every problem of the file: place, what is wrong, what would be right.

    Examples
    --------
    >>> from importlib import resources
    >>> import gibbsteel as gs
    >>> folder = resources.files("gibbsteel") / "thermo_data"
    >>> known = gs.load_measurements(folder / "published_measurements.json")
    >>> known[0].measurement.quantity
    <Quantity Cr in M3C [wt%]>
    """
    return _core.load_measurements(os.fspath(file))


def _recorded(
    measurements: Iterable[RecordedMeasurement | Measurement] | None,
) -> list[RecordedMeasurement] | None:
    if measurements is None:
        return None
    remedy = (
        "give RecordedMeasurement, as load_measurements() returns them, or "
        "Measurement, as measurement() makes them"
    )
    try:
        given = list(measurements)
    except TypeError:
        given = require(measurements, list, "measurements", remedy)
    return [
        _core.own_measurement(one)
        if isinstance(one, Measurement)
        else require(one, RecordedMeasurement, "measurements", remedy)
        for one in given
    ]


class EvidenceMethods:
    """What `Steel` can say about what its numbers stand on."""

    _core: _core.CompiledSteel

    def evidence(
        self,
        *,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        most_soaks: int = _MOST_SOAKS,
        measurements: Iterable[RecordedMeasurement | Measurement] | None = None,
    ) -> Evidence:
        """Measurements of the steels most like this one, and how they come out.

        Each is computed with the parameter set of this steel, by the long-hold limit.
        How far a soak is from this one says Eq. (V1): the largest of the differences in
        carbon over 0.15 wt% (or a tenth of it), in another element over 0.5 wt% (or a
        fifth of it), and in temperature over 75 C.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : float
            Exactly one of them.
        most_soaks : int
            Soaks of measured steels to show, nearest first, 1 to 1000.
        measurements : iterable of RecordedMeasurement or Measurement, optional
            Where they are looked for, for instance those of `load_measurements` or
            `measurement` and `published_measurements` together; the published ones
            when left out. One made by `measurement` has its record as source, or "own
            measurement", and no confidence. To see all of your own in one table, not
            the nearest: ``calibrate(measurements, [])``.

        Returns
        -------
        Evidence
            Prints as tables with sources; ``rows``, ``nearest``, ``met`` of
            ``computed``; ``to_frame()`` is one row per number.

        Raises
        ------
        InputError
            gibbsteel.input.304: `most_soaks`; a temperature that cannot be meant.

        Examples
        --------
        >>> import gibbsteel as gs
        >>> heat = gs.Steel(C=0.88, Cr=4.2, Mo=5.0, W=6.3, V=1.9, Mn=0.3, Si=0.3)
        >>> found = heat.evidence(celsius=1210)
        >>> found.rows[0].steel, found.nearest < 1
        ('AISI M2 (HS6-5-2)', True)
        """
        at, unit = one_with_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
        most = count(most_soaks, "most_soaks", 1, 1000, "gibbsteel.input.304")
        return _core.evidence(self._core, at, most, _recorded(measurements), unit)


def _row(row: EvidenceRow) -> dict[str, Any]:
    return {
        "steel": row.steel,
        "temperature_C": row.celsius,
        "distance": row.distance,
        "distance_by": row.distance_by,
        "quantity": row.quantity,
        "unit": row.unit,
        "measured": row.value,
        "uncertainty": row.uncertainty,
        "computed": row.computed,
        "miss": row.miss,
        "met": row.met,
        "fitted_to": row.fitted_to,
        "from_memory": row.from_memory,
        "confidence": row.confidence,
        "phases": "" if row.phases is None else ", ".join(row.phases),
        "record": row.record,
        "source": row.source,
        "reason": row.reason,
    }


def evidence_to_frame(self: Evidence) -> pd.DataFrame:
    """A pandas table, one row per measured number, nearest first.

    Returns
    -------
    pandas.DataFrame
        ``measured``, ``uncertainty`` and ``computed`` are in ``unit``; ``miss`` is in
        uncertainties, computed less measured. ``attrs`` as in `State.to_frame`, without
        hash and basis.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> heat = gs.Steel(C=0.88, Cr=4.2, Mo=5.0, W=6.3, V=1.9)
    >>> frame = heat.evidence(celsius=1220, most_soaks=1).to_frame()
    >>> list(frame.columns[4:8])
    ['quantity', 'unit', 'measured', 'uncertainty']
    """
    pandas = needed("pandas", "to_frame()")
    frame = pandas.DataFrame([_row(row) for row in self.rows])
    return trace(frame, about_set(self.parameters, ""))
