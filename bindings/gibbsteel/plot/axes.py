"""What every figure shares: axes, headings, the temperature axis, the legend.

Nothing here calls ``show()`` or touches matplotlib's global settings; matplotlib is
imported on use.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from .._core import Problem, Quantity
from ..errors import InputError
from .cautions import Caution

if TYPE_CHECKING:
    from matplotlib.axes import Axes

SMALL = 7.5  # of notes [pt]
_NOTES = "notes"  # of the text under a title
_ANOTHER_AX = (
    "give one without, or several steels to "
    "gs.plot.curves([sweep, other], gs.quantities.matrix(\"C\"))"
)
_LEGEND_ROW = 13.0  # [pt]
_CAUTION_ROW = 10.5  # [pt]
_LETTER = 3.9  # mean width of a letter of a note [pt]


def pyplot() -> Any:
    """matplotlib.pyplot, or an ImportError that says which package to install."""
    try:
        import matplotlib.pyplot
    except ImportError as error:
        raise ImportError(
            "gs.plot needs the package matplotlib (Debian: python3-matplotlib)"
        ) from error
    return matplotlib.pyplot


def cannot_draw(place: str, what: str, remedy: str) -> InputError:
    """gibbsteel.input.297"""
    return InputError([Problem("gibbsteel.input.297", place, what, remedy)])


def axis_label(quantity: Quantity) -> str:
    """Name and unit as figures write them: "martensite start [°C]"."""
    unit = {"C": "°C", "um": "µm"}.get(quantity.unit, quantity.unit)
    return f"{quantity.name} [{unit}]" if unit else quantity.name


def check_quantity(quantity: object) -> None:
    """InputError for what is no Quantity."""
    if not isinstance(quantity, Quantity):
        what = f"is {type(quantity).__name__}, not Quantity"
        remedy = 'give for instance gs.quantities.matrix("C")'
        raise cannot_draw("quantity", what, remedy)


def no_such_option(place: str, value: object, known: Sequence[str]) -> InputError:
    """gibbsteel.input.298"""
    what, remedy = f"is {value!r}", "choose from: " + ", ".join(known)
    return InputError([Problem("gibbsteel.input.298", place, what, remedy)])


def own_or_given(ax: Axes | None, size: tuple[float, float] = (7.0, 4.8)) -> Axes:
    """The axes to draw on; new ones in a figure of their own when none are given."""
    plt = pyplot()
    if ax is None:
        return plt.subplots(figsize=size, layout="constrained")[1]
    if not hasattr(ax, "get_xaxis_transform"):
        what = f"is {type(ax).__name__}, not Axes"
        raise cannot_draw("ax", what, "give one Axes, for instance of plt.subplots()")
    if any(text.get_gid() == _NOTES for text in ax.texts):
        raise cannot_draw("ax", "holds such a figure already", _ANOTHER_AX)
    return ax


def size_in_points(ax: Axes) -> tuple[float, float]:
    """Width and height of the axes as they will be drawn [pt]."""
    if ax.figure.get_layout_engine() is not None:
        ax.figure.draw_without_rendering()  # only then is a layout worked out
    scale = 72.0 / ax.figure.dpi
    return ax.bbox.width * scale, ax.bbox.height * scale


def heading(ax: Axes, title: str, notes: Sequence[str], raised: float = 0.0) -> Any:
    """A title, and under it, in small grey print, what the numbers stand on: that text.

    `raised` [pt] makes room for a second scale on top of the axes.
    """
    width = size_in_points(ax)[0]
    text = ax.annotate(
        "",
        (0.0, 1.0),
        xycoords="axes fraction",
        xytext=(0.0, 4.0 + raised),
        textcoords="offset points",
        va="bottom",
        fontsize=SMALL,
        color="0.35",
        linespacing=1.15,
        gid=_NOTES,
    )
    lines = _wrap(text, notes, width)
    pad = 5.0 + raised + lines * SMALL * 1.22
    ax.set_title(title, loc="left", y=1.0, pad=pad, fontsize=11.0)
    return text


def _wrap(text: Any, notes: Sequence[str], width: float) -> int:
    """Writes the notes in lines of at most `width` [pt]: their number."""
    import textwrap

    letters = max(24, int(width / _LETTER))
    while True:
        lines = [line for note in notes for line in textwrap.wrap(note, letters)]
        text.set_text("\n".join(lines))
        wide = text.get_window_extent().width * 72.0 / text.figure.dpi
        if wide <= width or letters <= 24:
            return len(lines)
        letters = max(24, min(letters - 1, int(letters * width / wide)))


def to_fahrenheit(celsius: Any) -> Any:
    """Of a number or an array."""
    return 1.8 * celsius + 32.0


def to_celsius(fahrenheit: Any) -> Any:
    """Of a number or an array."""
    return (fahrenheit - 32.0) / 1.8


def fahrenheit_on_the_right(ax: Axes, label: str) -> None:
    """A second scale, for axes whose temperature points upwards."""
    second = ax.secondary_yaxis("right", functions=(to_fahrenheit, to_celsius))
    second.set_ylabel(f"{label} [°F]")


def degrees(celsius: float, fahrenheit: bool) -> str:
    """"1120 °C" or "1120 °C (2048 °F)"."""
    also = f" ({to_fahrenheit(celsius):.0f} °F)" if fahrenheit else ""
    return f"{celsius:.0f} °C{also}"


def temperature_axis(ax: Axes, celsius: Sequence[float], fahrenheit: bool) -> float:
    """Limits and label in C; a second scale in F when asked for: its height [pt]."""
    low, high = min(celsius), max(celsius)
    margin = 0.01 * (high - low) if high > low else 10.0
    ax.set_xlim(low - margin, high + margin)
    ax.set_xlabel("soak temperature [°C]")
    if not fahrenheit:
        return 0.0
    both = (to_fahrenheit, to_celsius)
    ax.secondary_xaxis("top", functions=both).set_xlabel("soak temperature [°F]")
    return 33.0


def markers(points: int, line: int) -> tuple[int, int]:
    """About eight markers on a line, shifted from one line to the next."""
    step = max(1, points // 8)
    return line % step, step


def _columns(handles: Sequence[Any], width: float) -> int:
    widest = max(len(str(handle.get_label())) for handle in handles)
    return max(1, min(len(handles), int(width / (44.0 + 4.6 * widest))))


def room_on_top(
    axes: Sequence[tuple[Axes, float]],
    handles: Sequence[Any],
    cautions: Sequence[Caution],
    gaps: Sequence[tuple[float, float]] = (),
    floor: float = 0.0,
) -> float:
    """A legend and the cautions above all data, which reach up to the given numbers.

    `gaps` are temperature ranges without a usable result: hatched, below all that. The
    scales begin at `floor`.

    The first of the axes carries them; the others (of a second scale) get the same
    room, so that nothing lies under the legend. Returns the share of the height that is
    left for the data.
    """
    ax = axes[0][0]
    width, height = size_in_points(ax)
    used = 3.0
    if handles:
        columns = _columns(handles, width)
        used += math.ceil(len(handles) / columns) * _LEGEND_ROW + 4.0
        ax.legend(
            handles=handles,
            loc="upper left",
            ncol=columns,
            frameon=False,
            fontsize=8.5,
            handlelength=2.8,
            borderaxespad=0.1,
            columnspacing=1.4,
            labelspacing=0.35,
        )
    for caution in cautions:
        _draw_caution(ax, caution, 1.0 - (used + 0.5 * _CAUTION_ROW) / height, width)
        used += _CAUTION_ROW
    share = min(0.7, (used + 4.0) / height)
    mark_not_usable(ax, gaps, 1.0 - share)
    for one, highest in axes:
        rise = highest - floor if highest > floor else 1.0
        one.set_ylim(floor, floor + rise / (1.0 - share))
    return 1.0 - share


def _draw_caution(ax: Axes, caution: Caution, y: float, width: float) -> None:
    """Bars over the temperatures of a caution, and its words where there is room.

    `y` is a fraction of the axes, `width` that of the axes [pt].
    """
    across = ax.get_xaxis_transform()  # x: data, y: fraction of the axes
    for low, high in caution.ranges:
        ax.plot(
            [low, high],
            [y, y],
            transform=across,
            color="0.55",
            linewidth=3.0,
            solid_capstyle="butt",
            gid="caution",
        )
    place, align, shift = _place_of_words(ax.get_xlim(), caution, width)
    ax.annotate(
        caution.label,
        (place, y),
        xycoords=across,
        xytext=(shift, 0.0),
        textcoords="offset points",
        ha=align,
        va="center",
        fontsize=SMALL,
        color="0.2",
        gid="caution",
        bbox={"facecolor": "white", "edgecolor": "none", "pad": 1.0},
    )


def _place_of_words(
    limits: tuple[float, float], caution: Caution, width: float
) -> tuple[float, str, float]:
    """Beside the last bar, or on it where there is no room: x, alignment, gap [pt]."""
    left, right = limits
    ranges = caution.ranges
    low, high = ranges[-1]
    letters = _LETTER * len(caution.label) + 8.0  # [pt]
    needed = letters / width * (right - left)
    if low - (ranges[-2][1] if len(ranges) > 1 else left) >= needed:
        return low, "right", -4.0
    if right - high >= needed:
        return high, "left", 4.0
    return 0.5 * (left + right), "center", 0.0


def mark_not_usable(
    ax: Axes, gaps: Sequence[tuple[float, float]], top: float = 1.0
) -> None:
    """Grey hatching over temperature ranges, up to a fraction of the axes."""
    for low, high in gaps:
        ax.axvspan(
            low,
            high,
            ymax=top,
            facecolor="none",
            edgecolor="0.6",
            hatch="xxx",
            linewidth=0.0,
            zorder=0.5,
            gid="not usable",
        )
