"""Where carbon with V, W and Mo in the liquid of the layer comes from.

Two conditions give two terms of carbon with the metal: the liquid of the eutectic of
metal and subcarbide is in equilibrium with the metal, and the carbide melts to a liquid
of its own composition. Source of the invariants: T. B. Massalski et al., Binary Alloy
Phase Diagrams (ASM 1990), from memory, rounded.
"""

from dataclasses import dataclass
from math import log

import gibbsteel as gs
import numpy as np
import pytest
from liquid_layer import BOARD

GAS = 8.314462618
FILE = gs.default_parameters()
LAYERED = BOARD.parameters()


@dataclass(frozen=True)
class Invariants:
    metal: str
    name: str
    eutectic: tuple  # [K], carbon of the liquid, carbon of the metal [atom fractions]
    melting: float  # [K], of the carbide
    carbide: tuple  # phase, sites of carbon for one metal, share of them filled


V = Invariants("V", "vanadium", (1923.0, 0.15, 0.043), 2921.0, ("austenite", 1.0, 0.8))
W = Invariants("W", "tungsten", (2983.0, 0.25, 0.007), 3058.0, ("M2C", 0.5, 0.95))
MO = Invariants("Mo", "molybdenum", (2478.0, 0.17, 0.011), 2795.0, ("M2C", 0.5, 0.95))


def excess(x):
    """Of the two terms, for one J/mol each."""
    return np.array([x * (1.0 - x), x * (1.0 - x) * (2.0 * x - 1.0)])


def excess_of_metal(x):
    """Partial molar, of the metal."""
    slope = np.array([1.0 - 2.0 * x, -6.0 * x * x + 6.0 * x - 1.0])
    return excess(x) - x * slope


def beside_metal(case):
    kelvin, carbon, dissolved = case.eutectic
    solid = FILE.curve_value(f"{case.name}, body-centred", kelvin)
    liquid = LAYERED.curve_value(f"{case.name}, liquid", kelvin)
    mixing = GAS * kelvin * (log(1.0 - dissolved) - log(1.0 - carbon))
    return excess_of_metal(carbon), solid - liquid + mixing


def melts_alike(case):
    phase, sites, filled = case.carbide
    model = FILE.phase_model(phase, elements=["C", case.metal])
    share = {case.metal: 1.0, "C": filled, "vacancy": 1.0 - filled}
    fractions = [share[c.name] for c in model.constituents]
    solid = model.gibbs_energy(kelvin=case.melting, site_fractions=fractions)
    x = sites * filled / (1.0 + sites * filled)
    ends = [
        LAYERED.curve_value(f"{name}, liquid", case.melting)
        for name in ("carbon", case.name)
    ]
    mixing = GAS * case.melting * (x * log(x) + (1.0 - x) * log(1.0 - x))
    ideal = x * ends[0] + (1.0 - x) * ends[1] + mixing
    return excess(x), solid / (1.0 + sites * filled) - ideal


def two_terms(case):
    rows, values = zip(beside_metal(case), melts_alike(case))
    return np.linalg.solve(np.array(rows), np.array(values))


def in_the_layer(metal, kelvin):
    model = LAYERED.phase_model("liquid", elements=["C", metal])

    def at(carbon):
        share = {"C": carbon, metal: 1.0 - carbon}
        fractions = [share[c.name] for c in model.constituents]
        return model.gibbs_energy(kelvin=kelvin, site_fractions=fractions)

    def above_ideal(x):
        mixing = x * log(x) + (1.0 - x) * log(1.0 - x)
        ends = x * at(1.0) + (1.0 - x) * at(0.0)
        return at(x) - ends - GAS * kelvin * mixing

    rows = np.array([excess(0.2), excess(0.4)])
    return np.linalg.solve(rows, [above_ideal(0.2), above_ideal(0.4)])


def mean(case):
    return 0.5 * (case.eutectic[0] + case.melting)


@pytest.mark.parametrize("case, far", [(V, 2000.0), (W, 1000.0)], ids=["V", "W"])
def test_terms_are_those_of_the_binary(case, far):
    assert in_the_layer(case.metal, mean(case))[0] == pytest.approx(
        two_terms(case)[0], abs=far
    )


def test_the_second_term_is_kept_where_it_is_large():
    assert in_the_layer("V", mean(V))[1] == pytest.approx(two_terms(V)[1], abs=500.0)
    assert in_the_layer("W", mean(W))[1] == pytest.approx(0.0, abs=1e-6)
    assert abs(two_terms(W)[1]) < 10000.0


def test_the_same_done_with_molybdenum_gives_the_assessed_term():
    assessed = in_the_layer("Mo", mean(MO))[0]
    assert two_terms(MO)[0] == pytest.approx(assessed, rel=0.06)


def _solidus(alloy):
    """[C]"""
    steel = gs.Steel(alloy, parameters=LAYERED)
    return steel.melting_range(celsius=(1300, 1549)).solidus_celsius


def test_iron_melts_with_tungsten_and_cobalt_where_the_diagrams_say():
    """O. Kubaschewski, Iron Binary Phase Diagrams (Springer 1982), from memory."""
    lowest = min(_solidus({"W": percent}) for percent in (10, 12, 14, 16, 18))
    assert lowest == pytest.approx(1529.0, abs=4.0)
    assert _solidus({"Co": 20.0}) == pytest.approx(1500.0, abs=4.0)
