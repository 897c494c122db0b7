"""The page benchmarks/SCALING.md, from what the programs of this folder measured.

/usr/bin/python3 page.py POINTS.json THREADS.json MEMORY.json MACHINE
    (prints the page)
"""

from __future__ import annotations

import json
import sys
from datetime import date
from pathlib import Path
from typing import Any

from points import WORKS, Cost, read_costs

TARGET = 1.9  # two threads over one, for screening


def table(head: list[str], rows: list[list[str]], texts: int) -> str:
    """Markdown; so many columns are text, the others numbers."""
    rule = ["---"] * texts + ["---:"] * (len(head) - texts)
    return "\n".join("| " + " | ".join(cells) + " |" for cells in [head, rule, *rows])


def number(value: float) -> str:
    """Three digits, without an exponent."""
    return f"{value:.0f}" if value >= 99.95 else f"{value:.3g}"


def points_table(costs: dict[str, list[Cost]]) -> str:
    """Cost against points."""
    single = costs["single_soak"][0].seconds_per_soak
    rows = [
        [
            WORKS[work],
            str(cost.soaks),
            number(1e3 * cost.seconds_per_soak),
            f"{1.0 / cost.seconds_per_soak:.0f}",
            number(single / cost.seconds_per_soak),
            f"{cost.spread:.2f}",
        ]
        for work, found in costs.items()
        for cost in found
    ]
    head = ["work", "soaks", "per soak, ms", "soaks per second", "single soak / this"]
    return table([*head, "spread"], rows, 1)


def threads_table(measured: dict[str, Any]) -> str:
    """Rates and ratios; the rate of hashing is no matter."""
    rows = [
        [
            work,
            str(entry["threads"]),
            "-" if work == "hashing" else f"{entry['rate']:.0f}",
            f"{entry['ratio']:.2f}",
        ]
        for work, found in measured["works"].items()
        for entry in found
    ]
    return table(["work", "threads", "soaks per second", "ratio to one"], rows, 1)


def screening_with_two(measured: dict[str, Any]) -> str:
    """What the target is about."""
    for entry in measured["works"]["screen"]:
        if entry["threads"] == 2:
            met = "met" if entry["ratio"] >= TARGET else "MISSED"
            return f"{entry['ratio']:.2f}, target {TARGET}: {met}"
    return f"not measured, target {TARGET}"


def memory_table(measured: list[dict[str, float]]) -> str:
    """Largest memory against rows."""
    first = measured[0]["peak_MB"]
    rows = [
        [
            f"{entry['rows']}",
            f"{entry['before_MB']:.1f}",
            f"{entry['peak_MB']:.1f}",
            f"{entry['peak_MB'] / first:.3f}",
            f"{entry['compositions_MB']:.2f}",
            f"{entry['results_MB']:.1f}",
            f"{entry['rows'] / entry['seconds']:.0f}",
        ]
        for entry in measured
    ]
    head = ["rows", "before, MB", "peak, MB", "ratio to the first", "compositions, MB"]
    return table([*head, "results on disk, MB", "rows per second"], rows, 0)


def page(points: Path, threads: Path, memory: Path, machine: str) -> str:
    """The whole page."""
    template = Path(__file__).with_name("page.md").read_text(encoding="utf-8")
    on_threads, of_memory = (
        json.loads(path.read_text(encoding="utf-8")) for path in (threads, memory)
    )
    return template.format(
        date=date.today().isoformat(),
        machine=machine,
        cores=on_threads["cores"],
        points=points_table(read_costs(points)),
        rounds=on_threads["rounds"],
        rows=on_threads["rows"],
        soaks=on_threads["soaks"],
        two=screening_with_two(on_threads),
        threads=threads_table(on_threads),
        memory=memory_table(of_memory),
    )


if __name__ == "__main__":
    print(page(*(Path(path) for path in sys.argv[1:4]), sys.argv[4]), end="")
