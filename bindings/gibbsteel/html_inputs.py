"""`_repr_html_` of what goes in: Steel and ParameterSet."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ._core import ParameterSet
from .html_table import html_page
from .temperature import ICE_POINT_K

if TYPE_CHECKING:
    from .steel import Steel


def _listed(weight_percent: dict[str, float]) -> str:
    amounts = [f"{name} {value:.4g}" for name, value in weight_percent.items() if value]
    return ", ".join(amounts) or "nothing"


def steel_html(self: Steel) -> str:
    """The mill certificate, sorted."""
    analysis = self.analysis
    modelled = analysis.modelled
    symbols = list(dict.fromkeys([*modelled, *analysis.given]))
    given = {symbol: f"{value:g}" for symbol, value in analysis.given.items()}
    rows = [
        ["weight percent", *symbols],
        ["as given", *[given.get(symbol, "balance") for symbol in symbols]],
        [
            "in the calculation",
            *[f"{modelled[s]:.4g}" if s in modelled else "-" for s in symbols],
        ],
    ]
    lines = [f"not modelled: {_listed(analysis.not_modelled)} (wt%)"]
    if analysis.bound:
        bound = {item.name: item.weight_percent for item in analysis.bound}
        lines.append(f"bound by tramp elements: {_listed(bound)} (wt%)")
    parameters = self.parameters
    lines.append(f"parameters: {parameters.title}, {parameters.content_hash}")
    return html_page(self.name or "steel", rows, lines=lines)


def parameter_set_html(self: ParameterSet) -> str:
    """What the parameter file holds and where it is valid."""
    ranges = self.weight_percent_validity
    low, high = self.kelvin_validity
    elements = self.elements
    rows = [
        ["element", *elements],
        ["lowest wt%", *[_end(ranges, symbol, 0) for symbol in elements]],
        ["highest wt%", *[_end(ranges, symbol, 1) for symbol in elements]],
    ]
    lines = [
        f"valid from {low - ICE_POINT_K:.0f} to {high - ICE_POINT_K:.0f} C",
        "phase models: " + ", ".join(self.phases),
        "files, lowest layer first: " + ", ".join(self.files),
        f"{len(self.sources)} sources; hash {self.content_hash}",
        f"chemical potentials refer to: {self.reference_state}",
    ]
    return html_page(self.title, rows, lines=lines)


def _end(ranges: dict[str, tuple[float, float]], symbol: str, end: int) -> str:
    return f"{ranges[symbol][end]:g}" if symbol in ranges else "-"
