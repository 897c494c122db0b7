"""Work on several threads against the same work on one.

PYTHONPATH=build/comparison/python /usr/bin/python3 threads.py OUT.json
    [--rounds N] [--rows N] [--soaks N] [--hashed N]

Screens on threads of the library; sweeps and hashing on Python threads, one each; and,
with nothing shared at all, screens in processes of one thread each. Hashing and the
processes say what the machine gives at that time. Every round measures one thread and
then more, and the ratios are those within a round: the median is kept.
"""

from __future__ import annotations

import argparse
import hashlib
import json
import multiprocessing
import os
import statistics
import sys
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import gibbsteel as gs
from heats import heats

OTHERS = {"Mo": 5.0, "W": 6.2, "V": 1.9}
Rate = Callable[[int], float]  # amount of work per second on so many threads
_barrier: Any = None  # of a process that screens


def screen(rows: int, threads: int) -> None:
    """Screens a high-speed steel; ends the program when a row is not usable."""
    compositions, elements = heats(rows, OTHERS)
    table = gs.screen(compositions, elements, celsius=1100, threads=threads)
    if not table.usable.all():
        sys.exit(f"threads: {table}")


def screening(rows: int) -> Rate:
    """Rows per second of one screen."""

    def rate(threads: int) -> float:
        start = time.perf_counter()
        screen(rows, threads)
        return rows / (time.perf_counter() - start)

    return rate


def at_once(amount: float, work: Callable[[], object]) -> Rate:
    """Rate of as many Python threads, each doing all of the work."""

    def rate(threads: int) -> float:
        with ThreadPoolExecutor(threads) as pool:
            start = time.perf_counter()
            list(pool.map(lambda _: work(), range(threads)))
            return threads * amount / (time.perf_counter() - start)

    return rate


def sweeping(soaks: int) -> Rate:
    """Soaks per second, all threads with the same steel."""
    steel = gs.Steel(C=0.9, Cr=4.1, **OTHERS)
    celsius = [900.0 + 300.0 * i / (soaks - 1) for i in range(soaks)]
    if steel.sweep(celsius=celsius).failures:
        sys.exit("threads: a soak is not usable")
    return at_once(soaks, lambda: steel.sweep(celsius=celsius))


def hashing(size: int) -> Rate:
    """Bytes per second: hashing is known to hold no lock."""
    data = bytes(size)
    return at_once(size, lambda: hashlib.sha256(data).digest())


def _meet(barrier: Any) -> None:
    """First thing in a new process."""
    global _barrier
    _barrier = barrier
    screen(64, 1)  # what is done once only shall not count


def _screen_together(rows: int) -> tuple[float, float]:
    """When one process began and ended; each waits for the others."""
    _barrier.wait()
    start = time.perf_counter()
    screen(rows, 1)
    return start, time.perf_counter()


def in_processes(rows: int) -> Rate:
    """Rows per second of as many processes, each with a screen of its own."""

    def rate(processes: int) -> float:
        context = multiprocessing.get_context("spawn")
        barrier = context.Barrier(processes)
        with context.Pool(processes, _meet, (barrier,)) as pool:
            times = pool.map(_screen_together, [rows] * processes, chunksize=1)
        starts, ends = zip(*times, strict=True)  # one clock for all processes
        return processes * rows / (max(ends) - min(starts))

    return rate


def measure(rate: Rate, counts: list[int], rounds: int) -> list[dict[str, float]]:
    """Rate and ratio to one thread for every number of threads."""
    rate(1)  # warm up
    measured = [[rate(count) for count in counts] for _ in range(rounds)]
    return [
        {
            "threads": count,
            "rate": statistics.median(row[i] for row in measured),
            "ratio": statistics.median(row[i] / row[0] for row in measured),
        }
        for i, count in enumerate(counts)
    ]


def thread_counts(cores: int) -> list[int]:
    """1, 2, 4, ... and all cores; two threads in any case."""
    doubled = (1 << k for k in range(1, 16))
    return sorted({1, max(cores, 2), *(n for n in doubled if n < cores)})


def arguments() -> argparse.Namespace:
    """Those of the command line."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n", 1)[0])
    parser.add_argument("out", type=Path)
    parser.add_argument("--rounds", type=int, default=7)
    parser.add_argument("--rows", type=int, default=16384)
    parser.add_argument("--soaks", type=int, default=5000)
    parser.add_argument("--hashed", type=int, default=500_000_000)
    return parser.parse_args()


def main() -> None:
    """Measure everything, print the ratios, write all numbers."""
    given = arguments()
    cores = len(os.sched_getaffinity(0))
    counts = thread_counts(cores)
    works = {
        "screen": screening(given.rows),
        "sweeps": sweeping(given.soaks),
        "screens in processes": in_processes(given.rows),
        "hashing": hashing(given.hashed),
    }
    results = {}
    for name, rate in works.items():
        results[name] = measure(rate, counts, given.rounds)
        ratios = ", ".join(f"{r['threads']}: {r['ratio']:.2f}" for r in results[name])
        print(f"{name}: threads and ratio to one {ratios}", flush=True)
    out = {"cores": cores, "rounds": given.rounds, "rows": given.rows}
    out |= {"soaks": given.soaks, "works": results}
    given.out.write_text(json.dumps(out, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
