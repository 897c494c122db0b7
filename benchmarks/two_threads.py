"""Two Python threads that soak at once, against one: the interpreter lock is released.

PYTHONPATH=build/release/python /usr/bin/python3 benchmarks/two_threads.py

Prints the rate of two threads over the rate of one, the median of several rounds. The
target is 1.7 on a quiet machine with two cores; what else runs there takes its share of
both, so no test asserts it.
"""

import os
import statistics
import sys
import time
from concurrent.futures import ThreadPoolExecutor

import gibbsteel as gs

TARGET = 1.7
ROUNDS = 7
TEMPERATURES = [1000.0 + 5.0 * i for i in range(40)]


def rate(threads: int, steel: gs.Steel) -> float:
    """Soaks per second of so many threads, each with a sweep of its own."""
    with ThreadPoolExecutor(threads) as pool:
        start = time.perf_counter()
        done = list(
            pool.map(lambda _: steel.sweep(celsius=TEMPERATURES), range(threads))
        )
        seconds = time.perf_counter() - start
    if any(sweep.failures for sweep in done):
        sys.exit("two_threads: a soak is not usable")
    return threads * len(TEMPERATURES) / seconds


def main() -> None:
    """Print the rates and their ratio."""
    steel = gs.Steel(C=0.9, Cr=4.1, Mo=5.0, W=6.2, V=1.9)
    rate(1, steel)  # warm up
    pairs = [(rate(1, steel), rate(2, steel)) for _ in range(ROUNDS)]
    one, two = (statistics.median(column) for column in zip(*pairs, strict=True))
    ratio = statistics.median(both / single for single, both in pairs)
    print(f"cores: {os.cpu_count()}, rounds: {ROUNDS}")
    print(f"one thread: {one:.0f} soaks/s, two threads: {two:.0f} soaks/s")
    print(f"ratio: {ratio:.2f} (target {TARGET})")


if __name__ == "__main__":
    main()
