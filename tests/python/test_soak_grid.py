"""Grids of soaks: equal to single soaks, tables, progress, cancelling, errors."""

import doctest
import importlib
import pickle
import signal
import sys

import gibbsteel as gs
import numpy as np
import pytest

CARBON = gs.quantities.matrix("C")


@pytest.fixture(scope="module")
def grid(punch):
    return punch.grid(C=[0.5, 0.6], celsius=range(1000, 1101, 50))


def test_a_grid_is_that_many_soaks(punch, grid):
    assert grid.shape == (2, 3)
    assert (grid.first.name, grid.second.name) == ("C", "temperature")
    assert list(grid.second.values) == pytest.approx([1000.0, 1050.0, 1100.0])
    values = grid.array(CARBON)
    assert values.shape == (2, 3) and not values.flags.writeable
    for i, carbon in enumerate(grid.first.values):
        for j, celsius in enumerate((1000, 1050, 1100)):
            single = punch.changed(C=carbon).soak(celsius=celsius)
            assert grid[i, j].occurrences == single.occurrences
            assert values[i, j] == single.matrix.weight_percent["C"]
    assert grid.states[4].matrix == grid[1, 1].matrix
    assert grid[-1, -1].celsius == pytest.approx(1100.0)
    assert grid.carbide_kinds == ["M6C", "MC"]
    assert (grid.failures, grid.not_done, grid.cancelled) == (0, 0, False)
    assert grid.celsius is None
    assert grid.analysis == punch.analysis
    with pytest.raises(IndexError):
        grid[2, 0]


def test_two_elements_at_one_temperature_in_any_unit(punch):
    in_f = punch.grid(C=[0.55], Co=np.array([0.0, 3.0]), fahrenheit=2048)
    in_c = punch.grid(C=[0.55], Co=(0, 3), celsius=1120)
    assert in_f.celsius == in_c.celsius == pytest.approx(1120.0)
    assert in_f.array(CARBON) == pytest.approx(in_c.array(CARBON), rel=1e-9)
    assert in_c[0, 1].analysis.given["Co"] == 3.0
    assert repr(in_c) == (
        "<punch heat 7, 1 x 2 soaks, C 0.55 to 0.55 wt%, Co 0 to 3 wt%, 1120 C, "
        "long-hold limit>"
    )
    assert repr(in_c.first) == "<SweptVariable C in the steel [wt%], 1 value>"
    assert repr(in_c.second) == "<SweptVariable Co in the steel [wt%], 2 values>"


def test_options_reach_the_soaks(punch):
    grid = punch.grid(
        C=[0.5, 0.6], celsius=[1000], suppressed="M6C", at_soak_temperature=True
    )
    assert grid.carbide_kinds == ["MC"]
    assert grid[0, 0].at_soak_temperature


def test_soaks_that_are_not_usable_are_nan_and_counted(punch):
    grid = punch.grid(C=[0.5, 0.6], celsius=[1000, 1100], phases=["graphite"])
    assert grid.failures == 4 and not grid.cancelled
    assert np.isnan(grid.array(CARBON)).all()
    assert "4 NOT USABLE" in repr(grid)


def test_progress_counts_and_an_interrupt_keeps_what_is_done(punch):
    seen = []
    punch.grid(C=[0.5, 0.6, 0.7], celsius=[1000, 1100], progress=seen.append)
    assert seen == sorted(set(seen)) and seen[-1] == 6

    def interrupt(done):
        signal.raise_signal(signal.SIGINT)

    # Many cells: other threads go on until the calling one has done its first.
    carbon = np.linspace(0.5, 0.7, 200)
    grid = punch.grid(C=carbon, celsius=[1000, 1050, 1100], progress=interrupt)
    assert grid.cancelled and 1 <= 600 - grid.not_done < 600
    missing = np.isnan(grid.array(CARBON))
    assert missing.sum() == grid.not_done
    cells = [(r, c) for r in range(200) for c in range(3)]
    assert [grid[cell] is None for cell in cells] == list(missing.ravel())
    assert f"CANCELLED, {grid.not_done} not done" in repr(grid)
    assert list(grid.to_frame()["done"]).count(False) == grid.not_done


def test_an_error_in_the_callback_reaches_the_caller(punch):
    def fail(done):
        raise RuntimeError("stop here")

    with pytest.raises(RuntimeError, match="stop here"):
        punch.grid(C=[0.5, 0.6], celsius=[1000], progress=fail)


def test_a_copy_is_the_same(grid, punch):
    for one in (grid, punch.grid(C=[0.5], Co=[0.0, 1.0], celsius=1100)):
        copy = pickle.loads(pickle.dumps(one))
        assert repr(copy) == repr(one)
        assert (copy.first, copy.second) == (one.first, one.second)
        assert copy.celsius == one.celsius
        assert copy.analysis == one.analysis
        assert copy.parameters_hash == one.parameters_hash
        assert np.array_equal(copy.array(CARBON), one.array(CARBON))


def test_table(grid):
    pytest.importorskip("pandas")
    frame = grid.to_frame()
    assert list(frame["steel_C_weight_percent"]) == [0.5] * 3 + [0.6] * 3
    assert list(frame["temperature_C"]) == pytest.approx([1000, 1050, 1100] * 2)
    assert np.array_equal(frame["matrix_C_weight_percent"], grid.array(CARBON).ravel())
    volumes = frame["MC_volume_percent"] + frame["M6C_volume_percent"]
    assert np.allclose(volumes, frame["carbide_volume_percent"])
    assert frame["usable"].all() and frame["done"].all()
    codes = [{w.code[-3:] for w in state.warnings} for state in grid.states]
    assert [set(row.split()) for row in frame["warnings"]] == codes
    assert frame.attrs["parameters_hash"] == grid.parameters_hash
    assert "temperature_C" not in frame.attrs


def test_a_table_of_phases(grid):
    pytest.importorskip("pandas")
    assert grid.to_frame(wide=True).equals(grid.to_frame())
    tidy = grid.to_frame(wide=False)
    assert list(tidy.columns[:4]) == [
        "steel_C_weight_percent",
        "temperature_C",
        "steel",
        "temperature_F",
    ]
    names = [o.name for state in grid.states for o in state.occurrences]
    assert list(tidy["name"]) == names
    assert tidy["done"].all()


def test_rows_and_print(grid):
    assert len(grid) == 2
    assert [s.celsius for s in grid[0]] == [1000.0, 1050.0, 1100.0]
    assert grid[-1][2].matrix == grid[1, 2].matrix
    with pytest.raises(IndexError):
        grid[2]
    text = str(grid)
    assert "down: C in the steel [wt%]; across: temperature [C]" in text
    for state in grid.states:
        assert f"{state.carbide_volume_percent:.2f}" in text
        assert f"{state.matrix.weight_percent['C']:.3f}" in text


def test_dataset(grid, punch):
    pytest.importorskip("xarray")
    data = grid.to_xarray()
    carbon = data["matrix_C_weight_percent"]
    assert carbon.dims == ("steel_C_weight_percent", "temperature_C")
    assert carbon.attrs["units"] == "wt%"
    assert np.array_equal(carbon.values, grid.array(CARBON))
    at = carbon.sel(steel_C_weight_percent=0.6, temperature_C=1050, method="nearest")
    assert float(at) == grid[1, 1].matrix.weight_percent["C"]
    assert data.attrs["parameters"] == grid.parameters
    flat = punch.grid(C=[0.5], Co=[0.0], celsius=1100).to_xarray()
    assert flat.attrs["temperature_C"] == pytest.approx(1100.0)


@pytest.mark.parametrize(
    ("package", "method"), [("pandas", "to_frame"), ("xarray", "to_xarray")]
)
def test_a_missing_package_is_named(grid, monkeypatch, package, method):
    monkeypatch.setitem(sys.modules, package, None)
    with pytest.raises(ImportError) as error:
        getattr(grid, method)()
    assert str(error.value) == (
        f"{method}() needs the package {package} (Debian: python3-{package})"
    )


TWO = "sweep two, for instance grid(C=[0.5, 0.6], Co=[0, 2], celsius=1120)"
SERIES = "give a series of weight percents, for instance C=[0.50, 0.55, 0.60]"


@pytest.mark.parametrize(
    ("keywords", "expected"),
    [
        (
            {"C": [0.5, 0.6], "celsius": 1120},
            f"[gibbsteel.input.295] grid: sweeps C; {TWO}",
        ),
        (
            {"celsius": 1120},
            f"[gibbsteel.input.295] grid: sweeps nothing; {TWO}",
        ),
        (
            {"C": [0.5, 0.6], "Co": [0, 1], "celsius": [1000, 1100]},
            f"[gibbsteel.input.295] grid: sweeps C, Co, temperature; {TWO}",
        ),
        (
            {"C": [0.5, 0.6], "Fe": [90, 91], "celsius": 1100},
            "[gibbsteel.input.295] grid: sweeps Fe, which is the balance; "
            "sweep the other elements",
        ),
        (
            {"C": 0.5, "Co": [0, 1], "celsius": 1100},
            f"[gibbsteel.input.296] C: is 0.5, no series of numbers; {SERIES}",
        ),
        (
            {"C": ["x"], "Co": [0, 1], "celsius": 1100},
            f"[gibbsteel.input.296] C: is ['x'], no series of numbers; {SERIES}",
        ),
        (
            {"C": [], "celsius": [1100]},
            "[gibbsteel.input.296] C: has no values; give a series of numbers",
        ),
        (
            {"C": [0.5], "Co": [0.0]},
            "[gibbsteel.input.211] temperature: got none; "
            "give exactly one of celsius=, fahrenheit= and kelvin=",
        ),
        (
            {"C": [0.5, -1.0, -1.0], "Xx": [1.0], "celsius": 1100},
            "[gibbsteel.input.201] composition: 'Xx' is not the symbol of an element; "
            "give symbols such as C, Cr, Mo\n"
            "[gibbsteel.input.203] composition, C: is negative: -1; "
            "give weight percent, from 0 to 100",
        ),
    ],
)
def test_what_is_no_grid_is_refused(punch, keywords, expected):
    with pytest.raises(gs.InputError) as error:
        punch.grid(**keywords)
    assert str(error.value) == expected


def test_a_temperature_names_its_unit(punch):
    with pytest.raises(gs.InputError) as error:
        punch.grid(1120, C=[0.5, 0.6])
    assert str(error.value) == (
        "[gibbsteel.input.211] temperature: got 1120 without a unit; "
        "give the unit: grid(C=[0.5, 0.6], celsius=[1100, 1150])"
    )


def test_shares_of_an_element(state):
    shares = state.element_shares("C")
    assert list(shares) == ["matrix", "M6C", "MC"]
    assert sum(shares.values()) == pytest.approx(100.0)
    in_matrix = state.matrix.mass_percent * state.matrix.weight_percent["C"] / 0.9
    assert shares["matrix"] == pytest.approx(in_matrix)


def test_examples_in_docstrings():
    result = doctest.testmod(importlib.import_module("gibbsteel.soak_grid"))
    assert result.failed == 0 and result.attempted >= 3
