"""The figures of the page: cost against points, threads, memory against rows.

/usr/bin/python3 figures.py POINTS.json THREADS.json MEMORY.json FOLDER
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import matplotlib
from points import WORKS, Cost, read_costs

matplotlib.use("Agg")
from matplotlib import pyplot  # noqa: E402
from matplotlib.ticker import LogLocator, MaxNLocator, StrMethodFormatter  # noqa: E402

MARKERS = "osD^v"


@contextmanager
def drawn(path: Path, title: str, x: str, y: str) -> Iterator[Any]:
    """Axes to draw on, saved at the end."""
    figure, axes = pyplot.subplots(figsize=(6.4, 4.4), layout="constrained")
    yield axes
    axes.set_title(title, fontsize=10)
    axes.set_xlabel(x)
    axes.set_ylabel(y)
    axes.grid(True, which="major", alpha=0.3)
    axes.legend(fontsize=8, loc="upper left", bbox_to_anchor=(0.0, -0.14), ncols=3)
    figure.savefig(path, dpi=130, bbox_inches="tight")  # the legend is below
    pyplot.close(figure)
    print(path)


def logarithmic(axes: Any) -> None:
    """Both axes, with numbers that are read at once."""
    axes.set_xscale("log")
    axes.set_yscale("log")
    for axis, steps in ((axes.xaxis, (1.0,)), (axes.yaxis, (1.0, 2.0, 5.0))):
        axis.set_major_locator(LogLocator(subs=steps))
        axis.set_major_formatter(StrMethodFormatter("{x:,.10g}"))
        axis.set_minor_formatter("")


def draw_points(costs: dict[str, list[Cost]], path: Path) -> None:
    """Time of a soak against the number of soaks asked for at once."""
    title = "Nine-element high-speed steel, one thread"
    y = "time per soak, ms"
    with drawn(path, title, "soaks asked for at once", y) as axes:
        for marker, (work, found) in zip(MARKERS, costs.items(), strict=True):
            milliseconds = [1e3 * cost.seconds_per_soak for cost in found]
            if work == "single_soak":
                axes.axhline(milliseconds[0], color="0.4", ls="--", label=WORKS[work])
                continue
            soaks = [cost.soaks for cost in found]
            axes.plot(soaks, milliseconds, marker + "-", ms=5, label=WORKS[work])
        logarithmic(axes)


def draw_threads(measured: dict[str, Any], path: Path) -> None:
    """Rate against the rate of one thread."""
    title = f"Work on several threads; the machine has {measured['cores']} cores"
    y = "rate over that of one thread"
    with drawn(path, title, "threads (or processes)", y) as axes:
        for marker, (work, found) in zip(MARKERS, measured["works"].items()):
            threads = [entry["threads"] for entry in found]
            ratios = [entry["ratio"] for entry in found]
            axes.plot(threads, ratios, marker + "-", ms=5, label=work)
        axes.plot(threads, threads, color="0.4", ls="--", label="ideal")
        axes.xaxis.set_major_locator(MaxNLocator(integer=True))


def draw_memory(measured: list[dict[str, float]], path: Path) -> None:
    """Largest memory, and the results that it would hold if it kept them."""
    title = "Screens written to a folder chunk by chunk"
    with drawn(path, title, "rows", "MB") as axes:
        rows = [entry["rows"] for entry in measured]
        for key, label in (
            ("peak_MB", "largest memory of the process"),
            ("results_MB", "results on disk"),
            ("before_MB", "memory before the screen"),
        ):
            style = "--" if key == "before_MB" else "o-"
            numbers = [entry[key] for entry in measured]
            axes.plot(rows, numbers, style, ms=5, label=label)
        logarithmic(axes)


def main(points: Path, threads: Path, memory: Path, folder: Path) -> None:
    """Draw all."""
    draw_points(read_costs(points), folder / "scaling_points.png")
    measured = [json.loads(p.read_text(encoding="utf-8")) for p in (threads, memory)]
    draw_threads(measured[0], folder / "scaling_threads.png")
    draw_memory(measured[1], folder / "scaling_memory.png")


if __name__ == "__main__":
    main(*(Path(argument) for argument in sys.argv[1:5]))
