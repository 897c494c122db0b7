"""Arguments of a screen: compositions, temperatures, settings of the soaks."""

from __future__ import annotations

import hashlib
import pickle
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any, cast

import numpy as np
import numpy.typing as npt

from . import _core
from ._core import (
    ParameterSet,
    Problem,
    Quantity,
    ScreenTable,
    SolveOptions,
)
from .arguments import require, threads_of, whole
from .errors import InputError
from .names import as_names
from .parameters import content_hash, default_parameters
from .screen_columns import (
    as_steels,
    compositions_of,
    numbers_and_elements,
    settings_of,
)
from .screen_numbers import real_numbers, where_no_numbers
from .soak_options import soak_options
from .target_quantity import as_list
from .temperature import given_unit, many_kelvin, one_kelvin

_READ = "give numbers, or gs.steels_from_table(table) instead of the table"
_TABLE = "give an array with one row per composition and one column per element"


@dataclass(frozen=True)
class ScreenJob:
    """A screen that is ready to run, whole or in parts."""

    elements: list[str]
    compositions: npt.NDArray[np.float64]
    kelvin: npt.NDArray[np.float64]
    one_per_composition: bool
    options: _core.ScreenOptions
    settings: dict[str, Any]  # what the options were made of
    threads: int

    @cached_property
    def compiled(self) -> _core.ScreenInput:
        """Checked by the first run."""
        return _core.ScreenInput(
            self.elements, self.compositions, self.kelvin, self.one_per_composition
        )

    @property
    def rows(self) -> int:
        """Of the whole screen."""
        count = len(self.compositions)
        return count if self.one_per_composition else count * len(self.kelvin)

    def part(self, which: Any) -> ScreenJob:
        """The same for some of the compositions: a slice, or a list of indices."""
        kelvin = self.kelvin[which] if self.one_per_composition else self.kelvin
        chosen = np.ascontiguousarray(self.compositions[which])
        return replace(self, compositions=chosen, kelvin=kelvin)

    def range_of_rows(self, first: int, last: int | None) -> tuple[int, int]:
        """First and last row, the latter excluded and no more than there are."""
        begin = whole(first, "first_row")
        end = self.rows if last is None else whole(last, "last_row")
        code = "gibbsteel.input.323"
        remedy = "give the number of a row, counted from 0"
        problems = [
            Problem(code, name, f"is {row} of {self.rows} rows", remedy)
            for name, row, there in (
                ("first_row", begin, 0 <= begin <= self.rows),
                ("last_row", end, end >= 0),
            )
            if not there
        ]
        if problems:
            raise InputError(problems)
        return begin, min(end, self.rows)

    def run(
        self, first: int, last: int, progress: Callable[[int], object] | None
    ) -> tuple[ScreenTable, bool]:
        """Rows `first` to `last`, and whether the caller stopped it."""
        return _core.run_screen(
            self.compiled, self.options, first, last, self.threads, progress
        )

    def fingerprint(self) -> dict[str, Any]:
        """What decides the numbers: equal for two screens that give the same ones.

        A Python function of a quantity is known by its name and unit only.
        """
        data = hashlib.sha256()
        for array in (self.compositions, self.kelvin):
            data.update(repr(array.shape).encode())
            data.update(np.ascontiguousarray(array).data)
        return {
            "library_version": _core.version,
            "parameters_hash": content_hash(self.settings["parameters"]),
            "input_hash": data.hexdigest(),
            "elements": self.elements,
            "one_per_composition": self.one_per_composition,
            "block_rows": _core.SCREEN_BLOCK_ROWS,
            "options_hash": hashlib.sha256(self._options_text()).hexdigest(),
            "quantities": [q.label for q in self.settings["quantities"]],
        }

    def _options_text(self) -> bytes:
        kept = {k: v for k, v in self.settings.items() if k != "parameters"}
        solve: SolveOptions = kept.pop("options") or SolveOptions()
        kept["options"] = pickle.dumps(solve, protocol=4).hex()
        kept["quantities"] = [_origin(quantity) for quantity in kept["quantities"]]
        return repr(sorted(kept.items())).encode()


def _origin(quantity: Quantity) -> str:
    """What makes it again, as text; of a user's own function its name and unit.

    Raises
    ------
    InputError
        A function of the user's own after minutes (gibbsteel.input.220).
    """
    try:
        _, arguments = cast("tuple[Any, tuple[Any, ...]]", quantity.__reduce__())
    except TypeError:
        what = f"{quantity.label} cannot be told from another one of this name"
        remedy = "screen without a folder"
        problem = Problem("gibbsteel.input.220", "quantities", what, remedy)
        raise InputError([problem]) from None
    return repr([argument for argument in arguments if isinstance(argument, str)])


def _numbers(compositions: Any, elements: Sequence[str]) -> npt.NDArray[np.float64]:
    """An array of float64 in the order of rows; not copied when it is one already.

    What is masked is not known: NaN.
    """
    try:
        array = np.ascontiguousarray(real_numbers(compositions), dtype=np.float64)
    except (TypeError, ValueError, OverflowError):
        what = where_no_numbers(compositions, elements)
        remedy = _READ if hasattr(compositions, "columns") else _TABLE
        problem = Problem("gibbsteel.input.320", "compositions", what, remedy)
        raise InputError([problem]) from None
    if array.ndim != 2 or (elements and array.shape[1] != len(elements)):
        shape = " x ".join(map(str, np.shape(compositions)))
        what = f"are {shape or 'one number'} for {len(elements)} elements"
        raise InputError([Problem("gibbsteel.input.320", "compositions", what, _TABLE)])
    return array


def _kelvins(**given: Any) -> npt.NDArray[np.float64]:
    """Temperatures [K]: one, a series, or an array of any length."""
    chosen = {name: value for name, value in given.items() if value is not None}
    values = list(chosen.values())
    if len(chosen) == 1 and isinstance(values[0], np.ndarray) and values[0].ndim == 1:
        name = next(iter(chosen))
        try:
            array = np.asarray(real_numbers(values[0]), dtype=np.float64)
        except (TypeError, ValueError):
            what = f"{name}= holds {values[0].dtype}, no temperatures"
            remedy = "give a series, for instance celsius=range(900, 1231, 5)"
            problem = Problem("gibbsteel.input.211", "temperature", what, remedy)
            raise InputError([problem]) from None
        if name == "celsius":
            array = array + 273.15
        elif name == "fahrenheit":
            array = (array - 32.0) / 1.8 + 273.15
        return np.ascontiguousarray(array)
    if len(chosen) == 1 and np.ndim(values[0]) == 0 and not _is_series(values[0]):
        return np.array([one_kelvin(**given)])
    return np.array(many_kelvin(**given), dtype=np.float64)


def _is_series(value: Any) -> bool:
    return isinstance(value, Iterable) and not isinstance(value, (str, bytes))


def _settings(
    *,
    quantities: Quantity | Sequence[Quantity] = (),
    parameters: ParameterSet | None = None,
    bind_tramp_elements: bool | None = None,
    graphite: bool = False,
    phases: str | Sequence[str] | None = None,
    suppressed: str | Sequence[str] = (),
    at_soak_temperature: bool = False,
    certify: str | None = None,
    options: SolveOptions | None = None,
) -> dict[str, Any]:
    """What the options are made of, in one form however it was given."""
    place, remedy = "quantities", "give a list, such as [gs.quantities.hardness_hrc()]"
    return {
        "quantities": [
            require(q, Quantity, place, remedy) for q in as_list(quantities)
        ],
        "parameters": default_parameters() if parameters is None else parameters,
        "bind_tramp_elements": bool(bind_tramp_elements),
        "graphite": bool(graphite),
        "phases": None if phases is None else as_names(phases),
        "suppressed": as_names(suppressed),
        "at_soak_temperature": bool(at_soak_temperature),
        "certify": certify,
        "options": options,
    }


def _options(settings: dict[str, Any], unit: str) -> _core.ScreenOptions:
    of_soaks = ("graphite", "phases", "suppressed", "at_soak_temperature", "options")
    soak = soak_options(
        **{name: settings[name] for name in of_soaks},
        certify=settings["certify"],
        unit=unit,
    )
    of_steels = ("parameters", "bind_tramp_elements", "quantities")
    return _core.ScreenOptions(soak, **{name: settings[name] for name in of_steels})


def screen_job(
    compositions: Any,
    elements: Iterable[str] | None = None,
    *,
    celsius: Any = None,
    fahrenheit: Any = None,
    kelvin: Any = None,
    one_per_composition: bool = False,
    threads: int = 0,
    **given: Any,
) -> ScreenJob:
    """See `gibbsteel.screen` for the arguments."""
    steels = as_steels(compositions)
    if steels:
        table, names = compositions_of(steels, elements)
        given = settings_of(steels, given)
    else:
        table, names = numbers_and_elements(compositions, elements)
    settings = _settings(**given)
    unit = given_unit(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin)
    return ScreenJob(
        elements=names,
        compositions=_numbers(table, names),
        kelvin=_kelvins(celsius=celsius, fahrenheit=fahrenheit, kelvin=kelvin),
        one_per_composition=bool(one_per_composition),
        options=_options(settings, unit),
        settings=settings,
        threads=threads_of(threads),
    )
