"""Temperatures come back as they were typed; soaks are done at the same kelvin."""

import gibbsteel as gs
import pytest

CELSIUS = range(800, 1200)


@pytest.fixture(scope="module")
def steel():
    return gs.Steel({"C": 0.8}, name="trial bar")


def test_whole_celsius(steel):
    sweep = steel.sweep(celsius=CELSIUS)
    assert [state.celsius for state in sweep] == list(CELSIUS)
    assert [state.kelvin for state in sweep] == [c + 273.15 for c in CELSIUS]


def test_whole_fahrenheit(steel):
    typed = list(range(1500, 1600))
    assert [s.fahrenheit for s in steel.sweep(fahrenheit=typed)] == typed


@pytest.mark.parametrize("typed", [1000.05, 999.999999999, 850.5, 727.1])
def test_decimals(steel, typed):
    assert steel.soak(celsius=typed).celsius == typed


def test_a_number_with_more_digits_than_can_be_typed_back_is_left(steel):
    third = 1000.0 + 1.0 / 3.0
    assert steel.soak(celsius=third).celsius == pytest.approx(third, abs=1e-12)
    assert steel.soak(kelvin=1273.15).celsius == 1000.0


def test_tables_can_be_joined_and_filtered(steel, tmp_path):
    pandas = pytest.importorskip("pandas")
    sweep = steel.sweep(celsius=[900, 1000, 1100])
    frame = sweep.to_frame(wide=True)
    assert list(frame["temperature_C"]) == [900.0, 1000.0, 1100.0]
    assert len(frame[frame["temperature_C"] == 1000]) == 1
    sweep.to_csv(tmp_path / "sweep.csv", wide=True)
    again = pandas.read_csv(tmp_path / "sweep.csv", comment="#")
    assert list(again["temperature_C"]) == [900, 1000, 1100]
    other = gs.Steel(C=0.7).sweep(celsius=[1000, 1100]).to_frame(wide=True)
    assert len(frame.merge(other, on="temperature_C")) == 2


def test_grids_screens_and_searches(steel):
    grid = steel.grid(C=[0.7, 0.8], celsius=[900, 1000])
    assert list(grid.second.values) == [900.0, 1000.0]
    assert steel.grid(C=[0.7], Cr=[0.0, 1.0], celsius=1000).celsius == 1000.0
    table = gs.screen([[0.8]], ["C"], celsius=[900, 1000])
    assert table.celsius.tolist() == [900.0, 1000.0]
    assert table.fahrenheit.tolist() == [1652.0, 1832.0]
    assert table.kelvin.tolist() == [900 + 273.15, 1000 + 273.15]
    assert steel.soak(celsius=1000).hardening().soak_celsius == 1000.0


def test_a_sweep_is_its_soaks_to_the_bit(steel):
    sweep = steel.sweep(celsius=[900, 1000])
    for state in sweep:
        again = steel.soak(celsius=state.celsius)
        assert again.kelvin == state.kelvin
        assert again.gibbs_energy == state.gibbs_energy
