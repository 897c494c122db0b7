"""The comparison in benchmarks/RESULTS.md, from the results of both programs.

/usr/bin/python3 results_table.py OPTIMIZERS.json SCIPY.json SCALING.json MACHINE
    (prints the page)
"""

from __future__ import annotations

import json
import os
import statistics
import sys
from datetime import date
from pathlib import Path

BALANCED = 1e-6  # largest error of a mole fraction
RIGHT, NEARLY = 1e-3, 1.0  # [J/mol of atoms]
OURS_COLD, OURS_WARM = ("gibbsteel", "cold"), ("gibbsteel", "warm")
LINE = ("gibbsteel, line of 2000", "line")
ORDER = [
    OURS_COLD,
    ("Ipopt, its own settings", "naive"),
    ("Ipopt, low barrier", "naive"),
    ("Ipopt, low barrier", "random"),
    ("Ipopt, low barrier, best of 8", "random"),
    ("NLopt SLSQP", "naive"),
    ("SciPy SLSQP", "naive"),
    ("SciPy trust-constr, low barrier", "naive"),
    ("SciPy HiGHS, 10^4 points", "none"),
    OURS_WARM,
    ("gibbsteel, Newton only", "warm"),
    ("Ipopt, lowest barrier", "warm"),
    ("NLopt SLSQP", "warm"),
    ("SciPy SLSQP", "warm"),
    ("SciPy trust-constr, low barrier", "warm"),
    LINE,
    ("Ipopt, lowest barrier", "line"),
    ("NLopt SLSQP", "line"),
    ("gibbsteel, Newton only", "program"),
    ("Ipopt, low barrier", "program"),
    ("Ipopt, lowest barrier", "program"),
    ("NLopt SLSQP", "program"),
]


def balanced(run: dict) -> bool:
    """Whether the answer holds the elements that were put in."""
    balance = run["balance"]
    return balance is not None and run["gap"] is not None and balance < BALANCED


def grouped(runs: list[dict]) -> dict[tuple[str, str], list[dict]]:
    """Runs by solver and start; `above` is the energy above the best answer known."""
    lowest: dict[int, float] = {}
    for run in filter(balanced, runs):
        lowest[run["task"]] = min(run["gap"], lowest.get(run["task"], run["gap"]))
    groups: dict[tuple[str, str], list[dict]] = {}
    for run in runs:
        run["above"] = run["gap"] - lowest[run["task"]] if balanced(run) else None
        groups.setdefault((run["solver"], run["start"]), []).append(run)
    return groups


def milliseconds(seconds: float) -> str:
    """Three digits."""
    return f"{1e3 * seconds:.3g}" if seconds < 1.0 else f"{1e3 * seconds:.0f}"


def energy(value: float) -> str:
    """Joules, or a bound where nothing is left of them."""
    return "< 1e-6" if value < 1e-6 else f"{value:.2g}" if value < 1 else f"{value:.0f}"


def factor(seconds: float, ours: float | None) -> str:
    """How many times our time."""
    if ours is None:
        return "-"
    ratio = seconds / ours
    return f"{ratio:.2g}" if ratio < 100 else f"{ratio:.0f}"


def mean_seconds(group: list[dict] | None) -> float | None:
    """Mean over the tasks."""
    return statistics.mean(run["seconds"] for run in group) if group else None


def row(key: tuple[str, str], group: list[dict], ours: list[float | None]) -> str:
    """One row of the table."""
    solver, start = key
    mean = mean_seconds(group)
    median = statistics.median(run["seconds"] for run in group)
    gaps = sorted(run["above"] for run in group if run["above"] is not None)
    within = [sum(gap <= limit for gap in gaps) for limit in (RIGHT, NEARLY)]
    middle = energy(statistics.median(gaps)) if gaps else "-"
    cells = [solver, start, milliseconds(median), milliseconds(mean)]
    cells += [f"{count}/{len(group)}" for count in within]
    cells += [f"{len(group) - len(gaps)}", middle, energy(gaps[-1]) if gaps else "-"]
    cells += [factor(mean, time) for time in ours]
    return "| " + " | ".join(cells) + " |"


def comparison(groups: dict[tuple[str, str], list[dict]]) -> list[str]:
    """The table of all solvers."""
    ours = [mean_seconds(groups.get(key)) for key in (OURS_COLD, OURS_WARM, LINE)]
    lines = [
        "| solver | start | median, ms | mean, ms | within 1e-3 J/mol | within 1 J/mol"
        " | no balance | median gap, J/mol | worst gap, J/mol | / our cold | / our warm"
        " | / our line |",
        "| --- | --- " + "| ---: " * 10 + "|",
    ]
    for key in ORDER:
        if key in groups:
            lines.append(row(key, groups[key], ours))
    return lines


def scaling(entries: list[dict]) -> list[str]:
    """Cost against the size of the task."""
    lines = [
        "| what grows | elements | phases | cold, ms | evaluations in it | Newton only,"
        " ms | Ipopt naive, ms | right | Ipopt warm, ms | SLSQP warm, ms |",
        "| --- " + "| ---: " * 9 + "|",
    ]
    for entry in entries:
        wrong = entry["ipopt_naive_gap"] is None or entry["ipopt_naive_gap"] > RIGHT
        cells = [entry["grows"], str(entry["elements"]), str(entry["phases"])]
        cells += [milliseconds(entry["cold"]), str(entry["evaluations"])]
        cells += [milliseconds(entry["newton"]), milliseconds(entry["ipopt_naive"])]
        cells += ["no" if wrong else "yes"]
        cells += [milliseconds(entry["ipopt_warm"]), milliseconds(entry["slsqp_warm"])]
        lines.append("| " + " | ".join(cells) + " |")
    return lines


def page(optimizers: dict, scipy: dict, sizes: list[dict], machine: str) -> str:
    """The whole page."""
    template = Path(__file__).with_name("results_page.md").read_text(encoding="utf-8")
    proven = [task["proven_gap"] for task in optimizers["tasks"]]
    known = [gap for gap in proven if gap is not None]
    repetitions = [run["repetitions"] for run in optimizers["runs"] + scipy["runs"]]
    return template.format(
        date=date.today().isoformat(),
        machine=machine,
        cores=os.cpu_count(),
        ipopt=optimizers["ipopt"],
        nlopt=optimizers["nlopt"],
        scipy=scipy["scipy"],
        numpy=scipy["numpy"],
        tasks=len(proven),
        proven=len(known),
        gap=f"{max(known):.2g}" if known else "-",
        least=min(repetitions),
        comparison="\n".join(comparison(grouped(optimizers["runs"] + scipy["runs"]))),
        scaling="\n".join(scaling(sizes)),
    )


def main(paths: list[str], machine: str) -> None:
    """Print the page."""
    loaded = [json.loads(Path(path).read_text(encoding="utf-8")) for path in paths]
    print(page(*loaded, machine), end="")


if __name__ == "__main__":
    main(sys.argv[1:4], sys.argv[4])
