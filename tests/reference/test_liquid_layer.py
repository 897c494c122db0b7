"""The layer with liquid: what it leaves alone below the solidus, what it says above.
What holds of every layer is in test_layer_boards.py."""

import element_layer
import gibbsteel as gs
import pytest
from evaluate import library, phase_temperature
from evaluate.verdict import PASS
from layer_board import layer_file
from layer_board.board import outcomes
from liquid_layer import BOARD, kinds
from test_element_layer import OLD_STEELS

M2 = {"C": 0.85, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9, "Mn": 0.3, "Si": 0.3}


@pytest.fixture(scope="module")
def layered(parameters_with):
    return parameters_with(BOARD)


def test_it_adds_one_phase_and_ends_higher(layered):
    below = gs.default_parameters()
    assert set(layered.phases) - set(below.phases) == {"liquid"}
    assert layered.kelvin_validity == (873.15, 1823.15)
    assert below.kelvin_validity == (873.15, 1573.15)


@pytest.mark.parametrize("percent, celsius", OLD_STEELS)
def test_without_the_liquid_a_soak_is_the_same_to_the_last_bit(
    percent, celsius, layered
):
    plain = gs.Steel(percent).soak(celsius=celsius)
    steel = gs.Steel(percent, parameters=layered)
    same = steel.soak(celsius=celsius, suppressed="liquid")
    assert same.gibbs_energy == plain.gibbs_energy
    assert same.occurrences == plain.occurrences
    assert same.chemical_potential == plain.chemical_potential
    assert same.driving_force == plain.driving_force


@pytest.mark.parametrize("percent, celsius", OLD_STEELS)
def test_below_the_solidus_a_soak_is_the_same_to_rounding(percent, celsius, layered):
    """One candidate more rounds the last bits of a long solution otherwise."""
    plain = gs.Steel(percent).soak(celsius=celsius)
    same = gs.Steel(percent, parameters=layered).soak(celsius=celsius)
    assert same.gibbs_energy == pytest.approx(plain.gibbs_energy, rel=1e-13)
    potentials = pytest.approx(plain.chemical_potential, rel=1e-11)
    assert same.chemical_potential == potentials
    forces = dict(same.driving_force)
    assert forces.pop("liquid") < 0.0
    assert forces == pytest.approx(dict(plain.driving_force), rel=1e-9, abs=1e-7)
    for now, before in zip(same.occurrences, plain.occurrences, strict=True):
        assert (now.name, now.kind) == (before.name, before.kind)
        assert now.mass_percent == pytest.approx(before.mass_percent, abs=1e-9)
        assert now.weight_percent == pytest.approx(before.weight_percent, abs=1e-8)


def test_a_wrong_energy_of_liquid_iron_would_be_seen(tmp_path):
    layer = layer_file.read(BOARD.layer)
    for piece in layer["curves"]["iron, liquid"]["pieces"]:
        piece["terms"]["1"] += 500.0
    layer_file.write(layer, tmp_path / "wrong.json")
    chosen = [r for r in BOARD.records() if r["steel"] in ("Fe", "Fe-C")]
    wrong = outcomes(chosen, BOARD.parameters(tmp_path / "wrong.json"))
    passed = [o.record["id"] for o in wrong if o.verdict == PASS]
    assert len(passed) <= 3, passed


IRON_CARBON = {"composition_wt": {"C": 0.3}, "search_celsius": [1400, 1545]}


def test_the_solidus_lies_below_the_liquidus_and_compositions_on_their_sides(layered):
    with library.using(layered):
        solidus = phase_temperature.appears({**IRON_CARBON, "phase": "liquid"})
        liquidus = kinds.liquidus(IRON_CARBON)
        assert solidus < liquidus - 10.0
        beside = {**IRON_CARBON, "element": "C", "appearing": "liquid"}
        above = {**beside, "phase": "liquid", "from_change": 0.1}
        assert kinds.beside_change(above) > 0.5
        with pytest.raises(library.Absent) as absent:
            kinds.beside_change({**above, "from_change": -0.1})
    assert str(absent.value) == "no liquid; present: austenite"


def test_austenite_is_primary_from_the_liquid_of_the_peritectic_on(layered):
    plain = {"composition_wt": {}, "search_celsius": [1400, 1545], "element": "C"}
    plain |= {"search_weight_percent": [0.1, 1.0], "phase": "austenite"}
    peritectic = {**IRON_CARBON, "appearing": "ferrite", "from_change": 0.1}
    peritectic |= {"phase": "liquid", "element": "C"}
    with library.using(layered):
        switch = kinds.primary_from(plain)
        assert switch == pytest.approx(kinds.beside_change(peritectic), abs=0.02)


def test_a_slope_of_the_solidus_is_per_weight_percent(layered):
    record = {**IRON_CARBON, "phase": "liquid", "element": "C", "changed": {"C": 0.5}}
    with library.using(layered):
        slope = kinds.appearance_slope(record)
        ends = [
            phase_temperature.appears({**record, "composition_wt": {"C": carbon}})
            for carbon in (0.3, 0.5)
        ]
    assert slope == pytest.approx((ends[1] - ends[0]) / 0.2)


def test_three_solids_meet_the_liquid_where_it_appears_among_them(layered):
    """Fe-C is too poor for three; austenite and M3C meet it at the eutectic."""
    record = {"together": ["austenite", "M3C"], "search_celsius": [1100, 1200]}
    eutectic = {"composition_wt": {"C": 4.3}, "search_celsius": [1100, 1200]}
    with library.using(layered):
        top = kinds.highest_together({**record, "compositions_wt": [{"C": 3.0}]})
        melts = phase_temperature.appears({**eutectic, "phase": "liquid"})
        assert top == pytest.approx(melts, abs=0.1)
        with pytest.raises(library.Absent) as absent:
            kinds.highest_together({**record, "compositions_wt": [{"C": 0.5}]})
    assert str(absent.value) == "never together: austenite, M3C"


def test_iron_melts_at_one_temperature(layered):
    iron = gs.Steel({"Fe": 100.0}, parameters=layered)
    for celsius, phase in ((1530, "ferrite"), (1545, "liquid")):
        state = iron.soak(celsius=celsius)
        assert [o.kind for o in state.occurrences] == [phase]


def test_a_steel_melts_over_a_range(layered):
    steel = gs.Steel(M2, parameters=layered)

    def molten(celsius):
        there = steel.soak(celsius=celsius).occurrences
        return sum(o.mass_percent for o in there if o.kind == "liquid")

    shares = [molten(celsius) for celsius in (1200, 1320, 1400, 1540)]
    assert shares[0] == 0.0 and shares[3] == pytest.approx(100.0, abs=1e-9)
    assert 0.0 < shares[1] < shares[2] < 100.0


def test_it_lies_beside_the_layer_with_niobium_in_either_order(
    layered, parameters_with
):
    niobium = element_layer.BOARD
    both = (
        gs.load_parameters(BOARD.layer, on_top_of=parameters_with(niobium)),
        gs.load_parameters(niobium.layer, on_top_of=layered),
    )
    heat = {"C": 1.0, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.2, "Nb": 1.0}
    cold, hot = (
        [gs.Steel(heat, parameters=p).soak(celsius=c) for p in both]
        for c in (1150, 1350)
    )
    alone = gs.Steel(heat, parameters=parameters_with(niobium)).soak(celsius=1150)
    for first, second in (cold, hot):
        assert first.usable and first.gibbs_energy == second.gibbs_energy
    assert cold[0].gibbs_energy == pytest.approx(alone.gibbs_energy, rel=1e-13)
    assert "liquid" in [o.kind for o in hot[0].occurrences]


def test_above_the_end_of_the_layer_is_said(layered):
    steel = gs.Steel(M2, parameters=layered)
    said = [
        [w.text for w in steel.soak(celsius=c).warnings if w.code.endswith(".301")]
        for c in (1545, 1560)
    ]
    assert said[0] == []
    assert said[1] == [
        "The temperature is outside the validity of the parameter file, "
        "600 C to 1550 C."
    ]


def test_mc_is_the_first_solid_of_a_ten_percent_vanadium_steel(layered):
    """Why such steels are made from powder: common practice, no source."""
    heat = {"C": 2.45, "Cr": 5.25, "V": 9.75, "Mo": 1.3, "Mn": 0.5, "Si": 0.9}
    melting = gs.Steel(heat, parameters=layered).melting_range()
    assert melting.primary_solids == ["MC"]
    first = {o.kind: o for o in melting.at_solidus.occurrences}["liquid"]
    assert 5.0 < first.weight_percent["V"] < 9.75


def test_cobalt_moves_the_solidus_of_high_speed_steel_by_a_few_degrees(layered):
    """Common practice, no source: hardening temperatures of cobalt grades are alike."""
    heat = {"C": 0.85, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9}
    plain, cobalt = (
        gs.Steel({**heat, "Co": percent}, parameters=layered).melting_range()
        for percent in (0.0, 5.0)
    )
    assert 0.0 < cobalt.solidus_celsius - plain.solidus_celsius < 10.0
