"""The doors below the facade: parameters, phase models, the minimizer."""

import json
import os
import pickle

import gibbsteel as gs
import numpy as np
import pytest
from gibbsteel.parameters import laid


@pytest.fixture(scope="module")
def parameters():
    return gs.default_parameters()


def test_shipped_file_is_found_from_any_folder(parameters, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    laid.cache_clear()
    assert gs.default_parameters() == parameters
    assert parameters.files == ["tool_steel.json"]
    assert parameters.elements[:2] == ["Fe", "C"]
    assert "M6C" in parameters.phases
    assert parameters.weight_percent_validity["C"] == (0.0, 3.0)


def test_write_and_load_round_trip(parameters, tmp_path):
    text = gs.write_parameters(parameters)
    file = tmp_path / "copy.json"
    file.write_text(text)
    copy = gs.load_parameters(file)
    assert gs.write_parameters(copy) == text
    assert gs.content_hash(copy) == gs.content_hash(parameters)
    assert json.loads(text)["format"]["version"] == 1


def test_a_missing_file(tmp_path):
    with pytest.raises(gs.DataError) as error:
        gs.load_parameters(tmp_path / "none.json")
    assert str(error.value) == (
        "[gibbsteel.data.101] none.json: there is no such file; "
        "give the path of a parameter file"
    )


def test_a_layer_without_the_file_that_it_lies_on():
    layer = gs.parameter_files()["layers/iron_as_measured.json"]
    with pytest.raises(gs.DataError) as error:
        gs.load_parameters(layer)
    assert str(error.value) == (
        "[gibbsteel.data.172] iron_as_measured.json: looks like a layer, which lies on "
        'another file: it has no "units", "reference_state", "validity", "elements", '
        '"curves"; give the set below as on_top_of, for instance default_parameters()'
    )
    laid = gs.load_parameters(layer, on_top_of=gs.default_parameters())
    assert laid == gs.default_parameters("iron_as_measured")


def test_phase_model(parameters):
    model = parameters.phase_model("austenite", elements=["Fe", "C"])
    assert [c.name for c in model.constituents] == ["Fe", "C", "vacancy"]
    y = np.array([1.0, 0.04, 0.96])
    d = model.derivatives(kelvin=1273.15, site_fractions=y)
    assert d.value == model.gibbs_energy(celsius=1000.0, site_fractions=y)
    assert d.dy.shape == (3,) and d.dy2.shape == (3, 3)
    assert model.sites.tolist() == [1.0, 1.0, 1.0]
    for array in (model.sites, d.dy, d.dydt, d.dy2):
        assert array.dtype == np.float64 and not array.flags.writeable
    step = 1e-3
    up, down = (
        model.gibbs_energy(kelvin=1273.15 + h, site_fractions=y) for h in (step, -step)
    )
    assert d.dt == pytest.approx((up - down) / (2 * step), rel=1e-6)
    with pytest.raises(gs.InputError) as error:
        model.gibbs_energy(kelvin=1000.0, site_fractions=[1.0])
    assert str(error.value) == (
        "[gibbsteel.input.230] site_fractions of austenite: has 1 numbers; "
        "give 3, one per constituent, sublattice by sublattice"
    )


def test_magnetism_of_iron(parameters):
    # 1043 K and 2.22 Bohr magnetons: Dinsdale, CALPHAD 15 (1991) 317 (from memory).
    model = parameters.phase_model("ferrite", elements=["Fe"])
    assert model.curie_temperature([1.0, 1.0]) == pytest.approx(1043.0)
    assert model.magnetic_moment([1.0, 1.0]) == pytest.approx(2.22)


def test_minimize_in_mole_fractions():
    result = gs.minimize(["Fe", "C"], np.array([0.97, 0.03]), 1173.15)
    assert result.report.usable
    assert [point["phase"] for point in result.present] == ["austenite"]
    energy = (
        0.97 * result.chemical_potential["Fe"] + 0.03 * result.chemical_potential["C"]
    )
    assert energy == pytest.approx(result.gibbs_energy, rel=1e-12)
    assert all(point["driving_force"] < 0.0 for point in result.absent)
    alone = gs.minimize(["Fe", "C"], [0.97, 0.03], 1173.15, phases="austenite")
    assert alone.gibbs_energy == pytest.approx(result.gibbs_energy, rel=1e-12)


def test_curves(parameters):
    # Graphite at 1000 K: G - H298 = -12.6 kJ/mol, tables of the elements (from memory).
    value = parameters.curve_value("carbon, graphite", 1000.0)
    assert value == pytest.approx(-12600.0, rel=0.02)


@pytest.mark.skipif(os.environ.get("LD_PRELOAD") is not None, reason="slow when traced")
def test_doctests():
    import doctest
    import importlib
    import pkgutil

    import gibbsteel

    tried = 0
    names = [module.name for module in pkgutil.iter_modules(gibbsteel.__path__)]
    assert {"steel", "reports", "export"} <= set(names)
    for name in names:
        if name == "_core":
            continue
        result = doctest.testmod(importlib.import_module(f"gibbsteel.{name}"))
        assert result.failed == 0, name
        tried += result.attempted
    tried += doctest.testmod(gibbsteel).attempted
    assert tried >= 30


def test_how_well_it_is_solved():
    """tests/unit/condition_number_test.cpp holds the number against an SVD."""
    report = gs.minimize(["Fe", "C"], [0.97, 0.03], 1100.0).report
    assert 1.0 <= report.condition_number < 100.0
    assert report.digits_lost == pytest.approx(np.log10(report.condition_number))
    again = pickle.loads(pickle.dumps(report))
    assert again.condition_number == report.condition_number
    assert "condition number                  " in str(report)
    compound = gs.minimize(["Fe", "C"], [0.75, 0.25], 973.15).report
    assert not compound.unique
    assert compound.condition_number == compound.digits_lost == float("inf")
    nothing = gs.minimize(["Fe", "C"], [0.97, 0.03], 1100.0, phases=["M3C"]).report
    assert np.isnan(nothing.condition_number) and np.isnan(nothing.digits_lost)
