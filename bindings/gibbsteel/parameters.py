"""Parameter files: the shipped one, and the user's own."""

from __future__ import annotations

import os
from functools import lru_cache
from importlib import resources

from . import _core
from ._core import ParameterSet


@lru_cache(maxsize=1)
def default_parameters() -> ParameterSet:
    """The parameter set that ships with the package; read once, then shared.

    Returns
    -------
    ParameterSet
        ``thermo_data/tool_steel.json`` of the installed package.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> gs.default_parameters().elements[:3]
    ['Fe', 'C', 'Cr']
    """
    file = resources.files("gibbsteel") / "thermo_data" / "tool_steel.json"
    with resources.as_file(file) as path:
        return _core.load_parameters(str(path))


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
        curves and sources of the set below.

    Returns
    -------
    ParameterSet
        Immutable; any number of threads may use it.

    Raises
    ------
    DataError
        With every problem of the file: place, what is wrong, what would be right.
    """
    return _core.load_parameters(os.fspath(file), on_top_of)


def write_parameters(parameters: ParameterSet) -> str:
    """The whole set as the text of one file, in canonical form."""
    return _core.write_parameters(parameters)


@lru_cache(maxsize=8)
def restore(text: str, file_name: str) -> ParameterSet:
    """A pickled set from its canonical text. The same text is read only once, so that a
    worker process that gets ten thousand steels holds one set."""
    return _core.parse_parameters(text, file_name)


def content_hash(parameters: ParameterSet) -> str:
    """16 hexadecimal digits that identify the content of a set."""
    return parameters.content_hash
