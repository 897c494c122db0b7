"""Texts that may not be such: what a message or a name can hold."""

from __future__ import annotations

from typing import Any

from ._core import Problem
from .arguments import require
from .errors import InputError

_MOST_SHOWN = 60


def shown(value: Any) -> str:
    """A value in a message, cut where it is long.

    Examples
    --------
    >>> shown("0.5"), len(shown(10**400)), shown(10**9999)
    ("'0.5'", 60, 'a number that is too large')
    """
    try:
        text = repr(value)
    except ValueError:  # of thousands of digits
        return "a number that is too large"
    return text if len(text) <= _MOST_SHOWN else text[: _MOST_SHOWN - 3] + "..."


def writable(text: str) -> str:
    """With escapes for what UTF-8 cannot write: bytes that were read as another code.

    Examples
    --------
    >>> writable("Cr") == "Cr", writable("K\\udce4")
    (True, 'K\\\\udce4')
    """
    return text.encode("utf-8", "backslashreplace").decode()


def name_text(name: Any) -> str:
    """The name of a steel.

    Raises
    ------
    InputError
        gibbsteel.input.220
    """
    text = require(name, str, "name", "give a text, for instance name='heat 7'")
    if writable(text) == text:
        return text
    remedy = "read its file in the encoding it has, for instance encoding='cp1252'"
    what = f"is {text!r}, which UTF-8 cannot write"
    raise InputError([Problem("gibbsteel.input.220", "name", what, remedy)])
