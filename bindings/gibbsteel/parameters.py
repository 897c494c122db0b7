"""Parameter files: the shipped one, and the user's own."""

from __future__ import annotations

import os
from collections.abc import Mapping
from functools import lru_cache
from importlib import resources
from pathlib import Path
from typing import Any

from . import _core
from ._core import ParameterSet, Problem
from .arguments import require
from .errors import InputError
from .pickles import reading


def parameter_files() -> dict[str, Path]:
    """The parameter files that ship with the package, by name.

    Returns
    -------
    dict of str to Path
        Where they are installed; for reading, for laying a copy on top, for editors.
        Those in ``editions`` are earlier editions of ``tool_steel.json``, for results
        that were made with them; those in ``layers`` go on top of another file.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> files = gs.parameter_files()
    >>> [name for name in files if name.startswith("editions/")][:2]
    ['editions/2026-11-25.json', 'editions/2026-11-26.2.json']
    >>> gs.load_parameters(files["editions/2026-11-25.json"])
    <Tool steels: Fe C Cr Mo W V Co Ni Mn Si (edition 2026-11-25)>
    """
    folder = Path(str(resources.files("gibbsteel") / "thermo_data"))
    found = [
        file
        for pattern in ("tool_steel.json", "editions/*.json", "layers/*.json")
        for file in folder.glob(pattern)
    ]
    return {file.relative_to(folder).as_posix(): file for file in sorted(found)}


def default_parameters(*layers: str) -> ParameterSet:
    """The parameter set that ships with the package; read once, then shared.

    Parameters
    ----------
    layers : str, any number
        Layers that ship beside it, laid on it in this order: ``"liquid"``,
        ``"niobium_titanium_nitrogen"``, ``"iron_as_measured"``.
        ``thermo_data/layers`` has a page about each. With ``"liquid"`` and
        ``"iron_as_measured"`` the melt that goes with the latter is laid on top.

    Returns
    -------
    ParameterSet
        ``thermo_data/tool_steel.json`` of the installed package, with the layers.

    Raises
    ------
    InputError
        gibbsteel.input.221: no layer of that name, one given twice, or one that
        belongs on others without them.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> gs.default_parameters().elements[:3]
    ['Fe', 'C', 'Cr']
    >>> "liquid" in gs.default_parameters("liquid").phases
    True
    """
    for place, name in enumerate(layers):
        require(name, str, "layers", 'give names, for instance "liquid"')
        if name in layers[:place]:
            what = f"{name!r} is given twice"
            remedy = "give each layer once"
            raise InputError([Problem("gibbsteel.input.221", "layers", what, remedy)])
        _require_parts(name, layers[:place])
    return laid(layers + _completed_by(layers))


# A layer -> the layers that are not right together without it.
_COMPLETES = {"iron_as_measured_liquid": ("liquid", "iron_as_measured")}


def _require_parts(name: str, below: tuple[str, ...]) -> None:
    """Refuses a layer that completes others without those below it."""
    parts = _COMPLETES.get(name, ())
    if all(part in below for part in parts):
        return
    what = f"{name!r} belongs on top of {' and '.join(parts)}"
    listed = ", ".join(f'"{part}"' for part in parts)
    remedy = f"take default_parameters({listed}): it is then laid by itself"
    raise InputError([Problem("gibbsteel.input.221", "layers", what, remedy)])


def _completed_by(names: tuple[str, ...]) -> tuple[str, ...]:
    """The layers that these need and do not name."""
    return tuple(
        top
        for top, parts in _COMPLETES.items()
        if set(parts) <= set(names) and top not in names
    )


@lru_cache(maxsize=16)
def laid(layers: tuple[str, ...]) -> ParameterSet:
    """The file that ships with these layers, read once."""
    files = parameter_files()
    if not layers:
        return _core.load_parameters(str(files["tool_steel.json"]))
    *below, top = layers
    if f"layers/{top}.json" not in files:
        raise _no_such_layer(top, files)
    return load_parameters(files[f"layers/{top}.json"], on_top_of=laid(tuple(below)))


def _no_such_layer(name: object, files: Mapping[str, Path]) -> InputError:
    known = {Path(f).stem for f in files if f.startswith("layers/")}
    names = sorted(known - _COMPLETES.keys())  # those come by themselves
    what = f"{name!r} is no layer that ships"
    remedy = f"choose from {', '.join(names)}; for a file of your own load_parameters"
    return InputError([Problem("gibbsteel.input.221", "layers", what, remedy)])


def load_parameters(
    file: str | os.PathLike[str], *, on_top_of: ParameterSet | None = None
) -> ParameterSet:
    """Read and check a parameter file.

    Parameters
    ----------
    file : path
        JSON; the format is described in ``thermo_data/README.md``.
    on_top_of : ParameterSet, optional
        The file is then a layer: it may replace terms and add elements, phases,
        curves and sources of the set below. A layer is refused without it.

    Returns
    -------
    ParameterSet
        Immutable; any number of threads may use it.

    Raises
    ------
    DataError
        With every problem of the file: place, what is wrong, what would be right. A
        layer without the set below: gibbsteel.data.172 alone.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> file = gs.parameter_files()["tool_steel.json"]
    >>> gs.load_parameters(file) == gs.default_parameters()
    True
    """
    return _core.load_parameters(os.fspath(file), on_top_of)


def write_parameters(parameters: ParameterSet) -> str:
    """The whole set as the text of one file, in canonical form.

    Parameters
    ----------
    parameters : ParameterSet
        Layers are merged.

    Returns
    -------
    str
        JSON; reading it back and writing it again gives the same text.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> gs.write_parameters(gs.default_parameters())[:1]
    '{'
    """
    return _core.write_parameters(parameters)


def restore(mark: object, *fields: Any) -> ParameterSet:
    """A pickled set from its canonical text."""
    with reading(mark, "ParameterSet"):
        text, file_name = fields
        return parse_once(text, file_name)


@lru_cache(maxsize=8)
def parse_once(text: str, file_name: str = "quantity") -> ParameterSet:
    """From a text that a pickle holds, so that a worker process that gets ten thousand
    steels holds one set."""
    return _core.parse_parameters(text, file_name)


def content_hash(parameters: ParameterSet) -> str:
    """16 hexadecimal digits that identify the content of a set.

    Parameters
    ----------
    parameters : ParameterSet
        The names of its files do not count.

    Returns
    -------
    str
        The same as ``parameters.content_hash``. Finds mix-ups; no protection against
        intent.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> len(gs.content_hash(gs.default_parameters()))
    16
    """
    return parameters.content_hash
