"""Warnings of results for those who want them raised or filtered by Python."""

from __future__ import annotations

import warnings

from ._core import SoakWarning, State, Sweep


class GibbsteelWarning(UserWarning):
    """What to know about a result (codes 3xx); only `warn` issues it.

    Attributes
    ----------
    code : str
        Stable code, such as ``"gibbsteel.warning.303"``.
    """

    def __init__(self, code: str, text: str) -> None:
        super().__init__(f"[{code}] {text}")
        self.code = code
        self.text = text

    def __reduce__(self) -> tuple[type[GibbsteelWarning], tuple[str, str]]:
        return type(self), (self.code, self.text)


class OutsideValidityWarning(GibbsteelWarning):
    """Temperature or composition outside the validity of the file (301, 302)."""


class NotUsableWarning(GibbsteelWarning):
    """The calculation gave no usable result (308)."""


_CLASSES = {
    "gibbsteel.warning.301": OutsideValidityWarning,
    "gibbsteel.warning.302": OutsideValidityWarning,
    "gibbsteel.warning.308": NotUsableWarning,
}


def _issued(warning: SoakWarning) -> GibbsteelWarning:
    kind = _CLASSES.get(warning.code, GibbsteelWarning)
    return kind(warning.code, warning.text)


def warn(self: State | Sweep) -> None:
    """Issue the warnings of this result through Python's `warnings`.

    A result carries its warnings as data and prints nothing by itself. In a script that
    must not overlook them, call this after the soak: filters, ``-W error`` and logging
    then apply.

    Warns
    -----
    GibbsteelWarning
        One for each distinct warning; `OutsideValidityWarning` and `NotUsableWarning`
        are derived from it.

    Examples
    --------
    >>> import gibbsteel as gs, warnings
    >>> state = gs.Steel({"C": 0.8}).soak(celsius=1350)
    >>> with warnings.catch_warnings():
    ...     warnings.simplefilter("error", gs.OutsideValidityWarning)
    ...     try:
    ...         state.warn()
    ...     except gs.OutsideValidityWarning as error:
    ...         print(error.code)
    gibbsteel.warning.301
    """
    for warning in self.warnings:
        warnings.warn(_issued(warning), stacklevel=2)
