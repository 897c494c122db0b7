"""Section maps: a part of `Steel`."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from . import _core
from ._core import Problem, SectionMap, SectionOptions, SolveOptions
from .errors import InputError
from .progress import Callback, reporting
from .soak_options import soak_options
from .temperature import given_unit, many_kelvin, one_kelvin, refuse_without_unit

_ONE = "section_map(C=(0, 2), celsius=(650, 1200))"
_TWO = "section_map(C=(0, 2), Cr=(0, 20), celsius=1000)"


def _percents(symbol: str, value: Any) -> tuple[float, float]:
    """Low and high [wt%]."""
    try:
        low, high = (float(number) for number in value)
    except (TypeError, ValueError):
        remedy = f"give two weight percents, for instance {symbol}=(0, 2)"
        what = f"is {value!r}, no pair of numbers"
        raise InputError(
            [Problem("gibbsteel.input.280", symbol, what, remedy)]
        ) from None
    return low, high


def _kelvin_pair(given: Mapping[str, Any]) -> tuple[float, float]:
    both = many_kelvin(**given)
    if len(both) != 2:
        what = f"are {len(both)} temperatures"
        raise InputError([Problem("gibbsteel.input.280", "temperature", what, _ONE)])
    return both[0], both[1]


def _run(
    steel: _core.CompiledSteel,
    elements: Mapping[str, Any],
    given: Mapping[str, Any],
    chosen: _core.SoakOptions,
    section: SectionOptions,
    progress: bool | Callback,
) -> SectionMap:
    ranges = [(symbol, _percents(symbol, value)) for symbol, value in elements.items()]
    if len(ranges) not in (1, 2):
        names = ", ".join(elements) or "nothing"
        what, remedy = f"is over {names}", f"give {_ONE} or {_TWO}"
        raise InputError([Problem("gibbsteel.input.281", "section", what, remedy)])
    with reporting(progress, 0) as callback:
        if len(ranges) == 1:
            kelvin = _kelvin_pair(given)
            return _core.section_over_temperature(
                steel, *ranges[0], kelvin, chosen, section, callback
            )
        return _core.section_over_elements(
            steel,
            *ranges[0],
            *ranges[1],
            one_kelvin(**given),
            chosen,
            section,
            callback,
        )


class SectionMethods:
    """What `Steel` can say about the fields around it."""

    _core: _core.CompiledSteel

    def section_map(
        self,
        *without_unit: Any,
        celsius: Any = None,
        fahrenheit: Any = None,
        kelvin: Any = None,
        section: SectionOptions | None = None,
        progress: bool | Callback = False,
        graphite: bool = False,
        phases: str | Sequence[str] | None = None,
        suppressed: str | Sequence[str] = (),
        at_soak_temperature: bool = False,
        options: SolveOptions | None = None,
        **elements: tuple[float, float],
    ) -> SectionMap:
        """Which phases are stable where, with the boundaries as lines.

        Parameters
        ----------
        celsius, fahrenheit, kelvin : pair of float, or float
            Exactly one of them: low and high for a map of temperature against one
            element; one temperature for a map over two elements.
        **elements : pair of float
            Weight percent from low to high, balance Fe, of one element or two, for
            instance ``C=(0, 2)``. The first is the axis to the right.
        section : SectionOptions, optional
            Tolerances (0.1 K and 0.001 wt% when left out; no more than a tenth of an
            axis) and mesh.
        progress : bool or callable
            True shows a counter (tqdm). A callable gets the number of soaks done and
            stops the search by returning False; the map then holds the part done.

        The other parameters are those of `soak`. A map takes thousands of soaks: some
        seconds for three elements, a minute for six. Ctrl-C ends it early.

        Returns
        -------
        SectionMap
            ``boundaries``, ``fields``, ``nodes``; look at ``complete``, ``gaps`` and
            ``warnings``.

        Raises
        ------
        InputError
            As `soak`, and for a range that does not go upwards, or is less than 0.0001
            wt% or 0.01 C wide (gibbsteel.input.282).

        Examples
        --------
        >>> import gibbsteel as gs
        >>> steel = gs.Steel({"C": 0.6})
        >>> coarse = gs.SectionOptions(columns=3, rows=3, temperature_tolerance=1)
        >>> map = steel.section_map(C=(0.4, 1.2), celsius=(700, 800), section=coarse)
        >>> len(map.fields)
        4
        """
        refuse_without_unit(without_unit, _ONE)
        given = {"celsius": celsius, "fahrenheit": fahrenheit, "kelvin": kelvin}
        unit = given_unit(**given)
        chosen = soak_options(
            graphite, phases, suppressed, at_soak_temperature, options, unit=unit
        )
        how = section if section is not None else SectionOptions()
        return _run(self._core, elements, given, chosen, how, progress)
