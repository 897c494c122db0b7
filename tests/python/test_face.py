"""The face of the package, as DEVELOPERS.md and README.md promise it."""

import gc
import math
from pathlib import Path

import gibbsteel as gs
import numpy as np
import pytest
from conftest import HIGH_SPEED, PUNCH


def test_the_table_of_the_readme_is_what_the_main_job_prints():
    root = Path(__file__).resolve().parents[2]
    readme = (root / "README.md").read_text("utf-8")
    printed = (root / "examples" / "main_job.output").read_text("utf-8").splitlines()
    table = readme.split("```\npunch heat 7", 1)[1].split("```", 1)[0].splitlines()
    rows = [line for line in table if line[:4].isdigit()]
    assert [row[:4] for row in rows] == ["1000", "1100", "1200"]
    assert [row for row in rows if row not in printed] == []


def test_soak_answers_the_main_questions(state):
    assert state.usable
    assert list(state.carbides) == ["M6C", "MC"]
    assert state.carbide_volume_percent == pytest.approx(
        sum(c.volume_percent for c in state.carbides.values())
    )
    assert state["M6C"].volume_percent > state["MC"].volume_percent
    assert 0.3 < state.matrix.weight_percent["C"] < 0.9
    assert 0.0 < state.carbon_activity < 1.0
    assert list(state.matrix_phases) == ["austenite"]
    assert state["M6C"].weight_percent["W"] > state.matrix.weight_percent["W"]


def test_state_knows_where_it_comes_from(state):
    assert state.steel == "punch heat 12"
    assert state.celsius == pytest.approx(1150.0)
    assert state.fahrenheit == pytest.approx(2102.0)
    assert state.kelvin == pytest.approx(1423.15)
    assert state.analysis.given == HIGH_SPEED
    assert state.parameters == gs.default_parameters().title
    assert state.parameters_hash == gs.content_hash(gs.default_parameters())
    assert not state.at_soak_temperature


def test_occurrences_hold_site_fractions(state):
    metals, carbon = state["MC"].site_fractions
    assert sum(metals.values()) == pytest.approx(1.0)
    assert carbon["C"] > 0.5
    assert carbon["C"] + carbon["vacancy"] == pytest.approx(1.0)
    assert state["MC"].sites == [1.0, 1.0]
    assert state["MC"].phase == "austenite"
    assert state["MC"].role == "carbide"


def test_driving_forces_and_potentials(state):
    assert state.driving_force["M6C"] == 0.0
    assert state.driving_force["austenite"] == 0.0
    absent = {k: v for k, v in state.driving_force.items() if k not in state}
    assert "M23C6" in absent and "ferrite" in absent
    assert all(value < 0.0 for value in absent.values())
    total = sum(
        x * mu
        for x, mu in zip(
            _mole_fractions(state), state.chemical_potential.values(), strict=True
        )
    )
    assert total == pytest.approx(state.gibbs_energy, rel=1e-12)


def _mole_fractions(state):
    moles = {}
    for occurrence in state.occurrences:
        for symbol, fraction in occurrence.atom_fraction.items():
            share = fraction * occurrence.mole_percent / 100.0
            moles[symbol] = moles.get(symbol, 0.0) + share
    return [moles[symbol] for symbol in state.chemical_potential]


def test_report_of_the_solution(state):
    report = state.solve_report
    assert report.usable
    assert (report.status, report.certificate) == ("converged", "many starts")
    assert report.balance_residual <= 1e-10
    assert report.present_residual <= 1e-6
    assert report.lowest_absent >= -1e-3
    assert report.seconds > 0.0


def test_membership_and_lookup(state):
    assert "MC" in state and "M23C6" not in state
    with pytest.raises(gs.InputError) as error:
        state["M23C6"]
    assert str(error.value) == (
        "[gibbsteel.input.209] state: 'M23C6' is absent; volume_percent_of() gives 0 "
        "for it; present: austenite, M6C, MC"
    )


def test_one_line_and_one_page(state):
    assert repr(state).startswith("<punch heat 12 at 1150 C (2102 F), long-hold limit:")
    page = str(state)
    for word in ("vol%", "matrix", "M6C", "long-hold limit", "licensed practice"):
        assert word in page


def test_compositions_in_every_form(state):
    as_keywords = gs.Steel(name="punch heat 12", **HIGH_SPEED)
    as_numpy = gs.Steel({k: np.float64(v) for k, v in HIGH_SPEED.items()})
    pandas = pytest.importorskip("pandas")
    as_series = gs.Steel(pandas.Series(HIGH_SPEED))
    for steel in (as_keywords, as_numpy, as_series):
        assert steel.soak(celsius=1150).gibbs_energy == state.gibbs_energy


def test_temperatures_in_every_unit(punch):
    expected = punch.soak(celsius=1000.0).gibbs_energy
    for same in (
        {"kelvin": 1273.15},
        {"fahrenheit": 1832.0},
        {"celsius": np.int64(1000)},
    ):
        assert punch.soak(**same).gibbs_energy == pytest.approx(expected, rel=1e-13)


def test_pint_quantities_are_understood_without_pint(punch):
    class Quantity:
        def to(self, unit):
            assert unit == "degC"
            return type("Q", (), {"magnitude": 1000.0})()

        magnitude = None

    expected = punch.soak(celsius=1000.0).gibbs_energy
    assert punch.soak(celsius=Quantity()).gibbs_energy == expected


def test_phases_can_be_restricted_and_suppressed(high_speed):
    without = high_speed.soak(celsius=1150, suppressed=["M6C"])
    assert without.usable and "M6C" not in without
    assert str(high_speed.soak(celsius=1150, suppressed="M6C")) == str(without)
    only = high_speed.soak(celsius=1150, phases="ferrite")
    assert only.usable and list(only.matrix_phases) == ["ferrite"]
    assert without.gibbs_energy > high_speed.soak(celsius=1150).gibbs_energy


def test_graphite_only_when_asked_for():
    steel = gs.Steel(C=1.2)
    assert "graphite" not in steel.soak(celsius=720)
    with_graphite = steel.soak(celsius=720, graphite=True)
    assert "graphite" in with_graphite
    assert with_graphite.carbon_activity == pytest.approx(1.0, rel=1e-9)
    assert "graphite" not in with_graphite.carbides


def test_volume_basis(high_speed):
    room = high_speed.soak(celsius=1150)
    hot = high_speed.soak(celsius=1150, at_soak_temperature=True)
    assert hot.at_soak_temperature
    assert hot.density < room.density
    assert hot["MC"].mass_percent == room["MC"].mass_percent
    assert hot["MC"].volume_percent != room["MC"].volume_percent


def test_a_state_that_is_not_usable_confesses(punch):
    state = punch.soak(celsius=1100, phases=["graphite"])
    assert not state.usable
    assert state.solve_report.status == "infeasible"
    assert math.isnan(state.carbide_volume_percent)
    assert math.isnan(state.carbon_activity)
    assert not state.carbides and not state.occurrences
    assert "NOT USABLE" in repr(state)
    assert str(state).startswith("NOT USABLE: infeasible")
    assert [w.code for w in state.warnings] == ["gibbsteel.warning.308"]


def test_a_minimizer_that_stops_early_confesses(high_speed):
    few = gs.SolveOptions(max_newton_steps=1, max_rounds=1)
    state = high_speed.soak(celsius=1100, options=few)
    assert not state.usable
    assert state.solve_report.status in ("iteration limit", "stalled")
    assert "NOT USABLE" in repr(state) and "NOT USABLE" in str(state)
    numbers = (
        state.carbide_volume_percent,
        state.carbide_mass_percent,
        state.carbon_activity,
        state.gibbs_energy,
        state.density,
        state.matrix.mass_percent,
        state.volume_percent_of("MC"),
    )
    assert all(map(math.isnan, numbers))
    assert state.matrix.weight_percent == {} and state.chemical_potential == {}


def test_results_cannot_be_changed(state):
    for name in ("kelvin", "carbide_volume_percent", "matrix", "occurrences"):
        with pytest.raises(AttributeError):
            setattr(state, name, None)
    with pytest.raises(AttributeError):
        state["MC"].volume_percent = 0.0
    with pytest.raises(AttributeError):
        state.solve_report.status = "converged"
    state.carbides.clear()
    state.matrix.weight_percent["C"] = 0.0
    state["MC"].site_fractions[0].clear()
    assert list(state.carbides) == ["M6C", "MC"]
    assert state.matrix.weight_percent["C"] > 0.0
    assert state["MC"].site_fractions[0]


def test_results_outlive_what_they_came_from():
    occurrences = gs.Steel(HIGH_SPEED).soak(celsius=1100).occurrences
    states = gs.Steel(HIGH_SPEED).sweep(celsius=[1100]).states
    gc.collect()
    assert states[0].occurrences == occurrences


def test_two_kinds_of_ferrite_carry_words():
    state = gs.Steel(Cr=50.0, W=40.0, Fe=10.0).soak(celsius=900, phases=["ferrite"])
    assert len(state.matrix_phases) == 2
    first, second = state.matrix_phases
    assert first == "ferrite"
    assert second in ("ferrite, chromium-rich", "ferrite, tungsten-rich")


def test_mill_certificate_keeps_what_is_not_modelled():
    steel = gs.Steel({**PUNCH, "Mn": 0.3, "S": 0.1, "P": 0.02, "N": 0.03})
    analysis = steel.analysis
    assert analysis.not_modelled == {"S": 0.1, "P": 0.02, "N": 0.03}
    assert analysis.bound == []
    assert [w.code for w in steel.soak(celsius=1100).warnings] == [
        "gibbsteel.warning.307"
    ]
    bound = gs.Steel(steel.analysis.given, bind_tramp_elements=True).analysis
    assert {b.name for b in bound.bound} == {"MnS", "VN"}
    # 0.1 S ties 0.1 * 54.938 / 32.06 Mn (atomic weights: IUPAC).
    assert bound.modelled["Mn"] == pytest.approx(0.3 - 0.1 * 54.938 / 32.06, abs=1e-4)
    assert bound.modelled["V"] == pytest.approx(1.0 - 0.03 * 50.9415 / 14.007, abs=1e-4)


def test_a_steel_shows_its_analysis_as_given():
    steel = gs.Steel({"C": 0.55, "Cr": 4.12345, "S": 0.02}, name="punch heat 7")
    assert repr(steel) == "<Steel punch heat 7: 0.55C 4.123Cr 0.02S, balance Fe (wt%)>"


def test_build_info():
    info = gs.build_info()
    assert info["version"] == gs.__version__
    assert info["compiler"]
