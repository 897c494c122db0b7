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
    assert list(frame["matrix_C_weight_percent"]) == both["C in the matrix"].values
    assert list(frame.columns[:3]) == ["steel", "temperature_C", "temperature_F"]
    assert list(frame.columns[-2:]) == ["usable", "warnings"]
    wide = [set(state.to_frame(wide=True).columns) for state in both.states]
    names = {name for name in frame.columns if not name.startswith("steel_")}
    assert names <= set.union(*wide)
    assert set.union(*wide) - names == {
        "carbide_mass_percent",
        "density_g_per_cm3",
        "matrix_Fe_weight_percent",
    }
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


def test_bands_of_estimates(state):
    pandas = pytest.importorskip("pandas")
    hardness, start = gs.quantities.hardness_hrc(), gs.quantities.martensite_start()
    table = gs.compare(state, quantities=[hardness, start, gs.quantities.matrix("C")])
    estimate = state.hardening().hardness_hrc
    row = table["as-quenched hardness"]
    assert (row.low, row.high) == ([estimate.low], [estimate.high])
    assert hardness.band(state) == (estimate.low, estimate.high)
    assert table["C in the matrix"].low == table["C in the matrix"].high == []
    frame = table.to_frame()
    name = "as_quenched_hardness_HRC"
    assert frame.loc[0, [name, f"{name}_low", f"{name}_high"]].tolist() == [
        estimate.value,
        estimate.low,
        estimate.high,
    ]
    assert frame.attrs["units"][f"{name}_low"] == "HRC"
    assert frame.attrs["units"]["martensite_start_C_high"] == "C"
    assert [c for c in frame.columns if "C_weight" in c] == [
        "steel_C_weight_percent",
        "matrix_C_weight_percent",
    ]
    assert isinstance(frame, pandas.DataFrame)
    lines = str(table).splitlines()
    at = [i for i, line in enumerate(lines) if line.startswith("as-quenched")][0]
    assert lines[at + 1].split() == ["low", f"{estimate.low:.2f}"]
    assert lines[at + 2].split() == ["high", f"{estimate.high:.2f}"]


def test_two_quantities_of_one_name_both_stand_in_the_frame(state):
    pytest.importorskip("pandas")
    room = gs.quantities.hardness_hrc()
    cold = gs.quantities.hardness_hrc(coldest_celsius=-75)
    frame = gs.compare(state, quantities=[room, cold, room]).to_frame()
    names = [c for c in frame.columns if "HRC" in c and not c.endswith(("low", "high"))]
    assert names == ["as_quenched_hardness_HRC", "as_quenched_hardness_HRC_2"]
    assert frame.loc[0, names].tolist() == [room.value(state), cold.value(state)]
    assert frame.attrs["units"]["as_quenched_hardness_HRC_2_low"] == "HRC"


def test_states_of_two_parameter_sets(punch, first_edition):
    pytest.importorskip("pandas")
    old = gs.Steel(punch.analysis.given, name=punch.name, parameters=first_edition)
    states = [punch.soak(celsius=1120), old.soak(celsius=1120)]
    table = gs.compare(states)
    titles = [state.parameters for state in states]
    joined = " ".join(str(table).split())
    assert f"parameters of A: {titles[0]} parameters of B: {titles[1]} " in joined
    assert repr(table) == (
        "<comparison of 2 states, long-hold limit, 2 parameter sets: punch heat 7 at "
        "1120 C, punch heat 7 at 1120 C>"
    )
    frame = table.to_frame()
    assert list(frame["parameters"]) == titles
    assert list(frame["parameters_hash"]) == [s.parameters_hash for s in states]
    assert "parameters" not in gs.compare(states[:1]).to_frame().columns


def test_a_csv_file_is_the_frame_with_every_steel_above_it(both, tmp_path):
    pandas = pytest.importorskip("pandas")
    path = tmp_path / "heats.csv"
    both.to_csv(path)
    head = [line for line in path.read_text().splitlines() if line.startswith("#")]
    assert head[0] == f"# gibbsteel table; lines of header: {len(head)}"
    assert [line for line in head if line.startswith("# steel: ")] == [
        "# steel: punch heat 7",
        "# steel: punch heat 12",
    ]
    assert len([line for line in head if line.startswith("# analysis as given")]) == 2
    for warning in both.warnings:
        assert f"# {warning}" in head
    read = pandas.read_csv(
        path, comment="#", float_precision="round_trip", keep_default_na=False
    )
    frame = both.to_frame()
    assert list(read.columns) == list(frame.columns)
    for name in frame.columns:
        assert [str(x) for x in read[name]] == [str(x) for x in frame[name]], name


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
