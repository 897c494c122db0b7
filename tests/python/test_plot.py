"""Figures: what is drawn equals the numbers; units, notes, cautions, errors."""

import os
import re
import subprocess
import sys

os.environ["MPLBACKEND"] = "Agg"  # no window

import gibbsteel as gs
import numpy as np
import pytest

plt = pytest.importorskip("matplotlib.pyplot", reason="Debian: python3-matplotlib")
pytestmark = pytest.mark.usefixtures("nothing_left_behind")

DIE = {"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8}


@pytest.fixture(scope="module")
def sweep(high_speed):
    return high_speed.sweep(celsius=range(800, 1261, 20))


@pytest.fixture(scope="module")
def die_sweep():
    return gs.Steel(DIE, name="die heat 3").sweep(celsius=range(760, 1121, 30))


def sweep_of(states, name="punch heat 12"):
    made = gs.Sweep.__new__(gs.Sweep)
    mark = gs.Steel(C=0.8).sweep(celsius=[]).__getstate__()[0]
    made.__setstate__((mark, (name, list(states), False)))
    return made


@pytest.fixture(scope="module")
def broken_sweep(high_speed):
    """Soaks at 1040 and 1060 C without a usable result, in no order."""
    good = high_speed.sweep(celsius=[1120, 1000, 1020, 1080, 1100])
    bad = high_speed.sweep(celsius=[1060, 1040], phases=["graphite"])
    assert bad.failures == 2
    return sweep_of([*good, *bad])


def in_order(sweep):
    return sorted(sweep, key=lambda state: state.celsius)


def line(ax, label):
    (found,) = [one for one in ax.get_lines() if one.get_label() == label]
    return np.asarray(found.get_xdata(), float), np.asarray(found.get_ydata(), float)


def area(ax, label):
    """Upper and lower edge of an area: dict temperature -> (low, high)."""
    (found,) = [one for one in ax.collections if one.get_label() == label]
    edges = {}
    for path in found.get_paths():
        for x, y in path.vertices:
            low, high = edges.get(x, (y, y))
            edges[x] = min(low, y), max(high, y)
    return edges


def notes(ax):
    (found,) = [text for text in ax.texts if text.get_gid() == "notes"]
    return found.get_text()


def cautions(ax):
    return [text.get_text() for text in ax.texts if text.get_gid() == "caution"]


def bars(ax):
    return [tuple(b.get_xdata()) for b in ax.get_lines() if b.get_gid() == "caution"]


# Carbides


def test_stacked_areas_are_the_volumes(sweep):
    ax = gs.plot.carbides(sweep)
    below = np.zeros(len(sweep))
    assert sorted(sweep.carbide_kinds) == ["M23C6", "M6C", "MC"]
    for kind in ("MC", "M6C", "M23C6"):  # from the bottom
        volumes = [state.volume_percent_of(kind) for state in sweep]
        edges = area(ax, kind)
        assert sorted(edges) == pytest.approx([state.celsius for state in sweep])
        low, high = np.array([edges[x] for x in sorted(edges)]).T
        assert low == pytest.approx(below, abs=1e-9)
        assert high - low == pytest.approx(volumes, abs=1e-9)
        below = high
    x, total = line(ax, "all carbides")
    assert total == pytest.approx([s.carbide_volume_percent for s in sweep])
    assert total == pytest.approx(below, abs=1e-9)
    texts = [text.get_text() for text in ax.get_legend().get_texts()]
    assert texts == ["M23C6", "M6C", "MC", "all carbides"]


def test_lines_are_the_volumes_and_end_where_a_carbide_is_gone(sweep):
    ax = gs.plot.carbides(sweep, kind="lines")
    for kind in ("MC", "M6C", "M23C6"):
        volumes = np.array([state.volume_percent_of(kind) for state in sweep])
        x, drawn = line(ax, kind)
        there = ~np.isnan(drawn)
        assert drawn[there] == pytest.approx(volumes[there])
        assert not volumes[~there].any()
    assert np.isnan(line(ax, "M23C6")[1]).any()
    assert np.nanmin(line(ax, "M23C6")[1]) == 0.0  # down to nothing, and no further


def test_order_of_the_sweep_does_not_matter(sweep):
    shuffled = sweep_of(list(sweep)[::-1])
    straight = line(gs.plot.carbides(sweep), "all carbides")
    assert np.array_equal(line(gs.plot.carbides(shuffled), "all carbides"), straight)


@pytest.mark.parametrize("kind", ["stacked", "lines"])
def test_soaks_that_are_not_usable_leave_a_gap_that_is_named(broken_sweep, kind):
    ax = gs.plot.carbides(broken_sweep, kind)
    x, total = line(ax, "all carbides")
    assert list(x) == pytest.approx([1000, 1020, 1040, 1060, 1080, 1100, 1120])
    assert list(np.isnan(total)) == [False, False, True, True, False, False, False]
    (patch,) = [p for p in ax.patches if p.get_gid() == "not usable"]
    assert patch.get_xy()[:, 0].min() == pytest.approx(1030.0)
    assert patch.get_xy()[:, 0].max() == pytest.approx(1070.0)
    assert patch.get_hatch()
    assert cautions(ax) == ["not usable (gap)"]
    if kind == "stacked":
        (mc,) = [c for c in ax.collections if c.get_label() == "MC"]
        assert len(mc.get_paths()) == 2


def test_warnings_are_bars_over_their_temperatures(sweep):
    ax = gs.plot.carbides(sweep)
    assert cautions(ax) == [
        "no liquid in the file: melting not predicted",
        "near or above the solidus of a similar steel",
        "matrix not austenite alone",
        "known weak spot of the file",
    ]
    for code, bar in (("303", (1190.0, 1260.0)), ("304", (1230.0, 1260.0))):
        flagged = [
            state.celsius
            for state in sweep
            if any(w.code == f"gibbsteel.warning.{code}" for w in state.warnings)
        ]
        assert min(flagged) - 10.0 == pytest.approx(bar[0])
        assert any(one == pytest.approx(bar) for one in bars(ax))


def test_melting_is_a_bar_and_an_area_of_its_own(with_liquid):
    steel = gs.Steel(DIE, parameters=with_liquid)
    start = steel.melting_range().solidus_celsius
    sweep = steel.sweep(celsius=[start - 50, start + 10, start + 30])
    assert "partly or wholly molten" in cautions(gs.plot.carbides(sweep))
    ax = gs.plot.element_shares(sweep, "Cr")
    (liquid,) = [c for c in ax.collections if c.get_label() == "liquid"]
    assert len(liquid.get_paths()) == 1


def test_a_sweep_without_carbide_or_of_one_soak_is_drawn():
    plain = gs.Steel({"C": 0.4, "Cr": 1.0}).sweep(celsius=[1100])
    ax = gs.plot.carbides(plain)
    assert line(ax, "all carbides")[1] == pytest.approx([0.0])
    assert ax.get_title(loc="left") == "steel"
    assert gs.plot.matrix(plain).get_ylim()[1] > 1.0


# Matrix


def test_matrix_lines_are_the_composition_with_carbon_on_its_own_scale(sweep):
    ax = gs.plot.matrix(sweep)
    (right,) = [other for other in ax.figure.axes if other is not ax]
    assert right.get_ylabel() == "carbon in the matrix [wt%]"
    assert ax.get_ylabel() == "alloying elements in the matrix [wt%]"
    for symbol in ("Cr", "Mo", "W", "V", "Mn", "Si", "C"):
        wanted = [state.matrix.weight_percent[symbol] for state in sweep]
        on, label = (right, "C (right)") if symbol == "C" else (ax, symbol)
        assert line(on, label)[1] == pytest.approx(wanted)
    assert len(ax.get_legend().get_texts()) == 7


def test_chosen_elements_and_a_panel_for_carbon(sweep):
    only = gs.plot.matrix(sweep, "C")
    assert only.figure.axes == [only]
    assert only.get_ylabel() == "carbon in the matrix [wt%]"
    without = gs.plot.matrix(sweep, ["Cr", "Mo"])
    assert without.figure.axes == [without]
    figure, (top, bottom) = plt.subplots(2, 1, sharex=True)
    assert gs.plot.matrix(sweep, ax=bottom, carbon_ax=top) is bottom
    assert figure.axes == [top, bottom]
    wanted = [state.matrix.weight_percent["C"] for state in sweep]
    assert line(top, "C")[1] == pytest.approx(wanted)
    assert "C" not in [text.get_text() for text in bottom.get_legend().get_texts()]


def test_a_gap_in_the_matrix_too(broken_sweep):
    ax = gs.plot.matrix(broken_sweep)
    assert np.isnan(line(ax, "Cr")[1]).sum() == 2


# Shares


def test_shares_of_carbon_are_those_of_the_states(die_sweep):
    ax = gs.plot.carbon_shares(die_sweep)
    shares = [state.element_shares("C") for state in die_sweep]
    tops = area(ax, "M7C3")
    bottom = area(ax, "matrix")
    for state, share in zip(die_sweep, shares, strict=True):
        assert bottom[state.celsius] == pytest.approx((0.0, share["matrix"]), abs=1e-9)
        assert tops[state.celsius][1] == pytest.approx(100.0)
        low, high = tops[state.celsius]
        assert high - low == pytest.approx(share["M7C3"])
    assert ax.get_ylabel() == "share of the carbon in the steel [%]"
    vanadium = gs.plot.element_shares(die_sweep, "V")
    assert vanadium.get_ylabel() == "share of the V in the steel [%]"
    assert area(vanadium, "matrix")[die_sweep[-1].celsius][1] == pytest.approx(
        die_sweep[-1].element_shares("V")["matrix"]
    )


def test_a_gap_in_the_shares_too(broken_sweep):
    ax = gs.plot.carbon_shares(broken_sweep)
    drawn = sorted(area(ax, "matrix"))
    assert drawn == pytest.approx([1000, 1020, 1080, 1100, 1120])


def test_no_usable_soak_at_all_is_one_named_gap(punch):
    bad = punch.sweep(celsius=[1000, 1050, 1100], phases=["graphite"])
    assert bad.failures == 3
    for plot in (gs.plot.carbides, gs.plot.matrix, gs.plot.carbon_shares):
        ax = plot(bad)
        assert cautions(ax) == ["not usable (gap)"]
        assert [p.get_gid() for p in ax.patches] == ["not usable"]


def test_an_element_that_is_none_of_is_left_out(high_speed):
    sweep = high_speed.changed(Co=0.0).sweep(celsius=[1000, 1100])
    ax = gs.plot.matrix(sweep)
    assert "Co" not in [text.get_text() for text in ax.get_legend().get_texts()]


# Side by side


@pytest.mark.parametrize("what", ["carbides", "matrix", "carbon_shares"])
def test_steels_side_by_side_have_the_same_scales(sweep, die_sweep, what):
    left, right = gs.plot.compare([sweep, die_sweep], what)
    assert left.figure is right.figure
    assert left.get_xlim() == right.get_xlim()
    assert left.get_ylim() == right.get_ylim()
    assert left.get_xlim()[0] < 760 and left.get_xlim()[1] > 1260
    assert left.get_ylabel() and not right.get_ylabel()
    assert left.get_title(loc="left") == "punch heat 12"
    assert right.get_title(loc="left") == "die heat 3"
    others = [ax for ax in left.figure.axes if ax not in (left, right)]
    assert len(others) == (2 if what == "matrix" else 0)
    if others:
        assert others[0].get_ylim() == others[1].get_ylim()
        assert [ax.get_ylabel() for ax in others] == ["", "carbon in the matrix [wt%]"]


def test_steels_side_by_side_on_given_axes(sweep, die_sweep):
    figure, axes = plt.subplots(1, 2)
    given = gs.plot.compare([sweep, die_sweep], axes=axes, kind="lines")
    assert given == list(axes)
    assert line(axes[0], "M6C")[1][0] == pytest.approx(
        sweep[0].volume_percent_of("M6C")
    )


# What all figures share

ON_ONE_AXES = [
    gs.plot.carbides,
    gs.plot.matrix,
    gs.plot.carbon_shares,
    lambda sweep, **kw: gs.plot.carbides(sweep, "lines", **kw),
    lambda sweep, **kw: gs.plot.element_shares(sweep, "V", **kw),
]


@pytest.mark.parametrize("plot", ON_ONE_AXES)
def test_axes_are_honoured_labelled_and_traced_to_the_file(sweep, plot):
    figure, ax = plt.subplots()
    assert plot(sweep, ax=ax) is ax
    assert plt.get_fignums() == [figure.number]
    assert ax.get_xlabel() == "soak temperature [°C]"
    assert re.search(r"\[(vol%|wt%|%)\]$", ax.get_ylabel())
    text = " ".join(notes(ax).split())
    assert "Long-hold limit." in text
    assert sweep[0].parameters in text
    assert "0.9C 4.1Cr 5Mo 6.2W 1.9V 0.3Mn 0.3Si, balance Fe [wt%]" in text
    assert ("volumes at room temperature" in text) == ("vol%" in ax.get_ylabel())


@pytest.mark.parametrize("plot", ON_ONE_AXES)
def test_legend_and_cautions_lie_above_the_data(sweep, plot):
    ax = plot(sweep)
    ax.figure.canvas.draw()
    inverse = ax.transAxes.inverted()
    lowest = inverse.transform(ax.get_legend().get_window_extent())[0, 1]
    for text in ax.texts:
        if text.get_gid() == "caution":
            lowest = min(lowest, inverse.transform(text.get_window_extent())[0, 1])
    for one in ax.figure.axes:
        share = one.transData + inverse
        for drawn in one.get_lines():
            if drawn.get_gid() == "caution":
                continue
            data = np.column_stack([drawn.get_xdata(), drawn.get_ydata()])
            heights = share.transform(data.astype(float))[:, 1]
            assert np.nanmax(heights, initial=0.0) < lowest
    # Nothing is cut off by the edge of the figure.
    box = ax.figure.get_tightbbox()
    width, height = ax.figure.get_size_inches()
    assert -0.01 < box.x0 and box.x1 < width + 0.01
    assert -0.01 < box.y0 and box.y1 < height + 0.01


def test_a_plain_figure_of_matplotlib_has_room_for_all(sweep):
    figure, ax = plt.subplots()
    gs.plot.carbides(sweep, ax=ax)
    figure.canvas.draw()
    assert figure.get_tightbbox().y1 < figure.get_size_inches()[1] + 0.02


def test_a_second_scale_in_fahrenheit(sweep):
    ax = gs.plot.carbides(sweep, fahrenheit=True)
    (top,) = ax.child_axes
    ax.figure.canvas.draw()
    assert top.get_xlabel() == "soak temperature [°F]"
    assert top.get_xlim() == pytest.approx([1.8 * x + 32.0 for x in ax.get_xlim()])
    title = ax._left_title.get_window_extent()
    text = [t for t in ax.texts if t.get_gid() == "notes"][0].get_window_extent()
    scale = top.get_tightbbox(ax.figure.canvas.get_renderer())
    assert title.y0 >= text.y1 and text.y0 >= scale.y1 - 1.0


def test_keywords_reach_the_artists(sweep):
    ax = gs.plot.carbides(sweep, alpha=0.5)
    assert {c.get_alpha() for c in ax.collections} == {0.5}
    assert gs.plot.matrix(sweep, linewidth=3.5).get_lines()[0].get_linewidth() == 3.5


def test_volumes_at_the_soak_temperature_are_named(punch):
    hot = punch.sweep(celsius=[1000, 1100], at_soak_temperature=True)
    assert "volumes at the soak temperature" in notes(gs.plot.carbides(hot))


# Errors


def refused(call, expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == expected
    assert plt.get_fignums() == []


SWEEP = "give what steel.sweep(celsius=range(900, 1231, 5)) returns"


def test_what_cannot_be_drawn_is_named(sweep, state):
    refused(
        lambda: gs.plot.carbides(state),
        f"[gibbsteel.input.297] sweep: is State, not Sweep; {SWEEP}",
    )
    refused(
        lambda: gs.plot.matrix([sweep, sweep]),
        "[gibbsteel.input.297] sweep: is list, not Sweep; give one sweep; several "
        "steels: gs.plot.compare([sweep, other]) side by side, "
        "gs.plot.curves([sweep, other], quantity) on one Axes",
    )
    refused(
        lambda: gs.plot.matrix(sweep_of([])),
        f"[gibbsteel.input.297] sweep: holds no soaks; {SWEEP}",
    )
    refused(
        lambda: gs.plot.carbides(sweep, ax=3),
        "[gibbsteel.input.297] ax: is int, not Axes; "
        "give one Axes, for instance of plt.subplots()",
    )
    refused(
        lambda: gs.plot.compare([]),
        "[gibbsteel.input.297] sweeps: are none; give two or more sweeps in a list",
    )
    refused(
        lambda: gs.plot.compare([sweep], axes=[]),
        "[gibbsteel.input.297] axes: are 0 for 1 sweeps; give one per sweep",
    )


def test_options_that_are_not_known_are_named(sweep):
    refused(
        lambda: gs.plot.carbides(sweep, kind="bars"),
        "[gibbsteel.input.298] kind: is 'bars'; choose from: stacked, lines",
    )
    refused(
        lambda: gs.plot.matrix(sweep, ["Cr", "Co"]),
        "[gibbsteel.input.298] elements: is 'Co'; "
        "choose from: Fe, C, Cr, Mo, W, V, Mn, Si",
    )
    refused(
        lambda: gs.plot.compare([sweep], "hardness"),
        "[gibbsteel.input.298] what: is 'hardness'; "
        "choose from: carbides, matrix, carbon_shares",
    )
    refused(
        lambda: gs.plot.element_shares(sweep, "Co"),
        "[gibbsteel.input.299] element: the state holds no 'Co'; "
        "choose from: Fe, C, Cr, Mo, W, V, Mn, Si",
    )


def test_without_matplotlib_the_package_is_named(sweep, monkeypatch):
    monkeypatch.setitem(sys.modules, "matplotlib.pyplot", None)
    for call in (
        lambda: gs.plot.carbides(sweep),
        lambda: gs.plot.compare([sweep]),
    ):
        with pytest.raises(ImportError) as error:
            call()
        assert str(error.value) == (
            "gs.plot needs the package matplotlib (Debian: python3-matplotlib)"
        )


def test_importing_the_package_does_not_import_matplotlib():
    program = "import sys, gibbsteel.plot; sys.exit('matplotlib' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", program]).returncode == 0
