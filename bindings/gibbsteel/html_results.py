"""`_repr_html_` of results: State, Sweep, Occurrence, Matrix, SolveReport."""

from __future__ import annotations

from ._core import (
    Matrix,
    Occurrence,
    SolveReport,
    State,
    Sweep,
    provenance,
    state_flag,
    state_title,
    sweep_flag,
)
from .html_table import html_number, html_page, html_percents, html_table, html_text
from .rows import kinds_of, warning_numbers

MOST_ROWS = 30  # of a sweep; then the middle is left out


def _name(steel: str) -> str:
    return steel or "steel"


def _origin(state: State) -> list[str]:
    told = provenance(state)
    return [
        f"{told['basis']}; parameters: {told['parameters']}, {told['parameters_hash']}",
        told["caution"],
    ]


def _amounts(item: Occurrence | Matrix) -> list[str]:
    return [html_number(item.volume_percent), html_number(item.mass_percent)]


def _state_rows(state: State) -> list[list[str]]:
    """Matrix, carbides, others; each with its composition."""
    symbols = list(state.occurrences[0].weight_percent)
    rows = [["", "vol%", "mass%", *[f"{symbol} wt%" for symbol in symbols]]]
    matrix = state.matrix_phases
    if matrix:
        percents = html_percents(state.matrix.weight_percent, symbols)
        names = " + ".join(matrix)
        rows.append([f"matrix: {names}", *_amounts(state.matrix), *percents])
    parts = [item for item in state.occurrences if item.name not in matrix]
    if len(matrix) > 1:
        parts = [*matrix.values(), *parts]
    for item in parts:
        percents = html_percents(item.weight_percent, symbols)
        rows.append([item.name, *_amounts(item), *percents])
    total = [state.carbide_volume_percent, state.carbide_mass_percent]
    return [*rows, ["all carbides", *map(html_number, total)]]


def state_html(self: State) -> str:
    """The state as a compact table."""
    rows = _state_rows(self) if self.usable else []
    return html_page(
        state_title(self),
        rows,
        self.warnings,
        flag=state_flag(self),
        lines=_origin(self),
    )


def _sweep_row(state: State, kinds: list[str], symbols: list[str]) -> list[str]:
    degrees = [f"{state.celsius:.0f}", f"{state.fahrenheit:.0f}"]
    if not state.usable:
        return [*degrees, "NOT USABLE"]
    amounts = [state.volume_percent_of(kind) for kind in kinds]
    volumes = ["-" if amount == 0.0 else html_number(amount) for amount in amounts]
    percents = html_percents(state.matrix.weight_percent, symbols)
    total = html_number(state.carbide_volume_percent)
    return [*degrees, total, *volumes, *percents, warning_numbers(state.warnings)]


def _sweep_rows(sweep: Sweep) -> list[list[str]]:
    kinds = kinds_of(sweep)
    with_matrix = [state for state in sweep if state.matrix_phases]
    elements = list(with_matrix[0].matrix.weight_percent) if with_matrix else []
    symbols = [symbol for symbol in elements if symbol != "Fe"]  # the balance
    heading = ["deg C", "deg F", "carbides vol%", *[f"{kind} vol%" for kind in kinds]]
    heading += [f"matrix {symbol} wt%" for symbol in symbols] + ["warnings"]
    rows = [_sweep_row(state, kinds, symbols) for state in sweep]
    if len(rows) > MOST_ROWS:
        half = MOST_ROWS // 2
        rows = [*rows[:half], ["..."], *rows[-half:]]
    return [heading, *rows]


def sweep_html(self: Sweep) -> str:
    """The sweep as a compact table, one row per soak."""
    title = f"{_name(self.steel)}, {len(self)} soaks, long-hold limit"
    if len(self) == 0:
        return html_page(title, flag="CANCELLED" if self.cancelled else "")
    return html_page(
        title,
        _sweep_rows(self),
        self.warnings,
        flag=sweep_flag(self),
        lines=_origin(self[0]),
    )


def occurrence_html(self: Occurrence) -> str:
    """Amounts, composition and site fractions."""
    amounts = [
        ["volume", html_number(self.volume_percent), "% of the state"],
        ["mass", html_number(self.mass_percent), "% of the state"],
        ["atoms", html_number(self.mole_percent), "% of the state"],
        ["density", html_number(self.density, 3), "g/cm3"],
    ]
    symbols = list(self.weight_percent)
    fractions = [html_number(value, 4) for value in self.atom_fraction.values()]
    composition = [
        ["", *symbols],
        ["weight percent", *html_percents(self.weight_percent, symbols)],
        ["atom fraction", *fractions],
    ]
    sites = [
        [f"{count:g} sites", *[f"{name} {y:.4f}" for name, y in filled.items()]]
        for count, filled in zip(self.sites, self.site_fractions, strict=True)
    ]
    inside = html_table(composition) + html_table(sites, heading=False)
    title = f"{self.name} ({self.role})"
    return html_page(title, amounts, heading=False, inside=inside)


def matrix_html(self: Matrix) -> str:
    """Amounts and composition of all matrix phases together."""
    symbols = list(self.weight_percent)
    fractions = [html_number(value, 4) for value in self.atom_fraction.values()]
    rows = [
        ["", *symbols],
        ["weight percent", *html_percents(self.weight_percent, symbols)],
        ["atom fraction", *fractions],
    ]
    volume, mass = _amounts(self)
    return html_page(f"matrix: {volume} % of the volume, {mass} % of the mass", rows)


def solve_report_html(self: SolveReport) -> str:
    """How the minimization went, as the text prints it."""
    rows = [line.split("  ", 1) for line in str(self).splitlines()]
    rows = [[name, value.strip()] for name, value in rows]
    flag = "" if self.usable else f"NOT USABLE: {self.reason}"
    return html_page("How the minimization went", rows, heading=False, flag=flag)


def printed_html(self: object) -> str:
    """The text that `print` shows, under its one line; for every other result type."""
    return html_page(repr(self).strip("<>"), inside=html_text(str(self)))
