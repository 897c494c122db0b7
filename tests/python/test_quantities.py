"""Quantities with units (Pint) and pandas Series as arguments."""

import warnings

import gibbsteel as gs
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st


@pytest.fixture(scope="module")
def units():
    pint = pytest.importorskip("pint")
    with warnings.catch_warnings():  # Debian's pint reads its own files in an old way
        warnings.simplefilter("ignore", DeprecationWarning)
        return pint.UnitRegistry()


def test_temperatures_with_a_unit(punch, units):
    kelvin = punch.soak(celsius=1120).kelvin
    hot = units.Quantity(1120.0, "degC")
    for keyword in ("celsius", "fahrenheit", "kelvin"):
        for quantity in (hot, hot.to("kelvin"), hot.to("degF")):
            state = punch.soak(**{keyword: quantity})
            assert state.kelvin == pytest.approx(kelvin, abs=1e-9)
    sweep = punch.sweep(celsius=units.Quantity([1000.0, 1100.0], "degC"))
    assert [round(state.celsius, 9) for state in sweep] == [1000.0, 1100.0]
    mixed = punch.sweep(celsius=[1000, units.Quantity(2012.0, "degF")])
    assert mixed[1].celsius == pytest.approx(1100.0)


@settings(max_examples=25, deadline=None, derandomize=True)
@given(celsius=st.floats(500.0, 1400.0))
def test_any_temperature_comes_through(units, celsius):
    quantity = units.Quantity(celsius, "degC").to("degF")
    steel = gs.Steel(C=0.5)
    assert steel.soak(kelvin=quantity).celsius == pytest.approx(celsius, abs=1e-9)


def test_weight_percent_with_a_unit(units):
    units.define("percent = 0.01 = %")
    units.define("ppm = 1e-6")
    steel = gs.Steel(
        {
            "C": units.Quantity(0.55, "percent"),
            "Cr": units.Quantity(45.0, "g/kg"),
            "S": units.Quantity(200.0, "ppm"),
            "V": 1.0,
        }
    )
    given_ = steel.analysis.given
    assert given_["C"] == pytest.approx(0.55, rel=1e-12)
    assert given_["Cr"] == pytest.approx(4.5, rel=1e-12)
    assert given_["S"] == pytest.approx(0.02, rel=1e-12)
    assert given_["V"] == 1.0


def test_a_wrong_dimension_is_an_input_error(punch, units):
    with pytest.raises(gs.InputError) as error:
        punch.soak(celsius=units.Quantity(3.0, "m"))
    assert str(error.value) == (
        "[gibbsteel.input.292] temperature: 3.0 meter cannot be converted to degC; "
        "give a temperature, or a number"
    )
    with pytest.raises(gs.InputError) as error:
        gs.Steel({"C": units.Quantity(0.5, "kg"), "Cr": "4.5", "V": 1.0})
    assert str(error.value) == (
        "[gibbsteel.input.292] composition, C: 0.5 kilogram cannot be converted to "
        "dimensionless; give a mass per mass, or weight percent as a number\n"
        "[gibbsteel.input.202] composition, Cr: is '4.5', a text; give the number 4.5; "
        "gs.steels_from_table reads texts"
    )


def test_a_series_is_a_composition():
    pandas = pytest.importorskip("pandas")
    series = pandas.Series({"C": 0.55, "Cr": 4.5})
    assert gs.Steel(series) == gs.Steel({"C": 0.55, "Cr": 4.5})
    table = pandas.DataFrame({"C": [0.5, 0.6], "Cr": [4.0, 5.0]}, index=["a", "b"])
    steels = [gs.Steel(row, name=str(name)) for name, row in table.iterrows()]
    assert [steel.analysis.given for steel in steels] == [
        {"C": 0.5, "Cr": 4.0},
        {"C": 0.6, "Cr": 5.0},
    ]
    with pytest.raises(gs.InputError, match="gibbsteel.input.202"):
        gs.Steel(pandas.Series({"C": float("nan")}))
