"""Graphite and liquid stand in every result that has them."""

import gibbsteel as gs
import pytest

CELSIUS = [700, 800, 900, 1000]


@pytest.fixture(scope="module")
def graphitic():
    return gs.Steel(C=1.5, Si=1.4)


@pytest.fixture(scope="module")
def sweep(graphitic):
    return graphitic.sweep(celsius=CELSIUS, graphite=True)


def graphite_of(results):
    return [state.volume_percent_of("graphite") for state in results]


def test_one_line(sweep):
    assert repr(sweep[1]) == (
        "<steel at 800 C (1472 F), long-hold limit: 0.0 vol% carbide, 2.6 vol% "
        "graphite, matrix 0.72 wt% C>"
    )


def test_a_printed_sweep_and_its_page(sweep):
    lines = str(sweep).splitlines()
    at = next(i for i, line in enumerate(lines) if line.startswith("soak"))
    rows = [line.split() for line in lines[at : at + 6]]
    assert rows[0] == ["soak", "carbide", "vol%", "matrix", "wt%"]
    assert rows[1] == ["C", "all", "graphite", "C", "Si"]
    assert rows[3][:3] == ["800", "0.00", f"{graphite_of(sweep)[1]:.2f}"]
    for unit in ("volume", "mass"):
        title = f"Carbides and graphite, {unit} percent"
        section = next(s for s in sweep.report().sections if s.title == title)
        assert section.table[0] == ["deg C", "deg F", "all carbides", "graphite"]
        assert section.table[2][2:][0] == "-"
    assert ">graphite vol%</th>" in sweep._repr_html_()


def test_tables(sweep, graphitic):
    pytest.importorskip("pandas")
    column = "graphite_volume_percent"
    found = graphite_of(sweep)
    assert list(sweep.to_frame(wide=True)[column]) == found
    assert list(sweep.array(column)) == found
    grid = graphitic.grid(celsius=CELSIUS, C=[1.2, 1.5], graphite=True)
    table = grid.to_frame()
    assert list(table[table["steel_C_weight_percent"] == 1.5][column]) == found
    assert "\ngraphite [vol%]" in str(grid)
    assert gs.compare(list(sweep))["graphite"].values == found


def test_xarray(sweep):
    pytest.importorskip("xarray")
    volumes = sweep.to_xarray()["volume_percent"]
    assert list(volumes["kind"].values) == ["graphite"]
    assert list(volumes.sel(kind="graphite").values) == graphite_of(sweep)


def test_screen(sweep):
    table = gs.screen([[1.5, 1.4]], ["C", "Si"], celsius=CELSIUS, graphite=True)
    assert table.kinds[-1] == "graphite"
    assert list(table.volume_percent[:, -1]) == graphite_of(sweep)
    without = gs.screen([[1.5, 1.4]], ["C", "Si"], celsius=CELSIUS)
    assert without.kinds == table.kinds[:-1]


def test_screen_with_liquid():
    melting = gs.default_parameters("liquid")
    table = gs.screen([[0.8]], ["C"], celsius=1430, parameters=melting)
    assert table.kinds[-1] == "liquid"
    state = gs.Steel(C=0.8, parameters=melting).soak(celsius=1430)
    assert table.volume_percent[0, -1] == state.volume_percent_of("liquid")
    only = gs.screen([[0.8]], ["C"], celsius=1100, phases=["austenite", "M3C"])
    assert "liquid" not in only.kinds and "graphite" not in only.kinds


def test_sensitivities_and_bands(graphitic):
    slopes = graphitic.sensitivities(celsius=800, graphite=True)
    assert "\ngraphite [vol%] " in str(slopes)
    band = graphitic.tolerance_band(
        celsius=800, ranges={"C": (1.4, 1.6)}, samples=8, graphite=True
    )
    assert "graphite" in [quantity.name for quantity in band.quantities]


@pytest.mark.parametrize("kind", ["stacked", "lines"])
def test_plot(sweep, kind):
    matplotlib = pytest.importorskip("matplotlib")
    matplotlib.use("Agg")
    ax = gs.plot.carbides(sweep, kind)
    assert ax.get_ylabel() == "carbide, graphite in the steel [vol%]"
    line = next(line for line in ax.get_lines() if line.get_label() == "graphite")
    assert list(line.get_ydata()) == graphite_of(sweep)
    assert ax.get_ylim()[1] > max(graphite_of(sweep))
