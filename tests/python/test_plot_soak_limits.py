"""gs.plot.soak_limits: what is drawn equals the limits; gaps and errors."""

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
def sweep():
    return gs.Steel(STEEL, name="52100").sweep(celsius=range(700, 901, 20))


def line(ax, label):
    (found,) = [one for one in ax.get_lines() if one.get_label() == label]
    return np.asarray(found.get_xdata(), float), np.asarray(found.get_ydata(), float)


def test_both_limits_are_drawn(sweep):
    ax = gs.plot.soak_limits(sweep)
    celsius, short = line(ax, "short-soak limit")
    _, long_hold = line(ax, "long-hold limit")
    assert celsius == pytest.approx(np.arange(700, 901, 20))
    for state, low, high in zip(sweep, short, long_hold):
        if state.celsius < 780:  # ferrite beside or instead of the austenite
            assert np.isnan(low) and np.isnan(high)
            continue
        limit = state.short_soak_limit().state
        assert low == limit.matrix.weight_percent["C"]
        assert high == state.matrix.weight_percent["C"] > low
    assert ax.get_legend().get_texts()[2].get_text() == "a soak of minutes"
    (notes,) = [text for text in ax.texts if text.get_gid() == "notes"]
    assert "annealed at 700 °C" in notes.get_text().replace("\n", " ")
    cautions = [t.get_text() for t in ax.texts if t.get_gid() == "caution"]
    assert "too cold for a short soak" in cautions


def test_the_annealing_and_the_looks_are_passed_on(sweep):
    ax = plt.subplots()[1]
    same = gs.plot.soak_limits(sweep, annealed_celsius=650, ax=ax, linewidth=1.0)
    assert same is ax and {one.get_linewidth() for one in ax.get_lines()} >= {1.0}
    _, short = line(ax, "short-soak limit")
    limit = sweep[-1].short_soak_limit(annealed_celsius=650).state
    assert short[-1] == limit.matrix.weight_percent["C"]
    again = gs.plot.soak_limits(sweep, annealed_fahrenheit=1202.0)
    assert line(again, "short-soak limit")[1][-1] == pytest.approx(short[-1], rel=1e-9)


def test_what_cannot_be_drawn():
    d2 = gs.Steel({"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8})
    with pytest.raises(gs.InputError) as caught:
        gs.plot.soak_limits(d2.sweep(celsius=[1000, 1020]))
    assert str(caught.value) == (
        "[gibbsteel.input.284] short and timed soaks: are for steels whose annealed "
        "carbide is cementite (52100, O1, W1 types): annealing at 700 C leaves no "
        "M3C, but carbide that gives up carbon only with its metals: M7C3, MC; take "
        "the long-hold limit (after minutes less carbon is in the matrix in "
        "practice), or count the carbide and use with_measured_carbide"
    )
    with pytest.raises(gs.InputError) as caught:
        gs.plot.soak_limits(gs.Steel(STEEL).sweep(celsius=[650, 700]))
    assert str(caught.value) == (
        "[gibbsteel.input.297] sweep: has no soak at which the matrix is austenite by "
        "both limits; give temperatures of hardening"
    )


def test_another_parameter_set():
    own = gs.default_parameters("iron_as_measured")
    sweep = gs.Steel(STEEL, parameters=own).sweep(celsius=[840, 860])
    ax = gs.plot.soak_limits(sweep, parameters=own)
    _, short = line(ax, "short-soak limit")
    assert np.all(np.isfinite(short))
    with pytest.raises(gs.InputError) as caught:
        gs.plot.soak_limits(sweep)
    assert "gibbsteel.input.266" in str(caught.value)


def test_molten_soaks_are_a_gap_and_not_too_cold(with_liquid):
    steel = gs.Steel(STEEL, parameters=with_liquid)
    sweep = steel.sweep(celsius=[850, 900, 1370, 1400])
    ax = gs.plot.soak_limits(sweep, parameters=with_liquid)
    _, short = line(ax, "short-soak limit")
    assert list(np.isnan(short)) == [False, False, True, True]
    cautions = [t.get_text() for t in ax.texts if t.get_gid() == "caution"]
    assert "partly or wholly molten" in cautions
    assert "too cold for a short soak" not in cautions


def test_minutes_out_of_range_leave_no_figure_and_cost_nothing(sweep, monkeypatch):
    monkeypatch.setattr(gs.State, "short_soak_limit", None)
    before = plt.get_fignums()
    with pytest.raises(gs.InputError) as caught:
        gs.plot.soak_limits(sweep, minutes=[-1])
    assert str(caught.value) == (
        "[gibbsteel.input.287] minutes: is -1; give minutes at temperature, above 0 "
        "and at most 100000"
    )
    assert plt.get_fignums() == before
