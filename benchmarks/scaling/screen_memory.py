"""Largest memory of a process that screens so many rows into a folder, as JSON.

PYTHONPATH=build/comparison/python /usr/bin/python3 screen_memory.py ROWS FOLDER
    [THREADS]

The rows are cheap, so that many can be tried: steels of Fe, C and Cr at 20 temperatures
2 K apart. What a row leaves behind does not depend on that: numbers for all kinds of
carbide and all elements of the parameter file. FOLDER must be empty, or not there.
"""

from __future__ import annotations

import json
import re
import sys
import time
from pathlib import Path

import gibbsteel as gs
from heats import heats

CELSIUS = [1000.0 + 2.0 * i for i in range(20)]


def peak_megabytes() -> float:
    """Largest resident memory of this process; getrusage() counts its parent too."""
    status = Path("/proc/self/status").read_text(encoding="ascii")
    found = re.search(r"^VmHWM:\s*(\d+) kB", status, re.MULTILINE)
    if found is None:
        sys.exit("screen_memory: the system does not tell the memory of a process")
    return 1024e-6 * int(found[1])


def main(rows: int, path: Path, threads: int) -> None:
    """Screen, read every chunk back, print."""
    if rows < 1 or rows % len(CELSIUS):
        sys.exit(f"screen_memory: {rows} rows, not a multiple of {len(CELSIUS)}")
    compositions, elements = heats(rows // len(CELSIUS), {})
    before = peak_megabytes()
    start = time.perf_counter()
    folder = gs.screen_to_folder(
        path, compositions, elements, celsius=CELSIUS, threads=threads
    )
    seconds = time.perf_counter() - start
    usable = sum(int(chunk.usable.sum()) for chunk in folder.chunks())
    if usable != rows:
        sys.exit(f"screen_memory: {usable} of {rows} rows are usable")
    result = {
        "rows": rows,
        "before_MB": before,
        "peak_MB": peak_megabytes(),
        "compositions_MB": 1e-6 * compositions.nbytes,
        "results_MB": 1e-6 * sum(file.stat().st_size for file in path.iterdir()),
        "seconds": seconds,
    }
    print(json.dumps(result))


if __name__ == "__main__":
    threads = int(sys.argv[3]) if len(sys.argv) > 3 else 0  # 0: all cores
    main(int(sys.argv[1]), Path(sys.argv[2]), threads)
