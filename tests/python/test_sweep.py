"""Sweeps: equal to single soaks, tables, progress, cancelling."""

import signal
import sys
import threading
import time

import gibbsteel as gs
import numpy as np
import pytest
from bits import bits_of

TEMPERATURES = range(1000, 1201, 50)


@pytest.fixture(scope="module")
def sweep(high_speed):
    return high_speed.sweep(celsius=TEMPERATURES)


def test_a_sweep_is_that_many_soaks(high_speed, sweep):
    assert len(sweep) == len(TEMPERATURES)
    for state, celsius in zip(sweep, TEMPERATURES, strict=True):
        single = high_speed.soak(celsius=celsius)
        assert state.gibbs_energy == pytest.approx(single.gibbs_energy, rel=1e-12)
        for name, percent in single.matrix.weight_percent.items():
            assert state.matrix.weight_percent[name] == pytest.approx(percent, rel=1e-9)
        for swept, alone in zip(state.occurrences, single.occurrences, strict=True):
            assert swept.name == alone.name
            assert swept.volume_percent == pytest.approx(alone.volume_percent, rel=1e-8)
    assert sweep[-1].celsius == pytest.approx(1200.0)
    with pytest.raises(IndexError):
        sweep[5]
    assert sweep.failures == 0 and not sweep.cancelled
    assert sweep.carbide_kinds == ["M6C", "MC"]


def test_temperatures_from_an_array(high_speed, sweep):
    from_array = high_speed.sweep(celsius=np.array(TEMPERATURES, dtype=float))
    assert [s.occurrences for s in from_array] == [s.occurrences for s in sweep]


def test_carbide_dissolves_and_carbon_rises(sweep):
    # Common practice, no source: a hotter soak dissolves carbide into the matrix.
    volumes = [state.carbide_volume_percent for state in sweep]
    carbon = [state.matrix.weight_percent["C"] for state in sweep]
    assert volumes == sorted(volumes, reverse=True)
    assert carbon == sorted(carbon)


def test_tidy_and_wide_tables(sweep):
    pytest.importorskip("pandas")
    tidy = sweep.to_frame()
    assert {"temperature_C", "name", "volume_percent", "C_weight_percent"} <= set(tidy)
    assert tidy["temperature_F"].iloc[0] == pytest.approx(1832.0)
    assert len(tidy) == sum(len(state.occurrences) for state in sweep)
    wide = sweep.to_frame(wide=True)
    assert len(wide) == len(sweep)
    assert {"M6C_volume_percent", "matrix_C_weight_percent"} <= set(wide)
    assert wide["usable"].all()
    assert wide["temperature_F"].iloc[-1] == pytest.approx(2192.0)
    assert wide.attrs["parameters_hash"] == sweep[0].parameters_hash
    for table in (tidy, wide):
        assert table["warnings"].iloc[0] == ""
        assert table["warnings"].iloc[-1] == "303 310"


def test_distinct_warnings(sweep):
    texts = [warning.text for state in sweep for warning in state.warnings]
    distinct = [warning.text for warning in sweep.warnings]
    assert len(distinct) == len(set(distinct)) > 0
    assert set(distinct) == set(texts)


def test_a_state_that_is_not_usable_keeps_its_row(punch):
    pytest.importorskip("pandas")
    sweep = punch.sweep(celsius=[1000, 1100], phases=["graphite"])
    assert sweep.failures == 2
    assert "2 NOT USABLE" in repr(sweep)
    assert not sweep.to_frame()["usable"].any()
    assert not sweep.to_frame(wide=True)["usable"].any()
    assert str(sweep).count("NOT USABLE") >= 3


def test_progress_callback_counts_and_stops(punch):
    seen = []
    punch.sweep(celsius=TEMPERATURES, progress=seen.append)
    assert seen == [1, 2, 3, 4, 5]
    assert len(punch.sweep(celsius=TEMPERATURES, progress=None)) == 5
    stopped = punch.sweep(celsius=TEMPERATURES, progress=lambda done: done < 2)
    assert stopped.cancelled and len(stopped) == 2
    assert "CANCELLED" in repr(stopped)


def test_an_error_in_the_callback_reaches_the_caller(punch):
    def fail(done):
        raise RuntimeError("stop here")

    with pytest.raises(RuntimeError, match="stop here"):
        punch.sweep(celsius=TEMPERATURES, progress=fail)


def test_an_interrupt_returns_what_is_done(punch):
    def interrupt(done):
        if done == 2:
            signal.raise_signal(signal.SIGINT)

    sweep = punch.sweep(celsius=TEMPERATURES, progress=interrupt)
    assert sweep.cancelled
    assert 2 <= len(sweep) < len(TEMPERATURES)
    assert punch.soak(celsius=1000).usable


def test_the_interpreter_goes_on_during_a_sweep(high_speed):
    """With the lock held, this thread would see nothing between start and end."""
    thread = threading.Thread(
        target=high_speed.sweep, kwargs={"celsius": np.linspace(1000.0, 1200.0, 3000)}
    )
    thread.start()
    seen = 0
    while thread.is_alive():
        seen += 1
        time.sleep(0.001)
    thread.join()
    assert seen >= 20


def test_progress_bar(punch, capsys):
    pytest.importorskip("tqdm")
    punch.sweep(celsius=TEMPERATURES, progress=True)
    assert "5/5" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("package", "call", "message"),
    [
        (
            "pandas",
            lambda steel: steel.sweep(celsius=[1000]).to_frame(),
            "to_frame() needs the package pandas (Debian: python3-pandas)",
        ),
        (
            "tqdm.auto",
            lambda steel: steel.sweep(celsius=[1000], progress=True),
            "progress=True needs the package tqdm (Debian: python3-tqdm)",
        ),
    ],
)
def test_a_missing_package_is_named(punch, monkeypatch, package, call, message):
    monkeypatch.setitem(sys.modules, package, None)
    assert punch.soak(celsius=1000).usable
    with pytest.raises(ImportError) as error:
        call(punch)
    assert str(error.value) == message


def test_a_part_of_a_sweep_is_a_sweep(punch):
    sweep = punch.sweep(celsius=TEMPERATURES)
    for part in (
        slice(1, 3),
        slice(None),
        slice(None, None, -1),
        slice(-2, None),
        slice(3, 1),
        slice(4, 0, -2),
    ):
        some = sweep[part]
        assert type(some) is gs.Sweep
        wanted = [bits_of(state) for state in sweep.states[part]]
        assert [bits_of(state) for state in some] == wanted
        assert (some.steel, some.cancelled) == (sweep.steel, False)
    assert bits_of(sweep[np.int64(1)]) == bits_of(sweep.states[1])
    for wrong in (1.0, "1"):
        with pytest.raises(TypeError) as error:
            sweep[wrong]
        assert str(error.value) == (
            f"'{type(wrong).__name__}' object cannot be interpreted as an integer"
        )
    with pytest.raises(IndexError) as error:
        sweep[len(sweep)]
    assert str(error.value) == "sweep index out of range"


def test_anything_may_be_looked_for_in_a_state(punch):
    state = punch.soak(celsius=1000)
    assert "austenite" in state
    for other in (3, None, ["austenite"], state):
        assert other not in state
    slopes = punch.sensitivities(celsius=1000)
    assert "temperature" in slopes
    assert 3 not in slopes and None not in slopes


def test_empty_sweep(punch):
    sweep = punch.sweep(celsius=[])
    assert len(sweep) == 0
    assert str(sweep) == "punch heat 7, no temperatures given\n"
    assert sweep.warnings == []
    assert gs.Sweep is type(sweep)
