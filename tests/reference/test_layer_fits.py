"""The numbers of layers that were fitted: the file has those of the fit, and says to
what."""

import fit_elements
import fit_iron
import fit_iron_liquid
import fit_liquid
import pytest
from layer_board import layer_file
from layer_board.board import outcomes
from layer_board.fit import FAR, residual

FITS = (fit_elements.FIT, fit_liquid.FIT, fit_iron.FIT, fit_iron_liquid.FIT)


def _by_stem(fit):
    return fit.board.stem


@pytest.mark.parametrize("fit", FITS, ids=_by_stem)
def test_the_layer_names_what_it_was_fitted_to(fit):
    source = layer_file.read(fit.board.layer)["sources"][fit.source]
    assert source["fitted_to_check_records"] == fit.fitted_ids()


@pytest.mark.parametrize("fit", FITS, ids=_by_stem)
def test_the_layer_holds_the_numbers_of_the_fit(fit):
    layer = layer_file.read(fit.board.layer)
    assert fit.distance(layer) < 0.1
    place = list(fit.start)[-1]
    fit.term_of(layer, *place)["terms"][place[2]] += 5000.0
    assert fit.distance(layer) > 0.1


def test_a_bound_counts_only_beyond_itself():
    def of(comparison, value):
        record = {
            "id": "own",
            "quantity": "appears",
            "composition_wt": {"C": 0.85, "Cr": 4.1, "Mo": 5.0, "W": 6.2, "V": 1.9},
            "phase": "liquid",
            "search_celsius": [1050, 1500],
            "comparison": comparison,
            "value": value,
            "uncertainty": 10.0,
        }
        (outcome,) = outcomes([record], fit_liquid.BOARD.parameters())
        return residual(outcome), outcome.computed

    _, solidus = of("at_least", 1000.0)
    assert of("at_least", solidus - 5.0)[0] == 0.0
    assert of("at_most", solidus + 5.0)[0] == 0.0
    assert of("at_least", solidus + 5.0)[0] == pytest.approx(0.5)
    assert of("at_most", solidus - 5.0)[0] == pytest.approx(0.5)


def test_what_has_no_computed_value_is_far_off():
    record = {
        "id": "own",
        "quantity": "appears",
        "composition_wt": {"C": 0.85},
        "phase": "liquid",
        "search_celsius": [1000, 1100],
        "comparison": "within",
        "value": 1240.0,
        "uncertainty": 12.0,
    }
    (outcome,) = outcomes([record], fit_liquid.BOARD.parameters())
    assert residual(outcome) == FAR
