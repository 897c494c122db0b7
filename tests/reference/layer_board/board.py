"""Records of one layer, judged with it on the shipped file; counts by use."""

import json
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import gibbsteel as gs
from evaluate import library
from evaluate.verdict import PASS, judge

LAYERS = Path(__file__).resolve().parents[3] / "thermo_data" / "layers"


@dataclass(frozen=True)
class Board:
    folder: Path  # of records.json and frozen.json
    stem: str  # of the layer's file and page
    name: str  # "layer with ..."
    meaning: dict  # use of a record -> what that means, on the layer's page
    need: str = ""  # what its records need and the shipped file does not have
    lacking: str = ""  # so begins the reason of a record that the file leaves out
    below: tuple[str, ...] = ()  # stems of the layers between it and the shipped file
    borrowed: Callable | None = None  # () -> records that are those of another board

    @property
    def layer(self):
        return LAYERS / f"{self.stem}.json"

    @property
    def page(self):
        return LAYERS / f"{self.stem}.md"

    @property
    def frozen_file(self):
        return self.folder / "frozen.json"

    def records(self):
        if self.borrowed:
            return self.borrowed()
        return json.loads((self.folder / "records.json").read_text("utf-8"))["records"]

    def frozen(self):
        """Ids that passed when last frozen; none before the first time."""
        if not self.frozen_file.exists():
            return []
        return json.loads(self.frozen_file.read_text("utf-8"))

    def parameters(self, file=None):
        """The layer, or another form of it, on what lies below it."""
        below = [LAYERS / f"{stem}.json" for stem in self.below]
        return laid([*below, file or self.layer])

    def outcomes(self):
        return outcomes(self.records(), self.parameters())


def laid(files):
    """These files as layers on the shipped file, in this order."""
    found = gs.default_parameters()
    for file in files:
        found = gs.load_parameters(file, on_top_of=found)
    return found


def outcomes(chosen, layered):
    """Judges the records with this parameter set, then goes back to the one before."""
    with library.using(layered):
        return [judge(record) for record in chosen]


def passes(judged):
    return [o.record["id"] for o in judged if o.verdict == PASS]


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
