"""A screen through Dask: two worker processes, one of them killed in mid-run."""

import importlib.util
import os
import signal
import time
from pathlib import Path

import gibbsteel as gs
import numpy as np
import pytest

distributed = pytest.importorskip("distributed")
pytestmark = [
    pytest.mark.skipif(
        os.environ.get("LD_PRELOAD") is not None, reason="starts processes of its own"
    ),
    # Debian's version of the package uses what its version of tornado calls old.
    pytest.mark.filterwarnings("ignore:make_current is deprecated:DeprecationWarning"),
]

ROOT = Path(__file__).parents[2]
SETTINGS = {"celsius": 1120}


@pytest.fixture(scope="module")
def example():
    path = ROOT / "examples" / "screen_on_dask.py"
    spec = importlib.util.spec_from_file_location("screen_on_dask", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="module")
def heats(example):
    """Four hundred steels: seven pieces of one block of compositions."""
    return np.tile(example.candidates(), (3, 1))[:400]


@pytest.fixture(scope="module")
def pieces(heats, example):
    return gs.screen_pieces(heats, example.ELEMENTS, seconds=1e-6, pilot=1, **SETTINGS)


@pytest.fixture(scope="module")
def whole(heats, example):
    return gs.screen(heats, example.ELEMENTS, **SETTINGS)


@pytest.fixture(scope="module")
def client(example):
    with example.connected() as client:
        yield client


def test_two_workers_give_the_bits_of_one_process(
    example, client, heats, pieces, whole
):
    assert len(pieces) == 7
    tables = list(example.screened(client, heats, pieces, **SETTINGS))
    assert len(set(client.run(os.getpid).values())) == 2
    assert gs.join_screens(tables) == whole


def test_a_worker_that_is_killed_in_mid_run_loses_nothing(
    example, client, heats, pieces, whole, tmp_path
):
    log = str(tmp_path / "begun")

    def logged(compositions, *arguments, **settings):
        """A piece that says who begins it; sent to the workers by value."""
        with open(log, "a") as stream:
            stream.write(f"{os.getpid()} {compositions.tobytes().hex()}\n")
        return gs.screen(compositions, *arguments, **settings)

    def begun():
        return [line.split() for line in Path(log).read_text().splitlines()]

    workers = set(client.run(os.getpid).values())
    tables = example.screened(client, heats, pieces, screen=logged, **SETTINGS)
    first = next(tables)
    # The worker that began a piece last is in the midst of it.
    victim = int(begun()[-1][0])
    os.kill(victim, signal.SIGKILL)
    assert gs.join_screens([first, *tables]) == whole

    assert victim in workers
    by_worker = [int(worker) for worker, _ in begun()]
    assert len(by_worker) > len(pieces), "no piece was begun a second time"
    deadline = time.monotonic() + 30.0  # the worker is replaced
    while len(alive := set(client.run(os.getpid).values())) < 2:
        assert time.monotonic() < deadline
        time.sleep(0.1)
    assert victim not in alive
