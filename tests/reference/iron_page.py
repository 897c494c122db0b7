"""The computed part of thermo_data/layers/iron_as_measured.md: both layers."""

import json

import gibbsteel as gs
import iron_liquid_layer
import liquid_layer
from accuracy_page.markdown import number, table
from iron_layer import BOARD, FOLDER
from layer_board import change, layer_file
from layer_board.board import laid, outcomes
from layer_board.page import MARKS

WHY = json.loads((FOLDER / "lost.json").read_text("utf-8"))
STEELS = (  # name, weight percents, soak [C]
    ("1095", {"C": 0.95, "Mn": 0.4, "Si": 0.2}, 780),
    ("52100", {"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}, 845),
    ("H13", {"C": 0.4, "Cr": 5.2, "Mo": 1.4, "V": 1.0, "Si": 1.0, "Mn": 0.4}, 1030),
    ("A2", {"C": 1.0, "Cr": 5.2, "Mo": 1.1, "V": 0.3, "Mn": 0.6, "Si": 0.3}, 960),
    ("D2", {"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8, "Mn": 0.3, "Si": 0.3}, 1030),
    ("440C", {"C": 1.05, "Cr": 17.0, "Mo": 0.5, "Mn": 0.4, "Si": 0.4}, 1050),
    ("M2", {"C": 0.85, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9}, 1200),
    ("0.55C matrix-type", {"C": 0.55, "Cr": 4.2, "Mo": 2.8, "W": 1.5, "V": 1.0}, 1120),
)


def judged():
    """[(before, after)] of the records of the file, and of those of the liquid."""
    liquid = liquid_layer.BOARD
    return [
        (outcomes(BOARD.records(), laid([])), BOARD.outcomes()),
        (
            outcomes(iron_liquid_layer.BOARD.records(), liquid.parameters()),
            iron_liquid_layer.BOARD.outcomes(),
        ),
    ]


def tables(of_both):
    solid, liquid = of_both
    return "\n\n".join(
        [
            "### Records of the shipped file",
            change.counts(_GROUPS, *solid),
            change.gained(*solid),
            change.lost(*solid, _why),
            "### Records of the layer with liquid, both layers on that one",
            change.counts(_GROUPS, *liquid),
            change.gained(*liquid),
            change.lost(*liquid, _why),
            "### What it does to soaked steels",
            steels(),
            "### The numbers [J/mol, J/(mol K)]",
            numbers(),
        ]
    )


def write(_board, _judged):
    """Of either scoreboard: both are on the page."""
    begin, end = MARKS
    head, rest = BOARD.page.read_text("utf-8").split(begin, 1)
    tail = rest.split(end, 1)[1]
    text = head + begin + tables(judged()) + "\n" + end + tail
    BOARD.page.write_text(text, encoding="utf-8")


def steels():
    rows = []
    sets = laid([]), BOARD.parameters()
    for name, percents, celsius in STEELS:
        soaks = [gs.Steel(percents, parameters=p).soak(celsius=celsius) for p in sets]
        carbon = [number(s.matrix.weight_percent["C"], 3) for s in soaks]
        carbide = [number(s.carbide_volume_percent) for s in soaks]
        rows.append([name, celsius, *carbon, *carbide])
    header = ["steel", "soak [C]", "C in the matrix [wt%], file", "with the layer"]
    return table([*header, "carbide [vol%], file", "with the layer"], rows)


def numbers():
    melt = iron_liquid_layer.BOARD
    rows = [
        *_numbers(BOARD, laid([])),
        *_numbers(melt, liquid_layer.BOARD.parameters()),
    ]
    return table(["phase", "on", "power", "before", "layer", "+-"], rows)


def _numbers(board, below):
    was = json.loads(gs.write_parameters(below))["phases"]
    for phase, content in layer_file.read(board.layer)["phases"].items():
        for term in content["energy"]:
            before = _terms(was[phase]["energy"], term)
            for power, deviation in term["standard_deviations"].items():
                cells = before.get(power, 0.0), term["terms"][power], deviation
                yield [phase, _on(term), power, *(number(c, 2) for c in cells)]


def _terms(terms, wanted):
    for term in terms:
        if term["on"] == wanted["on"] and term.get("order") == wanted.get("order"):
            return term["terms"]
    return {}


def _on(term):
    parts = [" + ".join(e) if isinstance(e, list) else e for e in term["on"]]
    order = f", order {term['order']}" if "order" in term else ""
    return f"({', '.join(parts)}){order}"


def _why(record):
    return WHY[record["id"]]


_GROUPS = {
    "fitted to by this layer": lambda r: r["use"] == "fit",
    "fitted to by what is below": lambda r: r["fitted"] and r["use"] != "fit",
    "not fitted to": lambda r: not r["fitted"] and r["use"] != "fit",
    "all": lambda r: True,
}
