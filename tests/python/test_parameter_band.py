"""Parameter bands: a layer with standard deviations, equal to soaks, pickles, errors.

The standard deviations of the layer are invented for the test.
"""

import json
import pickle

import gibbsteel as gs
import numpy as np
import pytest
from gibbsteel import _core, quantities

CARBIDE = quantities.volume_percent("M6C")


def term_of_the_first_edition():
    """The first end member of M6C with a constant and a slope in T."""
    file = gs.parameter_files()["editions/2026-11-25.json"]
    for term in json.loads(file.read_text())["phases"]["M6C"]["energy"]:
        if {"1", "T"} <= set(term.get("terms", {})) and "order" not in term:
            return term
    raise AssertionError("no such term")


@pytest.fixture(scope="module")
def layer(first_edition):
    """The first edition with standard deviations on one term of M6C."""
    term = term_of_the_first_edition()
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
    return _core.parse_parameters(json.dumps(text), "trial.json", first_edition)


@pytest.fixture(scope="module")
def steel(layer, punch):
    return gs.Steel(punch.analysis.given, name="punch heat 7", parameters=layer)


def test_first_order_and_samples(steel, punch, first_edition):
    band = steel.parameter_band(celsius=1120, quantities=[CARBIDE], samples=32)
    plain = gs.Steel(punch.analysis.given, parameters=first_edition)
    assert len(band.inputs) == 2
    assert [i.name.rpartition("/")[2] for i in band.inputs] == ["1", "T"]
    assert [i.unit for i in band.inputs] == ["J/mol", "J/(mol K)"]
    assert band[CARBIDE.name].nominal == pytest.approx(
        plain.soak(celsius=1120).volume_percent_of("M6C"), rel=1e-12
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
        "<punch heat 7 at 1120 C (2048 F), parameter band, long-hold limit: C in the "
        "matrix 0."
    )
    assert "all others count as exact" in " ".join(str(band).split())
    assert "long-hold limit" in str(band)
    with pytest.raises(AttributeError):
        band.samples = 3
    pytest.importorskip("pandas")
    assert list(band.to_frame()["quantity"]) == [q.name for q in band.quantities]


def test_the_shipped_file_states_those_of_its_calibration(punch):
    band = punch.parameter_band(celsius=1120)
    assert len(band.inputs) == 31
    assert band["C in the matrix"].first_order.standard_deviation > 0.005
    printed = " ".join(str(band).split())
    assert "31 numbers of the parameter file state a standard deviation" in printed
    assert "gibbsteel.warning.356" not in [w.code for w in band.warnings]


def test_a_narrow_band_of_the_shipped_file_is_no_sure_result():
    """D2: of M7C3 nothing was calibrated, the band is next to nothing, and says so."""
    d2 = gs.Steel({"C": 1.55, "Cr": 12.0, "Mo": 0.8, "V": 0.8}, name="D2")
    band = d2.parameter_band(celsius=1030)
    assert band["C in the matrix"].first_order.standard_deviation < 0.001
    (text,) = [w.text for w in band.warnings if w.code == "gibbsteel.warning.356"]
    assert text == (
        "In this steel no energy of these phases has a standard deviation: M7C3. The "
        "band leaves out how uncertain they are; a narrow one says nothing."
    )
    assert "gibbsteel.warning.356" in str(band)


def test_a_set_without_standard_deviations(punch, first_edition):
    with pytest.raises(gs.InputError) as error:
        gs.Steel(punch.analysis.given, parameters=first_edition).parameter_band(
            celsius=1120
        )
    assert str(error.value) == (
        "[gibbsteel.input.279] parameters: the set states no standard deviation for "
        'any number; lay a file with "standard_deviations" on top of it'
    )


def test_a_function_of_a_state_as_quantity():
    def carbon(state):
        return state.matrix.weight_percent["C"]

    m2 = gs.Steel(C=0.85, Cr=4.1, Mo=5.0, W=6.2, V=1.9)
    given = [gs.quantities.matrix("C"), carbon]
    band = m2.parameter_band(celsius=1200, quantities=given)
    assert band["carbon"].nominal == band["C in the matrix"].nominal
