"""Compact HTML for notebooks: inherits colours, no scripts, nothing from elsewhere.

`html_page` serves every result type: give it a title, rows and warnings; or, where the
printed text is good enough, a title and ``inside=html_text(str(result))``.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from html import escape
from typing import Any

# Inherited colours and lines in the colour of the text are readable on light and dark
# pages. The one colour of our own, for what must not be overlooked, is of middle
# lightness for the same reason, and never the only sign.
_ALERT = "#c8601e"
_PAGE = "line-height:1.4;max-width:70em;overflow-x:auto"
_FLAGGED = f"{_PAGE};border:2px dashed {_ALERT};padding:.5em"
_FLAG = f"border-left:.5em solid {_ALERT};padding-left:.5em;font-weight:bold"
_TABLE = (
    "border-collapse:separate;border-spacing:1em .1em;text-align:right;"
    "font-variant-numeric:tabular-nums"
)
_LABEL = "text-align:left;font-weight:normal"
_FIRST = "text-align:left"
_SMALL = "font-size:smaller;margin:.3em 0"

Row = Sequence[Any]


def html_number(value: Any, digits: int = 2) -> str:
    """A number with a fixed number of digits; "n/a" when it is not known."""
    return "n/a" if math.isnan(value) else f"{value:.{digits}f}"


def html_percents(
    weight_percent: dict[str, float], symbols: Iterable[str]
) -> list[str]:
    """Weight percents as text, carbon with one digit more."""
    return [
        html_number(weight_percent.get(symbol, math.nan), 3 if symbol == "C" else 2)
        for symbol in symbols
    ]


def _row(row: Row, width: int) -> str:
    label, *cells = [escape(str(cell)) for cell in row]
    text = f'<th scope="row" style="{_LABEL}">{label}</th>'
    text += "".join(f"<td>{cell}</td>" for cell in cells)
    missing = width - len(row)
    if missing > 0:
        text += f'<td colspan="{missing}"></td>'
    return f"<tr>{text}</tr>"


def html_table(rows: Sequence[Row], *, heading: bool = True) -> str:
    """A table; the first column labels the rows.

    Parameters
    ----------
    rows : sequence of sequences
        Anything that prints; escaped here. Short rows are filled.
    heading : bool
        True: the first row holds the column headings.

    Examples
    --------
    >>> html_table([["C", 0.55]], heading=False)[-34:]
    '<td>0.55</td></tr></tbody></table>'
    """
    if not rows:
        return ""
    width = max(len(row) for row in rows)
    text = ""
    if heading:
        first, *rows = rows
        names = [escape(str(name)) for name in [*first, *[""] * (width - len(first))]]
        cells = "".join(f'<th scope="col">{name}</th>' for name in names[1:])
        corner = f'<th scope="col" style="{_FIRST}">{names[0]}</th>'
        text = f"<thead><tr>{corner}{cells}</tr></thead>"
    body = "".join(_row(row, width) for row in rows)
    return f'<table style="{_TABLE}">{text}<tbody>{body}</tbody></table>'


def html_text(text: str) -> str:
    """A plain-text table as it prints, for a result type without a table of its own.

    Examples
    --------
    >>> html_text("a  1\\nb  2")
    '<pre style="line-height:1.3">a  1\\nb  2</pre>'
    """
    return f'<pre style="line-height:1.3">{escape(text)}</pre>'


def html_lines(lines: Iterable[str]) -> str:
    """Sentences in small print, one a line."""
    text = "<br>".join(escape(line) for line in lines)
    return f'<p style="{_SMALL}">{text}</p>' if text else ""


def html_warnings(warnings: Iterable[Any]) -> str:
    """A list of warnings: texts, or objects whose text holds code and sentence."""
    items = "".join(f"<li>{escape(str(warning))}</li>" for warning in warnings)
    return f'<ul style="{_SMALL};padding-left:1.5em">{items}</ul>' if items else ""


def html_page(
    title: str,
    rows: Sequence[Row] = (),
    warnings: Iterable[Any] = (),
    *,
    heading: bool = True,
    flag: str = "",
    lines: Iterable[str] = (),
    inside: str = "",
) -> str:
    """What `_repr_html_` of a result returns.

    Parameters
    ----------
    title : str
        What it is, in one line.
    rows : sequence of sequences
        The table, see `html_table`.
    warnings : iterable
        Listed below the table.
    heading : bool
        True: the first of the rows holds the column headings.
    flag : str
        Not empty: the result is not to be trusted as it stands, and why. It then stands
        in a dashed frame, and the flag above the table.
    lines : iterable of str
        Sentences in small print below the table: basis, parameter file, caution.
    inside : str
        HTML that was made by the functions of this module, below the table.

    Returns
    -------
    str
        One ``div``.
    """
    text = f"<div><strong>{escape(title)}</strong></div>"
    if flag:
        text += f'<div role="alert" style="{_FLAG}">{escape(flag)}</div>'
    text += html_table(rows, heading=heading) + inside
    text += html_warnings(warnings) + html_lines(lines)
    return f'<div style="{_FLAGGED if flag else _PAGE}">{text}</div>'
