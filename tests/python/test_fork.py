"""Processes made by fork: they compute the same bits as their parent, also when the
parent has used threads, or is using them at that moment."""

import json
import os
import pickle
import signal
import threading
import time
from multiprocessing import get_context

import gibbsteel as gs
import pytest
from bits import bits_of

pytestmark = pytest.mark.skipif(
    os.environ.get("LD_PRELOAD") is not None, reason="sanitizers and fork do not mix"
)

TEMPERATURES = [450, 900, 1120]
RANGES = {"C": (0.52, 0.58), "Cr": (4.2, 4.8)}


def soaks(steel):
    return [bits_of(steel.soak(celsius=celsius)) for celsius in TEMPERATURES]


def use_threads(steel):
    """Grids, bands and maps start threads and end them."""
    steel.grid(C=[0.5, 0.55, 0.6], celsius=[1000, 1050, 1100])
    return steel.tolerance_band(celsius=1120, ranges=RANGES, samples=16, corners=False)


def in_child(work, seconds=60):
    """What `work` returns in a forked child; a child that hangs is killed."""
    reader, writer = os.pipe()
    child = os.fork()
    if child == 0:
        status = 1
        try:
            signal.alarm(seconds)
            os.close(reader)
            with os.fdopen(writer, "w") as pipe:
                json.dump(work(), pipe)
            status = 0
        finally:
            os._exit(status)
    os.close(writer)
    with os.fdopen(reader) as pipe:
        text = pipe.read()
    _, status = os.waitpid(child, 0)
    assert status == 0, f"the child ended with status {status}"
    return json.loads(text)


def test_a_child_of_a_parent_that_used_threads(punch):
    expected = soaks(punch)
    use_threads(punch)
    assert in_child(lambda: soaks(punch)) == expected
    assert soaks(punch) == expected


def test_a_child_may_use_threads_itself(punch):
    use_threads(punch)
    expected = str(use_threads(punch))
    assert in_child(lambda: str(use_threads(punch))) == expected


def test_fork_in_the_middle_of_the_work_of_other_threads(punch):
    """Whatever another thread holds at that moment, the child does not wait for it."""
    over = threading.Event()

    def work():
        while not over.is_set():
            punch.grid(C=[0.5, 0.55, 0.6], celsius=[900, 1000, 1100, 1200])

    def fresh():
        steel = gs.Steel({"C": 0.6, "Cr": 5.0})
        return bits_of(steel.soak(celsius=1000))

    expected = fresh()
    threads = [threading.Thread(target=work) for _ in range(2)]
    for thread in threads:
        thread.start()
    try:
        for _ in range(40):
            assert in_child(fresh, seconds=20) == expected
            time.sleep(0.003)
    finally:
        over.set()
        for thread in threads:
            thread.join()


def read_and_soak(pickled):
    steel, sweep, parameters = pickle.loads(pickled)
    assert steel.parameters == parameters
    return [*soaks(steel), *(bits_of(state) for state in sweep)]


@pytest.mark.parametrize("start", ["spawn", "fork"])
def test_pickles_in_another_process(punch, start):
    sweep = punch.sweep(celsius=TEMPERATURES)
    use_threads(punch)
    pickled = pickle.dumps((punch, sweep, punch.parameters))
    expected = [*soaks(punch), *(bits_of(state) for state in sweep)]
    assert read_and_soak(pickled) == expected
    with get_context(start).Pool(1) as pool:
        answer = pool.apply_async(read_and_soak, (pickled,))
        assert answer.get(timeout=120) == expected
