"""Two Python threads that soak at once, against one: the interpreter lock is released.

PYTHONPATH=build/release/python /usr/bin/python3 benchmarks/two_threads.py

Prints the rate of two threads over the rate of one, the median of several rounds, and
the same ratio for hashing, which is known to hold no lock: what the machine gives at
that time. The target is 1.7 on a quiet machine with two cores; no test asserts it,
because what else runs there takes its share.
"""

import hashlib
import os
import statistics
import sys
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor

import gibbsteel as gs

TARGET = 1.7
ROUNDS = 7
TEMPERATURES = [1000.0 + 5.0 * i for i in range(40)]


def rate(threads: int, work: Callable[[], object]) -> float:
    """Times per second that the work is done by so many threads at once."""
    with ThreadPoolExecutor(threads) as pool:
        start = time.perf_counter()
        list(pool.map(lambda _: work(), range(threads)))
        return threads / (time.perf_counter() - start)


def rates(work: Callable[[], object]) -> tuple[float, float, float]:
    """Rates of one thread and of two, and the ratio: medians of the rounds."""
    work()  # warm up
    pairs = [(rate(1, work), rate(2, work)) for _ in range(ROUNDS)]
    one, two = (statistics.median(column) for column in zip(*pairs, strict=True))
    return one, two, statistics.median(both / single for single, both in pairs)


def main() -> None:
    """Print the rates and their ratio."""
    steel = gs.Steel(C=0.9, Cr=4.1, Mo=5.0, W=6.2, V=1.9)
    if steel.sweep(celsius=TEMPERATURES).failures:
        sys.exit("two_threads: a soak is not usable")
    data = bytes(50_000_000)
    one, two, ratio = rates(lambda: steel.sweep(celsius=TEMPERATURES))
    soaks = len(TEMPERATURES)
    *_, machine = rates(lambda: hashlib.sha256(data).digest())
    print(f"cores: {os.cpu_count()}, rounds: {ROUNDS}")
    print(f"one thread: {soaks * one:.0f} soaks/s, two: {soaks * two:.0f} soaks/s")
    print(f"ratio: {ratio:.2f} (target {TARGET}), of hashing: {machine:.2f}")


if __name__ == "__main__":
    main()
