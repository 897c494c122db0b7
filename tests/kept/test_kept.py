"""What earlier versions wrote is read by this one, and says the same.

A failure here is a broken promise to users, see thermo_data/README.md: mend the reader,
never the kept set.
"""

from __future__ import annotations

import inspect
import io
import json
import pickle
import pickletools
from pathlib import Path
from typing import Any

import gibbsteel as gs
import pytest
from fields import fields, lost
from gibbsteel import _core
from keep import loaded, numbers_of

HERE = Path(__file__).parent
VERSIONS = sorted(path.parent.name for path in HERE.glob("*/pickles"))
PICKLES = sorted(HERE.glob("*/pickles/*.pickle"))
EXPECTED = [
    (version, name)
    for version in VERSIONS
    for name in json.loads((HERE / version / "parameters/expected.json").read_text())
]
# A later version may find its way to the same equilibrium by other steps.
RELATIVE = 1e-9


def told(path: Path) -> Any:
    return json.loads(path.read_text(encoding="utf-8"))


def name_of(path: Path) -> str:
    return f"{path.parents[1].name}/{path.stem}"


class Recorder(pickle.Unpickler):
    """Remembers the classes of this library that a pickle holds."""

    def __init__(self, data: bytes) -> None:
        super().__init__(io.BytesIO(data))
        self.classes: set[str] = set()

    def find_class(self, module_name: str, global_name: str) -> Any:
        if module_name == "gibbsteel._core":
            self.classes.add(global_name)
        return super().find_class(module_name, global_name)


def texts_in(data: bytes) -> set[str]:
    return {arg for _, arg, _ in pickletools.genops(data) if isinstance(arg, str)}


def test_there_are_kept_sets():
    assert gs.__version__ in VERSIONS, "run tests/kept/keep.py"
    assert len(PICKLES) > 40 and len(EXPECTED) >= 4


@pytest.mark.parametrize(("version", "name"), EXPECTED)
def test_parameter_files_are_read_as_they_were(version, name):
    folder = HERE / version / "parameters"
    kept = told(folder / "expected.json")[name]
    parameters = loaded(folder, kept["files"])
    assert parameters.content_hash == kept["content_hash"]
    text = gs.write_parameters(parameters)
    again = _core.parse_parameters(text, "again.json")
    assert again.content_hash == kept["content_hash"]
    for soak in kept["soaks"]:
        steel = gs.Steel(soak["composition"], parameters=parameters)
        now = numbers_of(steel.soak(celsius=soak["celsius"]))
        assert now.keys() == soak["numbers"].keys()
        for key, value in soak["numbers"].items():
            assert now[key] == pytest.approx(value, rel=RELATIVE, abs=1e-12), key


@pytest.mark.parametrize("path", PICKLES, ids=name_of)
def test_pickles_say_what_they_said(path):
    value = pickle.loads(path.read_bytes())
    assert lost(told(path.with_suffix(".json")), fields(value)) == []


@pytest.mark.parametrize("path", PICKLES, ids=name_of)
def test_every_pickle_carries_the_marks_of_its_classes(path):
    data = path.read_bytes()
    reader = Recorder(data)
    reader.load()
    texts = texts_in(data)
    for name in reader.classes:
        assert any(text.startswith(f"gibbsteel {name} ") for text in texts), name


def test_every_class_that_can_be_pickled_is_kept():
    can = {
        name
        for name, kind in vars(_core).items()
        if inspect.isclass(kind) and {"__setstate__", "__reduce__"} & vars(kind).keys()
    }
    kept = set()
    for path in (HERE / gs.__version__ / "pickles").glob("*.pickle"):
        data = path.read_bytes()
        reader = Recorder(data)
        reader.load()
        kept |= reader.classes
        kept |= {text.split()[1] for text in texts_in(data) if is_mark(text)}
    missing = sorted(can - kept)
    assert not missing, "add a value to tests/kept/values.py and run keep.py"


def is_mark(text: str) -> bool:
    words = text.split(" ")
    return len(words) == 3 and words[0] == "gibbsteel" and words[2].isdecimal()


def unlike(kept: Any, now: Any, place: str = "") -> list[str]:
    """As lost(), but the wording of texts is free."""
    return [line for line in lost(kept, now, place) if ": was '" not in line]


@pytest.mark.parametrize("version", VERSIONS)
@pytest.mark.parametrize("name", ["state", "sweep"])
def test_exports_have_the_same_keys_and_numbers(version, name, tmp_path):
    folder = HERE / version
    value = pickle.loads((folder / "pickles" / f"{name}.pickle").read_bytes())
    value.to_json(tmp_path / "now.json")
    kept = told(folder / "exports" / f"{name}.json")
    assert unlike(kept, told(tmp_path / "now.json")) == []
    value.to_csv(tmp_path / "now.csv")
    old, new = (
        [
            line
            for line in file.read_text(encoding="utf-8").splitlines()
            if not line.startswith("#")
        ]
        for file in (folder / "exports" / f"{name}.csv", tmp_path / "now.csv")
    )
    assert old == new and len(old) > 1


def test_a_difference_would_be_seen():
    assert lost({"a": 1.0, "b": [1, 2]}, {"a": 1.0, "b": [1, 2], "c": 3}) == []
    assert lost({"a": 1.0}, {}) == ["/a: is gone"]
    assert lost({"a": [1, 2]}, {"a": [1, 3]}) == ["/a/1: was 2, is 3"]
    assert lost({"a": [1, 2]}, {"a": [1]}) == ["/a: was [1, 2], is [1]"]
    assert lost(0.1, 0.1 + 1e-18) == [] and lost(0.1, 0.1 + 1e-16) != []
