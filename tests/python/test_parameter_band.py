"""Parameter bands: a layer with standard deviations, equal to soaks, pickles, errors.

The standard deviations of the layer are invented for the test.
"""

import json
import pickle
from pathlib import Path

import gibbsteel as gs
import numpy as np
import pytest
from gibbsteel import _core, quantities

CARBIDE = quantities.volume_percent("M6C")


def term_of_the_shipped_file():
    """The first end member of M6C with a constant and a slope in T."""
    file = Path(gs.__file__).parent / "thermo_data" / "tool_steel.json"
    for term in json.loads(file.read_text())["phases"]["M6C"]["energy"]:
        if {"1", "T"} <= set(term.get("terms", {})) and "order" not in term:
            return term
    raise AssertionError("no such term")


@pytest.fixture(scope="module")
def layer():
    """The shipped file with standard deviations on one term of M6C."""
    term = term_of_the_shipped_file()
    name = {"phase": "M6C", "property": "energy", "on": term["on"]}
    text = {
        "format": {"name": "gibbsteel parameter file", "version": 1},
        "title": "Trial: how uncertain is M6C",
        "edition": "1",
        "licence": "CC0-1.0",
        "sources": {"trial": {"citation": "invented for a test"}},
        "phases": {
            "M6C": {"energy": [{**term, "standard_deviations": {"1": 600, "T": 0.4}}]}
        },
        "correlations": [
            {
                "between": [{**name, "power": "1"}, {**name, "power": "T"}],
                "coefficient": -0.9,
                "source": "trial",
                "kind": "estimated",
            }
        ],
    }
    below = gs.default_parameters()
    return _core.parse_parameters(json.dumps(text), "trial.json", below)


@pytest.fixture(scope="module")
def steel(layer, punch):
    return gs.Steel(punch.analysis.given, name="punch heat 7", parameters=layer)


def test_first_order_and_samples(steel, punch):
    band = steel.parameter_band(celsius=1120, quantities=[CARBIDE], samples=32)
    assert len(band.inputs) == 2
    assert [i.name.rpartition("/")[2] for i in band.inputs] == ["1", "T"]
    assert [i.unit for i in band.inputs] == ["J/mol", "J/(mol K)"]
    assert band[CARBIDE.name].nominal == pytest.approx(
        punch.soak(celsius=1120).volume_percent_of("M6C"), rel=1e-12
    )
    one, slope = (c.slope for c in band.quantities[0].contributions)
    # A slope in T works like a constant of T times its size at this temperature.
    assert slope == pytest.approx(one * band.nominal.kelvin, rel=1e-9)
    variance = (600 * one) ** 2 + (0.4 * slope) ** 2 - 2 * 0.9 * 600 * 0.4 * one * slope
    first = band.quantities[0].first_order.standard_deviation
    assert first == pytest.approx(np.sqrt(variance), rel=1e-9)
    # Standard error of 32 random samples, about 13 %.
    assert band.sample_values.std(ddof=1) == pytest.approx(first, rel=0.13)
    correlation = np.corrcoef(band.sample_inputs.T)[0, 1]
    assert correlation == pytest.approx(-0.9, abs=0.1)


def test_the_set_keeps_its_standard_deviations(layer, tmp_path):
    file = tmp_path / "whole.json"
    file.write_text(gs.write_parameters(layer))
    text = json.loads(file.read_text())
    assert text["correlations"][0]["coefficient"] == -0.9
    assert gs.content_hash(gs.load_parameters(file)) == gs.content_hash(layer)
    assert gs.content_hash(pickle.loads(pickle.dumps(layer))) == gs.content_hash(layer)


def test_pickle_text_and_table(steel):
    band = steel.parameter_band(celsius=1120)
    copy = pickle.loads(pickle.dumps(band))
    assert str(copy) == str(band)
    assert repr(band).startswith(
        "<punch heat 7 at 1120 C (2048 F), parameter band: C in the matrix 0."
    )
    assert "all others count as exact" in " ".join(str(band).split())
    assert "long-hold limit" in str(band)
    with pytest.raises(AttributeError):
        band.samples = 3
    pytest.importorskip("pandas")
    assert list(band.to_frame()["quantity"]) == [q.name for q in band.quantities]


def test_the_shipped_file_states_no_standard_deviations(punch):
    with pytest.raises(gs.InputError) as error:
        punch.parameter_band(celsius=1120)
    assert str(error.value) == (
        "[gibbsteel.input.279] parameters: the set states no standard deviation for "
        'any number; lay a file with "standard_deviations" on top of it'
    )
