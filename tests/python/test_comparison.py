"""gs.compare."""

import pickle

import gibbsteel as gs
import numpy as np
import pytest


@pytest.fixture(scope="module")
def both(punch, high_speed):
    return gs.compare([punch, high_speed], celsius=[1050, 1120])


def test_rows_are_numbers_of_the_states(both):
    assert [s.steel for s in both.states] == ["punch heat 7"] * 2 + [
        "punch heat 12"
    ] * 2
    assert len(both) == 4
    carbon = both["C in the matrix"]
    assert carbon.label == "C in the matrix [wt%]"
    assert carbon.values == [s.matrix.weight_percent["C"] for s in both.states]
    assert both["carbide"].values == [s.carbide_volume_percent for s in both.states]
    assert both["M6C"].values == [s.volume_percent_of("M6C") for s in both.states]


def test_states_short_soaks_and_quantities(state):
    short = state.with_measured_carbide({"M6C": 12.0})
    ratio = gs.Quantity("Cr over C", "", lambda s: s.matrix.weight_percent["Cr"])
    hardness = gs.quantities.hardness_hrc()
    table = gs.compare([state, short], quantities=[hardness, ratio])
    assert table.rows[-1].name == "Cr over C"
    assert table[hardness.name].values == [hardness.value(s) for s in table.states]
    assert not np.isnan(table[hardness.name].values).any()
    assert table["M6C"].values[1] == pytest.approx(12.0)
    assert np.isnan(table["carbon activity"].values[1])
    assert "short soak with measured carbide" in str(table)


def test_frame(both):
    pytest.importorskip("pandas")
    frame = both.to_frame()
    assert list(frame["steel"]) == [s.steel for s in both.states]
    assert list(frame["C in the matrix [wt%]"]) == both["C in the matrix"].values
    assert frame["temperature_C"].iloc[1] == pytest.approx(1120.0)
    assert frame["usable"].all()


def test_variants_can_be_told_apart(punch):
    pytest.importorskip("pandas")
    steels = [punch, punch.changed(C=0.6), punch.changed(Co=5)]
    table = gs.compare(steels, celsius=1120)
    assert repr(table) == (
        "<comparison of 3 states, long-hold limit: punch heat 7 at 1120 C, punch heat "
        "7, 0.6 C at 1120 C, punch heat 7, 5 Co at 1120 C>"
    )
    frame = table.to_frame()
    assert list(frame["steel"]) == [steel.name for steel in steels]
    assert list(frame["steel_C_weight_percent"]) == [0.55, 0.6, 0.55]
    assert list(frame["steel_Co_weight_percent"]) == [0.0, 0.0, 5.0]
    assert list(frame.columns[:4]) == [
        "steel",
        "temperature_C",
        "temperature_F",
        "steel_C_weight_percent",
    ]


def test_it_is_a_value(both):
    copy = pickle.loads(pickle.dumps(both))
    assert copy.rows == both.rows
    assert str(copy) == str(both)
    assert repr(both).startswith(
        "<comparison of 4 states, long-hold limit: punch heat 7 at 1050 C, "
    )
    assert repr(both.rows[0]).startswith("<ComparisonRow ")


def test_errors(punch):
    with pytest.raises(gs.InputError) as error:
        gs.compare([])
    assert str(error.value) == (
        "[gibbsteel.input.267] states: is empty; give at least one state"
    )
    with pytest.raises(gs.InputError) as error:
        gs.compare([punch])
    assert str(error.value) == (
        "[gibbsteel.input.211] temperature: got none; give exactly one of celsius=, "
        "fahrenheit= and kelvin="
    )
    with pytest.raises(gs.InputError) as error:
        gs.compare(["M2"], celsius=1100)
    assert str(error.value) == (
        "[gibbsteel.input.267] items: holds 'M2'; give states, short soaks or steels"
    )


def test_temperatures_in_kelvin(punch):
    in_kelvin = gs.compare(punch, kelvin=[1373.15, 1393.15])
    in_celsius = gs.compare(punch, celsius=[1100, 1120])
    assert [s.kelvin for s in in_kelvin.states] == [1373.15, 1393.15]
    assert [r.values for r in in_kelvin.rows] == [r.values for r in in_celsius.rows]
    assert gs.compare(punch, kelvin=1373.15).states[0].kelvin == 1373.15
