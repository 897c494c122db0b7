"""Packages that gibbsteel can use but does not need: imported when used."""

from __future__ import annotations

from importlib import import_module
from typing import Any


def needed(module: str, feature: str) -> Any:
    """The module, or an ImportError that says what to install.

    Parameters
    ----------
    module : str
        Name to import, for instance ``"tqdm.auto"``.
    feature : str
        What needs it, as the user writes it: ``"to_frame()"``.

    Raises
    ------
    ImportError
        Names the package and the Debian package that holds it.

    Examples
    --------
    >>> needed("json", "an example").__name__
    'json'
    """
    package = module.partition(".")[0]
    try:
        return import_module(module)
    except ImportError as error:
        raise ImportError(
            f"{feature} needs the package {package} (Debian: python3-{package})"
        ) from error
