"""gs.plot.soak_time, and the lines of minutes in gs.plot.soak_limits."""

import inspect
import os

os.environ["MPLBACKEND"] = "Agg"  # no window

import gibbsteel as gs
import numpy as np
import pytest

plt = pytest.importorskip("matplotlib.pyplot", reason="Debian: python3-matplotlib")

STEEL = {"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}


@pytest.fixture(autouse=True)
def close_all():
    yield
    plt.close("all")


@pytest.fixture(scope="module")
def state():
    return gs.Steel(STEEL, name="52100").soak(celsius=860)


def line(ax, label):
    (found,) = [one for one in ax.get_lines() if one.get_label() == label]
    return np.asarray(found.get_xdata(), float), np.asarray(found.get_ydata(), float)


def test_the_times_of_a_shop_when_none_are_given(state):
    minutes, _ = line(gs.plot.soak_time(state), "timed soak")
    assert len(minutes) == 41
    assert (minutes[0], minutes[-1]) == pytest.approx((2.0, 240.0))
    assert np.diff(np.log(minutes)) == pytest.approx(np.log(120.0) / 40.0)
    assert inspect.signature(gs.plot.soak_time).parameters["minutes"].default is None


def test_the_line_is_that_of_the_timed_soaks(state):
    ax = gs.plot.soak_time(state, [60, 10, 30])
    minutes, carbon = line(ax, "timed soak")
    assert list(minutes) == [10, 30, 60]
    bands = [soak.band("C") for soak in state.timed_soaks([10, 30, 60])]
    assert list(carbon) == [band.value for band in bands]
    (area,) = ax.collections
    heights = area.get_paths()[0].vertices[:, 1]
    assert max(heights) == max(band.high for band in bands)
    assert min(heights) == min(band.low for band in bands)
    assert set(line(ax, "long-hold limit")[1]) == {bands[0].long_hold}
    limit = state.short_soak_limit().state.matrix.weight_percent["C"]
    assert set(line(ax, "short-soak limit")[1]) == {limit}
    assert ax.get_title(loc="left") == "52100 at 860 °C"
    assert [t.get_text() for t in ax.get_xticklabels()] == ["10", "20", "50"]
    (notes,) = [text for text in ax.texts if text.get_gid() == "notes"]
    assert "M3C of 0.6 µm" in notes.get_text().replace("\n", " ")


def test_sizes_looks_and_axes_are_passed_on(state):
    ax = plt.subplots()[1]
    same = gs.plot.soak_time(
        state, particle_micrometres=0.5, annealed_celsius=680, ax=ax, linewidth=1.0
    )
    assert same is ax
    _, carbon = line(ax, "timed soak")
    soak = state.timed_soak(2, particle_micrometres=0.5, annealed_celsius=680)
    assert carbon[0] == soak.state.matrix.weight_percent["C"]


def test_what_cannot_be_drawn_is_refused(state):
    with pytest.raises(gs.InputError) as caught:
        gs.plot.soak_time(state, 30)
    assert str(caught.value) == (
        "[gibbsteel.input.297] minutes: are fewer than two; give two times or more"
    )
    with pytest.raises(gs.InputError) as caught:
        gs.plot.soak_time(gs.Steel(STEEL))
    assert str(caught.value) == (
        "[gibbsteel.input.297] state: is Steel, not State; give what steel.soak returns"
    )


def test_times_that_leave_ferrite_are_left_out():
    cold = gs.Steel(STEEL).soak(celsius=762)
    with pytest.raises(gs.InputError, match="gibbsteel.input.284. state after 5 min:"):
        cold.timed_soaks([5, 3000])
    ax = gs.plot.soak_time(cold, [5, 1000, 2000, 3000])
    assert list(line(ax, "timed soak")[0]) == [1000, 2000, 3000]
    close = gs.plot.soak_time(gs.Steel(STEEL).soak(celsius=860), [30, 45])
    assert [t.get_text() for t in close.get_xticklabels()] == ["30", "45"]


def test_lines_of_minutes_lie_between_the_limits():
    sweep = gs.Steel(STEEL).sweep(celsius=[700, 820, 860, 900])
    ax = gs.plot.soak_limits(sweep, minutes=[60, 15, 15], particle_micrometres=0.8)
    labels = [text.get_text() for text in ax.get_legend().get_texts()]
    assert labels[3:] == ["15 min", "60 min"]
    _, short = line(ax, "15 min")
    _, long = line(ax, "60 min")
    assert np.isnan(short[0]) and np.isnan(long[0])
    single = gs.plot.soak_limits(sweep, minutes=60, particle_micrometres=0.8)
    assert np.array_equal(line(single, "60 min")[1], long, equal_nan=True)
    low, high = line(ax, "short-soak limit")[1], line(ax, "long-hold limit")[1]
    for i in (1, 2, 3):
        assert low[i] <= short[i] <= long[i] <= high[i]
        state = sweep[i].timed_soak(60, particle_micrometres=0.8).state
        assert long[i] == state.matrix.weight_percent["C"]
    assert "minutes known" not in _notes(gs.plot.soak_limits(sweep))
    assert "M3C of 0.8 µm; minutes known to a factor of three" in _notes(ax)


def _notes(ax):
    (notes,) = [text for text in ax.texts if text.get_gid() == "notes"]
    return notes.get_text().replace("\n", " ")


def test_where_the_last_time_alone_leaves_no_ferrite_the_line_starts_before_it():
    cold = gs.Steel(STEEL).soak(celsius=762)
    ax = gs.plot.soak_time(cold, [5, 3000])
    minutes, carbon = line(ax, "timed soak")
    assert minutes[-1] == 3000 and len(minutes) > 2
    assert carbon[-1] == cold.timed_soak(3000).band("C").value
    with pytest.raises(gs.InputError, match="would hold ferrite"):
        cold.timed_soak(minutes[0] / (3000 / 5) ** (1 / 40))
    with pytest.raises(gs.InputError, match="would hold ferrite"):
        gs.plot.soak_time(cold, [5, 6])
