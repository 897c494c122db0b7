"""Records of this folder judged with and without the layer; counts by use."""

import json
from pathlib import Path

import gibbsteel as gs
from evaluate import library
from evaluate.verdict import PASS, judge

from . import kinds

FOLDER = Path(__file__).resolve().parent
LAYER = FOLDER.parents[2] / "thermo_data" / "layers" / "niobium_titanium_nitrogen.json"
USES = ("fit", "taken over", "held back")


def records():
    return json.loads((FOLDER / "records.json").read_text("utf-8"))["records"]


def parameters(file=LAYER):
    """The layer, or another form of it, on the shipped file."""
    return gs.load_parameters(file, on_top_of=gs.default_parameters())


def outcomes(chosen, layered):
    """Judges the records with this parameter set, then goes back to the one before."""
    before = library._CHOSEN[:]
    library.use(layered)
    try:
        return [judge(record) for record in chosen]
    finally:
        library.use(before[-1] if before else None)


def counts(judged, use):
    """(records, within 1, within 2 uncertainties) of those that were used so."""
    of_use = [o for o in judged if o.record["use"] == use]
    within = [sum(abs(o.miss) <= n for o in of_use) for n in (1.0, 2.0)]
    return len(of_use), *within


def systems(judged):
    """(steel or system, use) -> (within 1, records), in order of appearance."""
    found = {}
    for outcome in judged:
        key = outcome.record["steel"], outcome.record["use"]
        passed, total = found.get(key, (0, 0))
        found[key] = passed + (outcome.verdict == PASS), total + 1
    return found


__all__ = ["LAYER", "USES", "counts", "kinds", "outcomes", "parameters", "records"]
