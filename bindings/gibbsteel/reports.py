"""One page per result that can be filed with a heat: text, HTML, files."""

from __future__ import annotations

import os
from html import escape
from pathlib import Path
from typing import Any

from . import _core
from ._core import Problem, Report, ShortSoak, State, Sweep
from .errors import InputError
from .hardening import hardening_options
from .html_table import html_lines, html_page, html_table

_SECTION = "margin:.8em 0 .2em 0;border-bottom:1px solid currentColor"
_DOCUMENT = """\
<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="color-scheme" content="light dark">
<title>{title}</title>
</head>
<body style="font-family:sans-serif">
{body}
</body>
</html>
"""


def state_report(self: State | ShortSoak, **quench: Any) -> Report:
    """One page: certificate, basis, carbides, matrix, estimates, origin, cautions.

    That of a short soak also holds the carbide as counted or computed and the band of
    the matrix, which its ``.state`` alone does not know.

    Parameters
    ----------
    quench : keywords
        Those of `hardening`, for the section of estimates: ``coldest_celsius=-80``,
        ``family="high-speed"``. A quench to 20 C when left out.

    Returns
    -------
    Report
        Shown as a page by a notebook; ``print(report)`` is the plain text,
        ``report.save("heat7.html")`` writes a file.

    Raises
    ------
    InputError
        As `hardening`.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> report = gs.Steel({"C": 0.8}, name="trial bar").soak(celsius=700).report()
    >>> print(report.text.splitlines()[0])
    trial bar at 700 C (1292 F), long-hold limit
    """
    return _core.state_report(self, hardening_options(**quench))


def sweep_report(self: Sweep, **quench: Any) -> Report:
    """One page of a sweep; at most 13 soaks are tabulated, evenly picked.

    Parameters
    ----------
    quench : keywords
        Those of `hardening`, for the table of estimates by temperature, as for a state.

    Returns
    -------
    Report
        As for a state. ``sweep.to_csv()`` writes every soak.

    Raises
    ------
    InputError
        As `hardening`.

    Examples
    --------
    >>> import gibbsteel as gs
    >>> sweep = gs.Steel({"C": 0.8}).sweep(celsius=range(600, 700, 2))
    >>> "shown: 13 of 50 soaks, evenly picked" in sweep.report().text
    True
    """
    return _core.sweep_report(self, hardening_options(**quench))


def report_html(self: Report) -> str:
    """The page as HTML for a notebook."""
    inside = ""
    for section in self.sections:
        inside += f'<div style="{_SECTION}">{escape(section.title)}</div>'
        inside += html_lines(section.lines) + html_table(section.table)
    return html_page(
        self.title,
        warnings=self.warnings,
        flag=self.flag,
        inside=inside,
        lines=[self.caution],
    )


def save(self: Report, path: str | os.PathLike[str]) -> None:
    """Write the page as a file that stands alone.

    Parameters
    ----------
    path : path
        Ends in ``.txt`` (plain text) or ``.html``; written as UTF-8, replaced when it
        exists.

    Raises
    ------
    InputError
        The name ends in something else (gibbsteel.input.291).
    """
    file = Path(path)
    if file.suffix == ".txt":
        text = self.text
    elif file.suffix == ".html":
        text = _DOCUMENT.format(title=escape(self.title), body=report_html(self))
    else:
        what = f"the file name {file.name!r} ends in neither .txt nor .html"
        remedy = 'give a name such as "heat7.html"'
        raise InputError([Problem("gibbsteel.input.291", "path", what, remedy)])
    file.write_text(text, encoding="utf-8")
