"""Curves of one quantity: lines, bands, names, marks, notes, cautions, errors."""

import os

os.environ["MPLBACKEND"] = "Agg"  # no window

import math

import gibbsteel as gs
import numpy as np
import pytest
from gibbsteel import quantities as q

plt = pytest.importorskip("matplotlib.pyplot", reason="Debian: python3-matplotlib")
pytestmark = pytest.mark.usefixtures("nothing_left_behind")

DIE = gs.Steel({"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8}, name="die heat 3")
SWEEP = "give what steel.sweep(celsius=range(900, 1231, 5)) returns"
EDITION = str(gs.Steel({"C": 0.8}).soak(celsius=900).parameters)


@pytest.fixture(scope="module")
def sweeps(punch):
    """Two steels, not at the same temperatures, one of them in no order."""
    return [
        punch.sweep(celsius=[1200, 1000, 1050, 1100, 1150]),
        DIE.sweep(celsius=range(940, 1121, 30)),
    ]


def in_order(sweep):
    return sorted(sweep, key=lambda state: state.celsius)


def line(ax, label):
    (found,) = [one for one in ax.get_lines() if one.get_label() == label]
    return found


def bands(ax):
    """Of each steel: temperature -> (low, high)."""
    found = []
    for drawn in ax.collections:
        if drawn.get_gid() == "band":
            edges = {}
            for path in drawn.get_paths():
                for x, y in path.vertices:
                    low, high = edges.get(x, (y, y))
                    edges[x] = min(low, y), max(high, y)
            found.append(edges)
    return found


def notes(ax):
    (found,) = [text for text in ax.texts if text.get_gid() == "notes"]
    return " ".join(found.get_text().split())


def words(ax, gid):
    return [text.get_text() for text in ax.texts if text.get_gid() == gid]


def legend(ax):
    return [text.get_text() for text in ax.get_legend().get_texts()]


QUANTITIES = [
    (q.hardness_hrc(coldest_celsius=-75), "as-quenched hardness [HRC]"),
    (q.martensite_start(), "martensite start [°C]"),
    (q.retained_austenite(), "retained austenite [vol%]"),
    (q.grain_limit(0.5), "austenite grain limit [µm]"),
    (q.matrix("C"), "C in the matrix [wt%]"),
    (q.carbide_volume_percent(), "carbide [vol%]"),
    (q.driving_force("M23C6"), "driving force of M23C6 [J/mol of atoms]"),
    (q.carbon_activity(), "carbon activity"),
    (gs.Quantity("Mo + W", "wt%", lambda s: s.matrix.weight_percent["Mo"]), None),
]


@pytest.mark.parametrize(("quantity", "label"), QUANTITIES)
def test_lines_and_bands_are_the_numbers_of_the_states(sweeps, quantity, label):
    ax = gs.plot.curves(sweeps, quantity)
    assert ax.get_ylabel() == (label or quantity.label)
    assert ax.get_title(loc="left") == quantity.name
    lowest, highest = ax.get_ylim()
    for i, sweep in enumerate(sweeps):
        states = in_order(sweep)
        drawn = line(ax, states[0].steel)
        assert list(drawn.get_xdata()) == pytest.approx([s.celsius for s in states])
        wanted = [quantity.value(state) for state in states]
        assert list(drawn.get_ydata()) == pytest.approx(wanted, nan_ok=True)
        assert all(lowest <= v <= highest for v in wanted if not math.isnan(v))
        if quantity.has_band:
            edges = bands(ax)[i]
            known = [s for s, v in zip(states, wanted, strict=True) if v == v]
            assert sorted(edges) == pytest.approx([s.celsius for s in known])
            for state in known:
                assert edges[state.celsius] == pytest.approx(quantity.band(state))
                assert lowest <= edges[state.celsius][0]
    names = ["punch heat 7", "die heat 3"]
    assert legend(ax) == names + ["band of the estimate"] * quantity.has_band
    assert len(bands(ax)) == 2 * quantity.has_band


def test_steels_differ_by_colour_dash_and_marker(punch):
    steels = [punch.changed(C=0.4 + 0.02 * i, name=f"heat {i}") for i in range(9)]
    sweeps = [steel.sweep(celsius=[1100, 1150]) for steel in steels]
    ax = gs.plot.curves(sweeps, q.matrix("C"))
    looks = [line(ax, steel.name) for steel in steels]
    assert len({(one.get_color(), str(one._dash_pattern)) for one in looks}) == 9
    assert len({one.get_marker() for one in looks}) == 9
    assert len({one.get_color() for one in looks[:8]}) == 8
    assert "heat 5: " in notes(ax) and "heat 6: " not in notes(ax)
    assert "and 3 more" in notes(ax)


def test_steels_of_one_name_are_numbered_and_their_sets_told(punch, first_edition):
    old = gs.Steel(punch.analysis.given, name=punch.name, parameters=first_edition)
    pair = [one.sweep(celsius=[1000, 1100]) for one in (punch, old)]
    ax = gs.plot.curves(pair, q.carbide_volume_percent())
    assert legend(ax) == ["punch heat 7 (1)", "punch heat 7 (2)"]
    composition = punch.analysis.brief()
    assert notes(ax) == (
        f"punch heat 7 (1): {composition} [wt%]; {pair[0][0].parameters} "
        f"punch heat 7 (2): {composition} [wt%]; {pair[1][0].parameters} "
        "Long-hold limit. Volumes at room temperature"
    )


def test_one_steel_is_named_in_the_title(sweeps, punch):
    ax = gs.plot.curves(sweeps[0], q.retained_austenite())
    assert ax.get_title(loc="left") == "punch heat 7: retained austenite"
    assert notes(ax) == (
        f"{punch.analysis.brief()} [wt%] Long-hold limit. {EDITION}; "
        "volumes at room temperature"
    )


def test_a_quantity_after_minutes_is_no_long_hold():
    steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}, name="ring")
    sweep = steel.sweep(celsius=[840, 860])
    hardness = q.after_minutes(q.hardness_hrc(), 30)
    ax = gs.plot.curves(sweep, hardness)
    assert "Long-hold" not in notes(ax)
    assert ax.get_ylabel() == "as-quenched hardness, timed soak of 30 min [HRC]"
    soak = sweep[0].timed_soak(30)
    found = soak.hardening().hardness_hrc
    drawn = bands(ax)[0][sweep[0].celsius]
    assert drawn == pytest.approx((found.low, found.high))
    grid = steel.grid(C=[0.95, 1.0], celsius=[840, 860])
    assert "Long-hold" not in notes(gs.plot.map(grid, hardness))


def test_both_scales_in_fahrenheit(sweeps):
    ax = gs.plot.curves(sweeps, q.martensite_start(), fahrenheit=True)
    top, right = ax.child_axes
    ax.figure.canvas.draw()
    assert top.get_xlabel() == "soak temperature [°F]"
    assert top.get_xlim() == pytest.approx([1.8 * x + 32.0 for x in ax.get_xlim()])
    assert right.get_ylabel() == "martensite start [°F]"
    assert right.get_ylim() == pytest.approx([1.8 * y + 32.0 for y in ax.get_ylim()])
    other = gs.plot.curves(sweeps, q.hardness_hrc(), fahrenheit=True)
    assert len(other.child_axes) == 1


def test_marked_temperatures(sweeps):
    ax = gs.plot.curves(sweeps, q.matrix("C"), at_celsius=1120, at_fahrenheit=[1950])
    assert words(ax, "mark") == ["1066 °C (1950 °F)", "1120 °C"]
    places = [one.get_xdata()[0] for one in ax.get_lines() if one.get_gid() == "mark"]
    assert places == pytest.approx([(1950 - 32) / 1.8, 1120.0])
    both = gs.plot.curves(sweeps, q.matrix("C"), at_celsius=[1120], fahrenheit=True)
    assert words(both, "mark") == ["1120 °C (2048 °F)"]
    ends = gs.plot.curves(sweeps, q.matrix("C"), at_celsius=(940, 1200))
    assert words(ends, "mark") == ["940 °C", "1200 °C"]


def test_legend_cautions_and_marks_do_not_lie_on_one_another(sweeps):
    ax = gs.plot.curves(sweeps, q.hardness_hrc(), at_celsius=1100)
    ax.figure.canvas.draw()
    inverse = ax.transAxes.inverted()
    lowest = inverse.transform(ax.get_legend().get_window_extent())[0, 1]
    for text in ax.texts:
        if text.get_gid() == "caution":
            lowest = min(lowest, inverse.transform(text.get_window_extent())[0, 1])
    (mark,) = [one for one in ax.get_lines() if one.get_gid() == "mark"]
    assert mark.get_ydata()[1] <= lowest
    share = ax.transData + inverse
    for edges in bands(ax):
        tops = [(x, high) for x, (_, high) in edges.items()]
        assert share.transform(np.array(tops))[:, 1].max() < lowest
    box = ax.figure.get_tightbbox()
    width, height = ax.figure.get_size_inches()
    assert -0.01 < box.x0 and box.x1 < width + 0.01
    assert -0.01 < box.y0 and box.y1 < height + 0.01


def test_cautions_name_the_steels_where_not_all_are_meant(sweeps, high_speed):
    hot = high_speed.sweep(celsius=[1000, 1200])  # 303 above 1180 C
    melting = "no liquid in the file: melting not predicted"
    ax = gs.plot.curves([sweeps[1], hot], q.matrix("C"))
    assert f"{melting} (punch heat 12)" in words(ax, "caution")
    assert melting in words(gs.plot.curves(hot, q.matrix("C")), "caution")
    wide = gs.plot.curves([hot, sweeps[0]], q.matrix("C"))
    assert melting in words(wide, "caution")
    (bar,) = [
        tuple(one.get_xdata())
        for one in wide.get_lines()
        if one.get_gid() == "caution" and one.get_xdata()[1] == 1200.0
    ][:1]
    assert bar == pytest.approx((1100.0, 1200.0))  # half-way from 1000 C


def test_what_estimates_warn_of_is_a_caution_too(punch):
    sweep = punch.changed(C=1.3, name="rich").sweep(celsius=[1100, 1150])
    hot = q.martensite_start(coldest_celsius=150)
    assert all(hot.value(state) < 150 for state in sweep)
    told = "martensite start not above the end of the quench"
    assert told in words(gs.plot.curves(sweep, hot), "caution")
    assert told not in words(gs.plot.curves(sweep, q.matrix("C")), "caution")


def test_gaps(sweeps, punch):
    bad = punch.changed(name="bad").sweep(celsius=[1040, 1060], phases=["graphite"])
    assert bad.failures == 2
    ax = gs.plot.curves([sweeps[0], bad], q.hardness_hrc())
    assert "not usable (gap) (bad)" in words(ax, "caution")
    assert np.isnan(line(ax, "bad").get_ydata()).all()
    assert [p.get_gid() for p in ax.patches] == []  # the other steel has numbers there
    alone = gs.plot.curves(bad, q.hardness_hrc())
    assert words(alone, "caution") == ["not usable (gap)"]
    assert [p.get_gid() for p in alone.patches] == ["not usable"]
    assert legend(alone) == ["bad"]
    none = gs.plot.curves(sweeps[1], q.in_phase("M6C", "W"))
    assert "no value (gap)" in words(none, "caution")


def test_the_scale_begins_at_zero_only_where_numbers_come_near(sweeps):
    assert gs.plot.curves(sweeps, q.retained_austenite()).get_ylim()[0] == 0.0
    assert gs.plot.curves(sweeps, q.hardness_hrc()).get_ylim()[0] > 40.0
    force = gs.plot.curves(sweeps, q.driving_force("M3C"))
    assert force.get_ylim()[0] < min(force.get_lines()[0].get_ydata()) < 0.0


def refused(call, expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == expected
    assert plt.get_fignums() == []


def test_what_cannot_be_drawn_is_named(sweeps, punch):
    carbon = q.matrix("C")
    refused(
        lambda: gs.plot.curves([], carbon),
        "[gibbsteel.input.297] sweeps: are none; give one sweep per steel in a list",
    )
    for what in (punch, [punch]):
        refused(
            lambda what=what: gs.plot.curves(what, carbon),
            f"[gibbsteel.input.297] sweep: is Steel, not Sweep; {SWEEP}",
        )
    refused(
        lambda: gs.plot.compare(punch),
        f"[gibbsteel.input.297] sweep: is Steel, not Sweep; {SWEEP}",
    )
    refused(
        lambda: gs.plot.curves(sweeps, "hardness"),
        "[gibbsteel.input.297] quantity: is str, not Quantity; "
        'give for instance gs.quantities.matrix("C")',
    )
    refused(
        lambda: gs.plot.curves(sweeps, carbon, at_celsius=[1000, 1300]),
        "[gibbsteel.input.297] at: is 1300 °C, outside the soaks, 940 to 1200 °C; "
        "mark temperatures among those of the soaks",
    )
    refused(
        lambda: gs.plot.curves(sweeps, carbon, at_fahrenheit="hot"),
        "[gibbsteel.input.211] temperature: fahrenheit='hot' is text, not a number; "
        "give a number, for instance celsius=1120",
    )


@pytest.mark.parametrize(
    "plot",
    [
        lambda sweep, ax: gs.plot.matrix(sweep, "C", ax=ax),
        lambda sweep, ax: gs.plot.carbides(sweep, ax=ax),
        lambda sweep, ax: gs.plot.curves(sweep, q.matrix("C"), ax=ax),
        lambda sweep, ax: gs.plot.compare([sweep], axes=[ax]),
    ],
)
def test_a_second_figure_on_the_same_axes_is_refused(sweeps, plot):
    ax = plt.subplots()[1]
    gs.plot.matrix(sweeps[0], "C", ax=ax)
    drawn = len(ax.get_lines())
    with pytest.raises(gs.InputError) as error:
        plot(sweeps[1], ax)
    assert str(error.value) == (
        "[gibbsteel.input.297] ax: holds such a figure already; give one without, or "
        'several steels to gs.plot.curves([sweep, other], gs.quantities.matrix("C"))'
    )
    assert len(ax.get_lines()) == drawn
    ax.clear()
    plot(sweeps[1], ax)
