"""Two figures of scaling.json: cost against the number of elements and of phases.

/usr/bin/python3 plot_scaling.py SCALING.json FOLDER
"""

from __future__ import annotations

import json
import sys
from pathlib import Path

import matplotlib

matplotlib.use("Agg")
from matplotlib import pyplot  # noqa: E402

SOLVERS = {
    "cold": ("this library, cold, certificate included", "o-"),
    "newton": ("this library, Newton only, right phases known", "s-"),
    "ipopt_naive": ("Ipopt, low barrier, naive start", "^--"),
    "ipopt_warm": ("Ipopt, lowest barrier, right phases known", "v--"),
    "slsqp_warm": ("NLopt SLSQP, right phases known", "D--"),
}
RIGHT = 1e-3  # [J/mol of atoms]


def draw(entries: list[dict], grows: str, path: Path) -> None:
    """One figure; hollow markers stand for wrong answers."""
    some = [entry for entry in entries if entry["grows"] == grows]
    figure, axes = pyplot.subplots(figsize=(6.4, 4.4), layout="constrained")
    for name, (label, style) in SOLVERS.items():
        x = [entry[grows] for entry in some]
        y = [1e3 * entry[name] for entry in some]
        (line,) = axes.plot(x, y, style, label=label, markersize=5)
        gaps = [entry[f"{name}_gap"] for entry in some]
        wrong = [i for i, gap in enumerate(gaps) if gap is None or gap > RIGHT]
        axes.plot(
            [x[i] for i in wrong],
            [y[i] for i in wrong],
            line.get_marker(),
            color=line.get_color(),
            markerfacecolor="white",
            markersize=7,
            linestyle="none",
        )
    axes.set_yscale("log")
    axes.set_xlabel(f"number of {grows}")
    axes.set_ylabel("time of one solve, ms")
    axes.set_title("High-speed steel at 1150 C; hollow: wrong by more than 1e-3 J/mol")
    axes.title.set_fontsize(10)
    axes.grid(True, which="major", alpha=0.3)
    axes.legend(fontsize=8, loc="upper left", bbox_to_anchor=(0.0, -0.14), ncols=2)
    figure.savefig(path, dpi=130, bbox_inches="tight")  # the legend is wide


def main(results: Path, folder: Path) -> None:
    """Draw both."""
    entries = json.loads(results.read_text(encoding="utf-8"))
    for grows in ("elements", "phases"):
        path = folder / f"scaling_{grows}.png"
        draw(entries, grows, path)
        print(path)


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]))
