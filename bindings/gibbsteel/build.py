"""How this copy was built."""

from __future__ import annotations

from typing import TYPE_CHECKING

from . import _core

if TYPE_CHECKING:
    from ._core import _BuildInfo as BuildInfo


def build_info() -> BuildInfo:
    """Version, compiler, flags and parameter file of this build.

    Returns
    -------
    dict
        ``version`` of the library; ``compiler``, ``flags``, ``cxx_standard`` and
        ``assertions`` of the build; version of ``pybind11``; ``parameters`` (title and
        edition) and ``parameters_hash`` of the parameter set that is compiled in, which
        equals the shipped file.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> info = gs.build_info()
    >>> info["version"] == gs.__version__
    True
    >>> info["parameters_hash"] == gs.default_parameters().content_hash
    True
    """
    return _core.build_info()
