"""Interaction of carbon with metals in liquid iron at 1600 C, of the layer with liquid.

Source: G. K. Sigworth, J. F. Elliott, Metal Science 8 (1974) 298-310, from memory. The
table has e(C, M) per wt%; per mole fraction that is
epsilon = 230 (M / M_Fe) e + (M_Fe - M) / M_Fe, with molar masses.
"""

import pytest
from evaluate.composition import MOLAR_MASS
from liquid_layer import BOARD

KELVIN = 1873.15
GAS = 8.314462618
DILUTE = 1e-4
TABLE = {
    "Mn": -0.012,
    "Si": 0.08,
    "Ni": 0.012,
    "Co": 0.0076,
}
PRIOR = 2.0 * 40000.0 / (GAS * KELVIN)  # two standard deviations of the fit's prior
FITTED = {"Mo": -0.0083, "V": -0.077, "W": -0.0056}


def published(element, coefficient):
    iron, metal = MOLAR_MASS["Fe"], MOLAR_MASS[element]
    return 230.0 * metal / iron * coefficient + (iron - metal) / iron


@pytest.fixture(scope="module")
def interaction():
    """Function from a metal to d ln(activity coefficient of C) / d(its fraction)."""
    elements = BOARD.parameters().elements
    model = BOARD.parameters().phase_model("liquid", elements=elements)
    names = [c.name for c in model.constituents]

    def carbon_potential(metal, amount):
        def total(carbon):
            moles = {"C": carbon, metal: amount, "Fe": 1.0 - amount - DILUTE}
            whole = sum(moles.values())
            sites = [moles.get(name, 0.0) / whole for name in names]
            return whole * model.gibbs_energy(kelvin=KELVIN, site_fractions=sites)

        step = 1e-3 * DILUTE
        return (total(DILUTE + step) - total(DILUTE - step)) / (2.0 * step)

    def of(metal):
        low, high = (carbon_potential(metal, x) for x in (DILUTE, 11 * DILUTE))
        return (high - low) / (10 * DILUTE) / (GAS * KELVIN)

    return of


@pytest.mark.parametrize("metal", TABLE)
def test_terms_set_to_the_table_give_it(metal, interaction):
    assert interaction(metal) == pytest.approx(published(metal, TABLE[metal]), abs=0.1)


@pytest.mark.parametrize("metal", FITTED)
def test_fitted_terms_come_near(metal, interaction):
    table = published(metal, FITTED[metal])
    assert interaction(metal) == pytest.approx(table, abs=PRIOR)


def test_chromium_is_assessed_for_the_eutectics_and_not_for_dilute_iron(interaction):
    assert published("Cr", -0.024) == pytest.approx(-5.1, abs=0.1)
    assert interaction("Cr") == pytest.approx(-0.5, abs=0.1)
