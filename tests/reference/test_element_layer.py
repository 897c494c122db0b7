"""The layer with niobium, titanium and nitrogen: what it leaves alone, its warnings.

What holds of every layer is in test_layer_boards.py and test_layer_fits.py.
"""

from collections import Counter

import gibbsteel as gs
import pytest
import shipped_edition
from element_layer import BOARD
from evaluate.verdict import PASS
from layer_board import layer_file
from layer_board.board import outcomes

# Steels without the new elements: (weight percent, Celsius).
OLD_STEELS = [
    ({"C": 0.85, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9, "Mn": 0.3, "Si": 0.3}, 1200),
    ({"C": 0.85, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9, "Mn": 0.3, "Si": 0.3}, 780),
    ({"C": 1.55, "Cr": 12.0, "Mo": 0.8, "V": 0.8, "Mn": 0.4}, 1030),
    ({"C": 1.0, "Cr": 17.0, "Mo": 0.5, "Ni": 0.3}, 1050),
    ({"C": 1.1, "Co": 8.0, "Cr": 3.8, "Mo": 9.5, "W": 1.5, "V": 1.2}, 1190),
    ({"C": 0.4, "Cr": 1.0, "Mo": 0.2, "Mn": 0.8}, 700),
    ({"C": 0.76}, 727),
]


@pytest.fixture(scope="module")
def layered(parameters_with):
    return parameters_with(BOARD)


def test_it_adds_no_phase(layered):
    assert list(layered.phases) == list(gs.default_parameters().phases)


def test_the_uncertainty_of_the_fit_reaches_a_band(layered):
    heat = {"C": 0.1, "Mn": 1.4, "Nb": 0.15}
    band = gs.Steel(heat, parameters=layered).parameter_band(celsius=1150)
    assert band["Nb in the matrix"].first_order.standard_deviation > 5e-4


def test_a_wrong_end_member_would_be_seen(tmp_path):
    layer = layer_file.read(BOARD.layer)
    terms = layer["phases"]["austenite"]["energy"]
    (carbide,) = [t for t in terms if t["on"] == ["Nb", "C"]]
    carbide["terms"]["1"] += 20000.0
    layer_file.write(layer, tmp_path / "wrong.json")
    chosen = [r for r in BOARD.records() if r["steel"] == "Fe-Nb-C"]
    wrong = outcomes(chosen, BOARD.parameters(tmp_path / "wrong.json"))
    assert Counter(o.verdict for o in wrong)[PASS] <= 2


@pytest.mark.parametrize("percent, celsius", OLD_STEELS)
def test_a_steel_without_the_new_elements_is_the_same_to_the_last_bit(
    percent, celsius, layered
):
    plain = gs.Steel(percent).soak(celsius=celsius)
    same = gs.Steel(percent, parameters=layered).soak(celsius=celsius)
    assert same.gibbs_energy == plain.gibbs_energy
    assert same.occurrences == plain.occurrences
    assert same.chemical_potential == plain.chemical_potential
    assert same.driving_force == plain.driving_force
    zero = {**percent, "Nb": 0.0, "Ti": 0.0, "N": 0.0}
    named = gs.Steel(zero, parameters=layered).soak(celsius=celsius)
    assert named.gibbs_energy == plain.gibbs_energy


def test_it_can_be_laid_on_the_edition_before_with_and_without_its_layer(layered):
    heat = {"C": 1.0, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.2, "Nb": 1.0, "N": 0.03}
    energies = []
    for below in (shipped_edition.older(), shipped_edition.layered()):
        both = gs.load_parameters(BOARD.layer, on_top_of=below)
        state = gs.Steel(heat, parameters=both).soak(celsius=1200)
        assert state.usable and state.carbides["MC"].weight_percent["Nb"] > 20.0
        energies.append(state.gibbs_energy)
    now = gs.Steel(heat, parameters=layered).soak(celsius=1200)
    assert now.gibbs_energy == energies[1] != energies[0]


def test_nitrides_are_mc_and_no_matrix(layered):
    steel = gs.Steel({"C": 0.1, "Mn": 1.4, "Ti": 0.02, "N": 0.006}, parameters=layered)
    state = steel.soak(celsius=1150)
    (nitride,) = state.carbides.values()
    assert nitride.kind == "MC" and nitride.role == "carbide"
    assert nitride.weight_percent["N"] > 15.0
    assert list(state.matrix_phases) == ["austenite"]


def test_dissolved_nitrogen_is_named_by_the_hardening_estimates(layered):
    percent = {"C": 0.2, "Cr": 13.0, "N": 0.1}
    estimates = gs.Steel(percent, parameters=layered).soak(celsius=1050).hardening()
    (text,) = [w.text for w in estimates.warnings if w.code == "gibbsteel.warning.333"]
    assert text == (
        "N 0.1 wt% is dissolved in the matrix: estimates leave it out. It counts like "
        "about as much carbon."
    )


@pytest.mark.parametrize(
    "percent, celsius, text",
    [
        (
            {"C": 0.3, "Cr": 15.2, "Mo": 1.0, "N": 0.38},
            1030,
            "Known weak spot: in 15Cr steels with carbon and nitrogen M2C, which is "
            "Cr2(N,C) there, reads high, and the nitrogen in solution 0.1 wt% low or "
            "more.",
        ),
        (
            {"C": 0.02, "Cr": 17.0, "Nb": 0.8},
            800,
            "Known weak spot: there is no Laves phase. Niobium that carbon and "
            "nitrogen do not bind stays in solution, where 0.05 to 0.2 wt% is "
            "observed at 700 to 900 C.",
        ),
    ],
)
def test_its_weak_spots_are_said(percent, celsius, text, layered):
    def spots(alloy):
        warnings = gs.Steel(alloy, parameters=layered).soak(celsius=celsius).warnings
        return [w.text for w in warnings if w.code == "gibbsteel.warning.310"]

    assert text in spots(percent)
    assert text not in spots({**percent, "N": 0.0, "Nb": 0.0})


def test_beyond_the_validity_range_is_said(layered):
    steel = gs.Steel({"C": 0.3, "Cr": 15.2, "Mo": 1.0, "N": 0.38}, parameters=layered)
    warnings = steel.soak(celsius=1100).warnings
    (text,) = [w.text for w in warnings if w.code == "gibbsteel.warning.302"]
    assert text == (
        "0.38 wt% N is outside the validity of the parameter file, 0 to 0.15."
    )
