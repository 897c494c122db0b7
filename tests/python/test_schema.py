"""The JSON Schema of parameter files agrees with the reader, as far as a schema can say
what the reader checks."""

import copy
import json
import os
import re
from pathlib import Path

import gibbsteel as gs
import jsonschema
import pytest
from gibbsteel import _core

ROOT = Path(os.environ.get("GIBBSTEEL_SOURCE_DIR", Path(__file__).parents[2]))
CORPUS = ROOT / "tests" / "parameter_file"
SCHEMA = json.loads((ROOT / "thermo_data" / "parameter_file.schema.json").read_text())
COMPLETE = jsonschema.Draft7Validator(SCHEMA)
LAYER = jsonschema.Draft7Validator(
    {"$ref": "#/definitions/layer", "definitions": SCHEMA["definitions"]}
)

# Faults that no schema can see: the reader alone refuses these files. A file that the
# schema does refuse must not be listed.
BEYOND_A_SCHEMA = {
    "not JSON, though Python reads it": ["008", "009", "010", "012", "013"],
    "compares two numbers": ["025", "028", "044", "045"],
    "needs a name defined elsewhere": [
        *["030", "034", "035", "038", "041", "042", "043", "059", "065"],
        *["084", "085", "086", "102", "103", "104", "110", "113", "114"],
    ],
    "needs known molar masses": ["032"],
    "needs the value of a curve or term": ["046", "047", "052", "111"],
    "counts or compares entries": [
        *["062", "063", "064", "073", "074", "087", "088", "097", "106"],
    ],
    "needs the whole matrix of correlations": ["107"],
    "needs the list of all end members": ["075", "080", "082"],
    "layer: needs the file below": [
        *["L001", "L002", "L003", "L004", "L005", "L006", "L007", "L008", "L009"],
        *["L010", "L011", "L012", "L013", "L014", "L016", "L018"],
    ],
}
LEFT_OUT, ONE_MORE_KEY = object(), object()
REPLACEMENTS = [LEFT_OUT, ONE_MORE_KEY, None, True, -1, 0.5, 1e7]
REPLACEMENTS += ["", "x", [], {}, {"x": 1}]
BEYOND = {number for numbers in BEYOND_A_SCHEMA.values() for number in numbers}


def content(path):
    """The JSON value in the file; None where Python, too, says that it is not JSON."""
    try:
        return json.loads(path.read_text(encoding="utf-8"))
    except ValueError:
        return None


def codes_of(value, below=None):
    """Codes with which the reader refuses a file; empty if it accepts it."""
    try:
        _core.parse_parameters(json.dumps(value), "changed.json", below)
    except gs.DataError as error:
        return {problem.code[-3:] for problem in error.problems}
    return set()


def changes(value):
    """Copies of the value with one part left out, added or replaced."""

    def places(node, path):
        keys = node if isinstance(node, dict) else range(len(node))
        for key in keys:
            yield [*path, key]
            if isinstance(node[key], (dict, list)):
                yield from places(node[key], [*path, key])

    for *path, last in list(places(value, [])):
        for replacement in REPLACEMENTS:
            changed = copy.deepcopy(value)
            parent = changed
            for key in path:
                parent = parent[key]
            if replacement is LEFT_OUT:
                del parent[last]
            elif replacement is not ONE_MORE_KEY:
                parent[last] = replacement
            elif isinstance(parent[last], dict):
                parent[last]["no such key"] = 1
            else:
                continue
            yield f"{[*path, last]} -> {replacement!r}", changed


def test_the_schema_is_one():
    jsonschema.Draft7Validator.check_schema(SCHEMA)


@pytest.mark.parametrize(
    "path",
    [ROOT / "thermo_data" / "tool_steel.json", *sorted(CORPUS.glob("good/*.json"))],
    ids=lambda path: path.name,
)
def test_complete_files_are_accepted(path):
    assert [error.message for error in COMPLETE.iter_errors(content(path))] == []
    assert [error.message for error in LAYER.iter_errors(content(path))] == []


@pytest.mark.parametrize(
    "path",
    [
        *sorted(CORPUS.glob("layers/*.json")),
        *sorted((ROOT / "thermo_data" / "layers").glob("*.json")),
    ],
    ids=lambda path: path.name,
)
def test_layers_are_accepted_as_layers_only(path):
    assert [error.message for error in LAYER.iter_errors(content(path))] == []
    assert not COMPLETE.is_valid(content(path))


@pytest.mark.parametrize(
    "path", sorted(CORPUS.glob("broken*/*.json")), ids=lambda path: path.stem
)
def test_broken_files_are_refused_unless_beyond_a_schema(path):
    is_layer = path.parent.name == "broken_layers"
    number = ("L" if is_layer else "") + path.stem[:3]
    value = content(path)
    refused = value is None or not (LAYER if is_layer else COMPLETE).is_valid(value)
    assert refused == (number not in BEYOND)


def test_every_fault_beyond_a_schema_is_a_file():
    files = {path.stem[:3] for path in CORPUS.glob("broken/*.json")}
    files |= {"L" + path.stem[:3] for path in CORPUS.glob("broken_layers/*.json")}
    assert BEYOND <= files


@pytest.mark.parametrize("name", ["small.json", "uncertain.json"])
def test_the_schema_and_the_reader_agree_on_every_small_change(name):
    # Codes of the shape of a file; the others need more than a schema can say.
    shape = {"107", "108", "110", "111", "112", "113", "114", "115", "116", "136"}
    shape |= {"137", "152", "153", "158", "159"}
    whole = content(CORPUS / "good" / name)
    disagree, counted = [], 0
    for what, changed in changes(whole):
        codes = codes_of(changed)
        accepted = COMPLETE.is_valid(changed)
        counted += 1
        if (not codes and not accepted) or (codes & shape and accepted):
            disagree.append((what, sorted(codes), accepted))
    assert disagree == []
    assert counted > 1000


def test_the_schema_is_not_stricter_than_the_reader_for_layers():
    small = gs.load_parameters(CORPUS / "good" / "small.json")
    layer = content(CORPUS / "layers" / "titanium.json")
    accepted = [
        (what, changed)
        for what, changed in changes(layer)
        if not codes_of(changed, below=small)
    ]
    assert len(accepted) >= 50
    assert [what for what, changed in accepted if not LAYER.is_valid(changed)] == []


def test_symbols_are_those_that_the_library_knows():
    text = (ROOT / "src" / "elements.cpp").read_text()
    symbols = re.findall(r'\{"([A-Z][a-z]?)", "[a-z]+", [\d.]+\}', text)
    assert len(symbols) == 118
    assert SCHEMA["definitions"]["element"]["enum"] == symbols
    assert SCHEMA["definitions"]["constituent"]["enum"] == ["vacancy", *symbols]


def test_every_definition_is_described():
    definitions = SCHEMA["definitions"]
    assert [key for key in definitions if "description" not in definitions[key]] == []
