"""Parity plots: computed against published, one file per kind of quantity."""

from evaluate import library

from .figures import has_size
from .groups import scale_of

CONFIDENCE = {"high": "o", "medium": "s", "low": "^"}
COLOURS = ("#0072b2", "#d55e00", "#009e73", "#cc79a7", "#7f6000", "#56b4e9", "#000000")


def is_matrix(record):
    return record["quantity"] == "weight_percent" and record["phase"] == "matrix"


def is_carbide_composition(record):
    composition = record["quantity"] == "weight_percent"
    return composition and record["phase"] in ("carbides", "M3C", "M7C3", "M6C", "MC")


def is_amount(record):
    return record["quantity"] in ("volume_fraction", "mass_fraction")


def is_activity(record):
    return record["quantity"] in ("carbon_activity", "eutectoid_activity")


def short(record):
    return ", timed soak" if "minutes" in record else ""


def element(record):
    return record["element"] + short(record)


def phase(record):
    unit = "vol%" if record["quantity"] == "volume_fraction" else "mass%"
    return f"{record['phase']}{short(record)} [{unit}]"


def soak(record):
    return f"{record['celsius']:g} C" if record.get("celsius") else "eutectoid"


def soaked(record):
    if "minutes" in record:
        return "timed soak"
    if "celsius_range" in record:
        return "soak not stated"
    if "measured_carbide" in record:
        return "carbide counted"
    return "equation alone" if "austenite_wt" in record else "soak and equation"


def kind(name):
    return lambda record: record["quantity"] == name


# Panels of each file: title, which records, what colours tell apart, axes logarithmic.
FILES = {
    "matrix.png": [("in the matrix [wt%]", is_matrix, element, True)],
    "carbides.png": [("in carbides [wt%]", is_carbide_composition, element, True)],
    "amounts.png": [("amount [%]", is_amount, phase, False)],
    "carbon_activity.png": [("carbon activity", is_activity, soak, True)],
    "hardening.png": [
        ("martensite start [C]", kind("martensite_start"), soaked, False),
        ("retained austenite [%]", kind("retained_austenite"), soaked, False),
        ("hardness [HRC]", kind("as_quenched_hardness"), soaked, False),
    ],
}


def draw(outcomes, folder):
    """Writes every file into the folder."""
    folder.mkdir(parents=True, exist_ok=True)
    for name, panels in FILES.items():
        figure(outcomes, panels).savefig(
            folder / name,
            dpi=75,
            metadata={"Software": None, "Description": content()},
        )


def content():
    """What a picture was drawn from: stands in its file, and a test reads it."""
    return f"parameters {library.parameters().content_hash}"


def figure(outcomes, panels):
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure

    fig = Figure(figsize=(5.4 * len(panels), 5.4), layout="constrained")
    FigureCanvasAgg(fig)
    for axes, (title, wanted, colour_of, log) in zip(
        fig.subplots(1, len(panels), squeeze=False)[0], panels
    ):
        points = [o for o in outcomes if wanted(o.record) and has_size(o)]
        panel(axes, points, title, colour_of, log)
    return fig


def panel(axes, outcomes, title, colour_of, log):
    groups = sorted({colour_of(o.record) for o in outcomes})
    for outcome in outcomes:
        record = outcome.record
        x, y = scaled(outcome)
        if log and min(x, y) <= 0.0:
            continue
        colour = COLOURS[groups.index(colour_of(record)) % len(COLOURS)]
        axes.errorbar(
            x,
            y,
            xerr=error(record, x, log),
            fmt=CONFIDENCE[record["confidence"]],
            color=colour,
            ecolor=colour,
            elinewidth=0.6,
            markersize=5,
            markerfacecolor="none" if record["fitted"] else colour,
        )
    finish(axes, title, groups, log)


def scaled(outcome):
    published = outcome.record["value"]
    if isinstance(published, list):
        published = sum(published) / len(published)
    scale = scale_of(outcome.record)
    return published * scale, outcome.computed * scale


def error(record, x, log):
    given = record.get("uncertainty")
    if record["comparison"] != "within" or given is None:
        return None
    below, above = given if isinstance(given, list) else (given, given)
    below, above = below * scale_of(record), above * scale_of(record)
    if log:
        below = min(below, 0.95 * x)
    return [[below], [above]]


def finish(axes, title, groups, log):
    from matplotlib.ticker import FuncFormatter, LogLocator, NullLocator

    if log:
        for axis in (axes.xaxis, axes.yaxis):
            axis.axes.set(**{f"{axis.axis_name}scale": "log"})
            axis.set_major_locator(LogLocator(subs=(1.0, 2.0, 5.0)))
            axis.set_major_formatter(FuncFormatter(lambda value, _: f"{value:g}"))
            axis.set_minor_locator(NullLocator())
    low = min(axes.get_xlim()[0], axes.get_ylim()[0])
    high = max(axes.get_xlim()[1], axes.get_ylim()[1])
    axes.plot([low, high], [low, high], color="0.5", linewidth=0.8, zorder=0)
    axes.set_xlim(low, high)
    axes.set_ylim(low, high)
    axes.set_aspect("equal")
    axes.set_xlabel(f"published {title}")
    axes.set_ylabel(f"computed {title}")
    legend(axes, groups)


def legend(axes, groups):
    from matplotlib.lines import Line2D

    def mark(**looks):
        return Line2D([], [], linestyle="none", **looks)

    handles = {
        name: mark(marker="o", color=COLOURS[i % len(COLOURS)])
        for i, name in enumerate(groups)
    }
    for name, marker in CONFIDENCE.items():
        handles[f"confidence {name}"] = mark(marker=marker, color="0.4")
    handles["fitted to"] = mark(marker="o", color="0.4", fillstyle="none")
    axes.legend(handles.values(), handles.keys(), fontsize=7, loc="upper left")
