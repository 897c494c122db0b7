"""Which quantity is to have which value: from keywords, a Quantity or a function."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import Any, TypeAlias

from . import quantities
from ._core import ParameterSet, Problem, Quantity, State
from .errors import InputError

QuantityLike: TypeAlias = Quantity | Callable[[State], float]

_OF_STEEL: dict[str, Callable[[], Quantity]] = {
    "matrix_carbon": lambda: quantities.matrix("C"),
    "carbide_volume_percent": quantities.carbide_volume_percent,
    "carbide_mass_percent": quantities.carbide_mass_percent,
    "carbon_activity": quantities.carbon_activity,
}
_BY_NAME: dict[str, Callable[[str], Quantity]] = {
    "matrix": quantities.matrix,
    "volume_percent": quantities.volume_percent,
    "mass_percent": quantities.mass_percent,
}
_REMEDY = "give exactly one, for instance matrix_carbon=0.50"


def _error(what: str, remedy: str = _REMEDY) -> InputError:
    return InputError([Problem("gibbsteel.input.255", "target", what, remedy)])


def as_quantity(quantity: QuantityLike) -> Quantity:
    """A Quantity as it is; a function of a State under its own name."""
    if isinstance(quantity, Quantity):
        return quantity
    if not callable(quantity):
        what = f"{quantity!r} is neither a Quantity nor a function of a State"
        raise _error(what, 'give for instance gibbsteel.quantities.matrix("C")')
    return Quantity(getattr(quantity, "__name__", "quantity"), "", quantity)


def require_known(quantities: Iterable[Quantity], parameters: ParameterSet) -> None:
    """Refuses what the parameter set lacks, in one go."""
    found = [p for quantity in quantities for p in quantity.problems(parameters)]
    if found:
        raise InputError(found)


def as_list(quantities: Any) -> list[Any]:
    """A single quantity, or function, as a list of one."""
    if isinstance(quantities, Quantity) or callable(quantities):
        return [quantities]
    return list(quantities)


def _one_entry(name: str, value: Any) -> tuple[str, Any]:
    if not isinstance(value, Mapping) or len(value) != 1:
        example = '{"Cr": 4.4}' if name == "matrix" else '{"M6C": 2}'
        raise _error(
            f"{name}={value!r} is not one name and its value", f"give {example}"
        )
    return next(iter(value.items()))


def _number(name: str, value: Any) -> float:
    try:
        if isinstance(value, (str, bytes)):
            raise TypeError
        return float(value)
    except (TypeError, ValueError):
        raise _error(f"{name}={value!r} is not a number", "give a number") from None


def target_of(
    quantity: QuantityLike | None, value: Any, **keywords: Any
) -> tuple[Quantity, float]:
    """The quantity and the value that it is to have."""
    given = {name: v for name, v in keywords.items() if v is not None}
    if quantity is not None:
        if given:
            names = " and ".join(f"{name}=" for name in given)
            raise _error(f"got a quantity and {names}")
        if value is None:
            raise _error("got a quantity without value=", "give the value: value=0.5")
        return as_quantity(quantity), _number("value", value)
    if value is not None:
        raise _error("got value= without a quantity")
    if len(given) != 1:
        names = " and ".join(f"{name}=" for name in given)
        raise _error(f"got {names}" if given else "got none")
    name, target = next(iter(given.items()))
    if name in _OF_STEEL:
        return _OF_STEEL[name](), _number(name, target)
    of, number = _one_entry(name, target)
    return _BY_NAME[name](str(of)), _number(name, number)
