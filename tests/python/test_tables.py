"""Tables of states and sweeps: units, origin, xarray, arrays without a copy."""

import gc
import math

import gibbsteel as gs
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

UNITS = {
    "weight_percent": "wt%",
    "volume_percent": "vol%",
    "mass_percent": "mass%",
    "mole_percent": "mol%",
}


@pytest.fixture(scope="module")
def sweep(high_speed):
    return high_speed.sweep(celsius=range(1000, 1201, 50))


def test_a_state_as_a_table(state):
    pytest.importorskip("pandas")
    tidy = state.to_frame()
    assert list(tidy["name"]) == [o.name for o in state.occurrences]
    row = tidy.set_index("name").loc["M6C"]
    assert row["volume_percent"] == state["M6C"].volume_percent
    assert row["W_weight_percent"] == state["M6C"].weight_percent["W"]
    assert row["role"] == "carbide" and row["steel"] == "punch heat 12"
    wide = state.to_frame(wide=True)
    assert len(wide) == 1
    assert wide["matrix_C_weight_percent"][0] == state.matrix.weight_percent["C"]
    assert wide["M6C_volume_percent"][0] == state["M6C"].volume_percent


def test_units_stand_in_the_names_and_in_attrs(state, sweep):
    pytest.importorskip("pandas")
    for table in (
        state.to_frame(),
        state.to_frame(wide=True),
        sweep.to_frame(),
        sweep.to_frame(wide=True),
    ):
        units = table.attrs["units"]
        numbers = [name for name in table if table[name].dtype == float]
        assert set(numbers) == set(units)
        for name in numbers:
            end = "_".join(name.split("_")[-2:])
            assert units[name] == UNITS.get(end, units[name])
        assert units["temperature_C"] == "degC" and units["temperature_F"] == "degF"
        assert list(table)[-2:] == ["usable", "warnings"]


def test_a_table_can_be_traced_to_its_data(state, sweep):
    pytest.importorskip("pandas")
    parameters = gs.default_parameters()
    for result in (state, sweep):
        attrs = result.to_frame().attrs
        assert attrs["library"] == f"gibbsteel {gs.__version__}"
        assert attrs["parameters"] == parameters.title
        assert attrs["parameters_hash"] == parameters.content_hash
        assert "long-hold limit" in attrs["limit"]
        assert attrs["basis"].startswith("volumes at room temperature")
        assert "coupons" in attrs["caution"]
    hot = gs.Steel(C=0.8).soak(celsius=900, at_soak_temperature=True)
    assert hot.to_frame().attrs["basis"] == "volumes at soak temperature"


def test_an_empty_sweep_is_an_empty_table(punch):
    pytest.importorskip("pandas")
    table = punch.sweep(celsius=[]).to_frame()
    assert len(table) == 0 and table.attrs["units"] == {}


def test_xarray(sweep):
    pytest.importorskip("xarray")
    data = sweep.to_xarray()
    assert dict(data.sizes) == {"temperature_C": 5, "kind": 2, "element": 8}
    at = data.sel(temperature_C=1100.0)
    state = sweep[2]
    assert state.celsius == pytest.approx(1100.0)
    assert at["carbide_volume_percent"] == state.carbide_volume_percent
    assert at["volume_percent"].sel(kind="MC") == state["MC"].volume_percent
    matrix = at["matrix_weight_percent"]
    assert matrix.sel(element="C") == state.matrix.weight_percent["C"]
    assert matrix.attrs == {"units": "wt%", "long_name": "matrix"}
    assert data["temperature_C"].attrs["units"] == "degC"
    assert data.attrs["parameters_hash"] == sweep[0].parameters_hash


def test_xarray_of_what_is_not_usable_and_of_nothing(punch):
    pytest.importorskip("xarray")
    bad = punch.sweep(celsius=[900, 950], phases=["graphite"]).to_xarray()
    assert np.isnan(bad["carbide_volume_percent"]).all()
    assert bad["volume_percent"].shape == (2, 0)
    assert punch.sweep(celsius=[]).to_xarray().sizes["temperature_C"] == 0


VIEWS = {
    "kelvin": "kelvin",
    "carbide_volume_percent": "carbide_volume_percent",
    "carbide_mass_percent": "carbide_mass_percent",
    "carbon_activity": "carbon_activity",
    "gibbs_energy": "gibbs_energy",
    "density": "density",
}


@pytest.mark.parametrize("name", VIEWS)
def test_arrays_without_a_copy(sweep, name):
    array = sweep.array(name)
    assert array.dtype == np.float64 and array.shape == (5,)
    assert list(array) == [getattr(state, name) for state in sweep]
    assert np.shares_memory(array, sweep.array(name))
    assert not array.flags.owndata and not array.flags.writeable
    with pytest.raises(ValueError, match="read-only"):
        array[0] = 0.0
    with pytest.raises(ValueError, match="WRITEABLE"):
        array.flags.writeable = True


def test_an_array_keeps_its_sweep_alive():
    steel = gs.Steel(C=0.8)
    array = steel.sweep(celsius=[700, 710, 720]).array("carbide_volume_percent")
    kept = list(array)
    for _ in range(3):
        steel.sweep(celsius=[800, 810, 820])
    gc.collect()
    assert list(array) == kept


def test_other_columns_are_read_only_copies(sweep):
    carbon = sweep.array("matrix_C_weight_percent")
    assert list(carbon) == [state.matrix.weight_percent["C"] for state in sweep]
    assert list(sweep.array("M6C_volume_percent")) == [
        state["M6C"].volume_percent for state in sweep
    ]
    assert sweep.array("temperature_F")[0] == pytest.approx(1832.0)
    assert not carbon.flags.writeable
    assert not np.shares_memory(carbon, sweep.array("matrix_C_weight_percent"))


def test_arrays_of_what_is_not_usable_and_of_nothing(punch):
    bad = punch.sweep(celsius=[900, 950], phases=["graphite"])
    for name in ("carbide_volume_percent", "density", "density_g_per_cm3"):
        assert np.isnan(bad.array(name)).all() and bad.array(name).shape == (2,)
    empty = punch.sweep(celsius=[])
    assert empty.array("kelvin").shape == (0,)


def test_a_column_that_is_not_there(punch):
    with pytest.raises(gs.InputError) as error:
        punch.sweep(celsius=[1175]).array("carbides")
    assert str(error.value) == (
        "[gibbsteel.input.290] name: there is no column of numbers 'carbides'; choose "
        "from: kelvin, carbide_volume_percent, carbide_mass_percent, carbon_activity, "
        "gibbs_energy, density, temperature_C, temperature_F, density_g_per_cm3, "
        "MC_volume_percent, matrix_Fe_weight_percent, matrix_C_weight_percent, "
        "matrix_Cr_weight_percent, matrix_Mo_weight_percent, matrix_W_weight_percent, "
        "matrix_V_weight_percent"
    )


@settings(max_examples=15, deadline=None, derandomize=True)
@given(
    st.floats(0.1, 1.5),
    st.floats(0.0, 8.0),
    st.lists(st.floats(700.0, 1250.0), min_size=1, max_size=4),
)
def test_every_table_tells_the_same(carbon, chromium, celsius):
    pytest.importorskip("pandas")
    sweep = gs.Steel({"C": carbon, "Cr": chromium}).sweep(celsius=celsius)
    tidy, wide = sweep.to_frame(), sweep.to_frame(wide=True)
    assert len(wide) == len(celsius)
    for i, state in enumerate(sweep):
        rows = tidy[tidy["temperature_C"] == state.celsius]
        if not state.usable:
            assert math.isnan(wide["carbide_volume_percent"][i])
            continue
        same = celsius.count(celsius[i])
        carbides = rows[rows["role"] == "carbide"]["volume_percent"].sum() / same
        assert carbides == pytest.approx(wide["carbide_volume_percent"][i], abs=1e-12)
        assert sweep.array("carbide_volume_percent")[i] == state.carbide_volume_percent
