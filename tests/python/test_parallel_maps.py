"""Pools of processes and threads, as users start them: the same numbers come back."""

import os
from multiprocessing import get_context
from operator import methodcaller

import gibbsteel as gs
import pytest

pytestmark = pytest.mark.skipif(
    os.environ.get("LD_PRELOAD") is not None, reason="slow when traced"
)

SOAK = methodcaller("soak", celsius=1100)


@pytest.fixture(scope="module")
def steels(punch):
    return [punch.changed(C=carbon) for carbon in (0.45, 0.5, 0.6, 0.65)]


@pytest.fixture(scope="module")
def expected(steels):
    return [SOAK(steel).occurrences for steel in steels]


def test_pool(steels, expected):
    with get_context("spawn").Pool(2) as pool:
        states = pool.map(SOAK, steels)
    assert [state.occurrences for state in states] == expected


def test_a_pool_brings_back_sweeps_and_reports(punch):
    calls = [methodcaller("sweep", celsius=[1000, 1100])]
    with get_context("fork").Pool(1) as pool:
        (sweep,) = pool.map(calls[0], [punch])
        (report,) = pool.map(methodcaller("report"), [sweep])
    assert str(sweep) == str(punch.sweep(celsius=[1000, 1100]))
    assert report == sweep.report()


@pytest.mark.parametrize("backend", ["loky", "threading"])
def test_joblib(steels, expected, backend):
    joblib = pytest.importorskip("joblib")
    with joblib.parallel_backend(backend, n_jobs=2):
        states = joblib.Parallel()(
            joblib.delayed(gs.Steel.soak)(steel, celsius=1100) for steel in steels
        )
    assert [state.occurrences for state in states] == expected


@pytest.mark.parametrize("scheduler", ["threads", "processes", "synchronous"])
def test_dask(steels, expected, scheduler):
    dask = pytest.importorskip("dask")
    tasks = [dask.delayed(SOAK)(steel) for steel in steels]
    states = dask.compute(*tasks, scheduler=scheduler, num_workers=2)
    assert [state.occurrences for state in states] == expected
