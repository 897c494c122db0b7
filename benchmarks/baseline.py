"""Medians of benchmark results, without what names the machine or its folders.

/usr/bin/python3 baseline.py MACHINE COMPILER RESULT.json...   (prints the baseline)
"""

import json
import sys
from pathlib import Path

KEPT_CONTEXT = ("date", "num_cpus", "mhz_per_cpu", "library_build_type")
# Everything google-benchmark writes for a run besides the counters of the program.
BOOKKEEPING = {
    "name", "run_name", "run_type", "family_index", "per_family_instance_index",
    "repetitions", "threads", "aggregate_name", "aggregate_unit", "iterations",
    "real_time", "cpu_time", "time_unit",
}  # fmt: skip


def summary(runs: list[dict]) -> dict:
    """One entry per benchmark: median and spread of the repetitions, counters."""
    found: dict[str, dict] = {}
    for run in runs:
        if run.get("error_occurred"):
            raise SystemExit(f"{run['name']}: {run['error_message']}")
        entry = found.setdefault(run["run_name"], {})
        if run["aggregate_name"] == "median":
            entry["median"] = round(run["cpu_time"], 4)
            entry["unit"] = run["time_unit"]
            entry["repetitions"] = run["repetitions"]
            for name in run.keys() - BOOKKEEPING:
                entry[name] = round(run[name], 2)
        elif run["aggregate_name"] == "cv":
            entry["relative_spread"] = round(run["cpu_time"], 4)
    return found


def main(machine: str, compiler: str, results: list[Path]) -> None:
    """Print the baseline made of all results."""
    baseline: dict = {"machine": machine, "compiler": compiler}
    baseline["programs"] = {}
    for path in results:
        result = json.loads(path.read_text(encoding="utf-8"))
        baseline |= {key: result["context"][key] for key in KEPT_CONTEXT}
        baseline["programs"][path.stem] = summary(result["benchmarks"])
    print(json.dumps(baseline, indent=2))


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2], [Path(name) for name in sys.argv[3:]])
