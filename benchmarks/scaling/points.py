"""What points.cpp measured."""

from __future__ import annotations

import json
import sys
from dataclasses import dataclass
from pathlib import Path

WORKS = {
    "single_soak": "single soak",
    "temperature_line": "sweep, 900 to 1200 C",
    "carbon_line": "line, 0.6 to 1.1 % C",
    "screened_grid": "screen, grid of C and Cr",
    "screened_at_random": "screen, random heats",
}


@dataclass(frozen=True)
class Cost:
    """Of one run: how many soaks, and the time of each."""

    soaks: int
    seconds_per_soak: float
    spread: float


def read_costs(path: Path) -> dict[str, list[Cost]]:
    """Costs by work, in the order of WORKS; ends the program when one is missing."""
    medians: dict[str, tuple[int, float]] = {}
    spreads: dict[str, float] = {}
    for run in json.loads(path.read_text(encoding="utf-8"))["benchmarks"]:
        name = run["run_name"]
        if run.get("error_occurred"):
            sys.exit(f"points: {name}: {run['error_message']}")
        if run["aggregate_name"] == "median":
            scale = {"ns": 1e-9, "us": 1e-6, "ms": 1e-3, "s": 1.0}[run["time_unit"]]
            soaks = round(run["soaks"])
            medians[name] = soaks, scale * run["cpu_time"] / soaks
        elif run["aggregate_name"] == "cv":
            spreads[name] = run["cpu_time"]
    costs: dict[str, list[Cost]] = {work: [] for work in WORKS}
    for name, (soaks, seconds) in medians.items():
        costs[name.split("/", 1)[0]].append(Cost(soaks, seconds, spreads[name]))
    if missing := [work for work, found in costs.items() if not found]:
        sys.exit(f"points: nothing measured of {', '.join(missing)}")
    return costs
