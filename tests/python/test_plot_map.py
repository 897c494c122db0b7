"""Maps: contours lie where the grid says, and soaks that fail are marked."""

import os

os.environ["MPLBACKEND"] = "Agg"  # no window

import gibbsteel as gs
import numpy as np
import pytest

plt = pytest.importorskip("matplotlib.pyplot", reason="Debian: python3-matplotlib")
pytestmark = pytest.mark.usefixtures("nothing_left_behind")

CARBON = gs.quantities.matrix("C")
KEYWORDS = (
    "levels, cmap, colors, norm, vmin, vmax, alpha, extend, hatches, locator, "
    "antialiased, corner_mask, algorithm, nchunk, zorder"
)


@pytest.fixture(scope="module")
def grid(punch):
    return punch.grid(C=[0.6, 0.5, 0.4], celsius=range(1020, 1221, 40))


def remade(grid, change):
    """The grid with the states that `change(i, state)` gives."""
    mark, fields = grid.__getstate__()
    parts = list(fields)
    parts[7] = [change(i, state) for i, state in enumerate(grid.states)]
    made = gs.SoakGrid.__new__(gs.SoakGrid)
    made.__setstate__((mark, tuple(parts)))
    return made


def interpolated(grid, quantity, x, y):
    """On a line of the grid: linear between two soaks."""
    z = grid.array(quantity)
    columns = [np.interp(x, grid.first.values[::-1], row[::-1]) for row in z.T]
    return np.interp(y, grid.second.values, columns)


def contour_lines(ax):
    return [
        path.vertices
        for collection in ax.collections
        if len(collection.get_facecolor()) == 0 and collection.get_gid() is None
        for path in collection.get_paths()
        if len(path.vertices)
    ]


def notes(ax):
    (found,) = [text for text in ax.texts if text.get_gid() == "notes"]
    return " ".join(found.get_text().split())


def marks(ax, name):
    found = [c for c in ax.collections if c.get_label() == name]
    return [tuple(map(float, xy)) for c in found for xy in c.get_offsets()]


def test_contours_lie_where_the_grid_says(grid):
    ax = gs.plot.map(grid, CARBON)
    lines = contour_lines(ax)
    assert len(lines) >= 4
    levels = set()
    for vertices in lines:
        # Between the lines of the grid a contour is straight, and cut for its label.
        on_grid = [
            (x, y)
            for x, y in vertices
            if np.isclose(grid.first.values, x, rtol=1e-12).any()
            or np.isclose(grid.second.values, y, rtol=1e-12).any()
        ]
        assert on_grid
        values = [interpolated(grid, CARBON, x, y) for x, y in on_grid]
        assert max(values) - min(values) < 1e-9
        levels.add(round(values[0], 6))
    labels = [t.get_text() for t in ax.texts if t.get_gid() is None]
    assert labels and {float(text) for text in labels} <= levels


def test_labels_and_notes(grid):
    ax = gs.plot.map(grid, CARBON)
    assert ax.get_xlabel() == "C in the steel [wt%]"
    assert ax.get_ylabel() == "soak temperature [°C]"
    assert ax.get_xlim() == (0.4, 0.6)
    (bar,) = [other for other in ax.figure.axes if other is not ax]
    assert bar.get_ylabel() == "C in the matrix [wt%]"
    assert ax.get_title(loc="left") == "punch heat 7: C in the matrix"
    assert notes(ax).startswith("C swept; 4.5Cr 2.75Mo 2W 1V, balance Fe [wt%] Long")
    assert f"Long-hold limit. {grid.parameters}" in notes(ax)


def test_two_elements_at_one_temperature(punch):
    grid = punch.grid(C=[0.5, 0.6], Co=[0, 2, 4], celsius=1120)
    figure, ax = plt.subplots()
    assert gs.plot.map(grid, gs.quantities.carbide_volume_percent(), ax=ax) is ax
    assert ax.get_ylabel() == "Co in the steel [wt%]"
    assert "C and Co swept" in notes(ax)
    assert "volumes at room temperature" in notes(ax)
    assert "Long-hold limit at 1120 °C." in notes(ax)


def outline(ax, letter):
    """Ends of the lines of an outline, in weight percent and C."""
    (found,) = [c for c in ax.collections if c.get_gid() == f"caution {letter}"]
    to_data = ax.transAxes + ax.transData.inverted()
    return [to_data.transform(line).round(6).tolist() for line in found.get_segments()]


def letters(ax):
    return [text.get_text() for text in ax.texts if text.get_gid() == "caution"]


def test_soaks_with_a_caution_are_outlined_half_way_and_named(grid):
    ax = gs.plot.map(grid, CARBON)
    flagged = [
        t
        for i in range(3)
        for j, t in enumerate(grid.second.values)
        if any(w.code == "gibbsteel.warning.303" for w in grid[i, j].warnings)
    ]
    assert np.round(flagged, 6).tolist() == [1220.0] * 3
    assert outline(ax, "A") == [
        [[0.4, 1200.0], [0.45, 1200.0]],
        [[0.45, 1200.0], [0.55, 1200.0]],
        [[0.55, 1200.0], [0.6, 1200.0]],
    ]
    assert letters(ax) == ["A"]
    words = "no liquid in the file: melting not predicted"
    assert f"Within the dashed outlines: A {words}." in notes(ax)


def test_every_cause_has_an_outline_of_its_own(grid, punch):
    molten, other = punch.soak(celsius=1220), punch.changed(V=2).soak(celsius=1100)
    codes = [{w.code[-3:] for w in s.warnings} for s in (molten, other)]
    assert codes == [{"303"}, {"358"}]
    states = {0: molten, 1: other, 2: other}
    marked = remade(grid, lambda i, s: states.get(i, punch.soak(celsius=1100)))
    ax = gs.plot.map(marked, CARBON)
    assert letters(ax) == ["A", "B"]
    assert len(outline(ax, "A")) == 2  # a soak in the corner
    assert len(outline(ax, "B")) == 4  # the two above it
    assert (
        "Within the dashed outlines: A no liquid in the file: melting not predicted; "
        "B no published record of a steel like it." in notes(ax)
    )


def test_a_caution_of_every_soak_is_said_once(punch):
    hot = punch.grid(C=[0.5, 0.6], celsius=[1200, 1220])
    ax = gs.plot.map(hot, CARBON)
    assert letters(ax) == []
    assert "Everywhere: no liquid in the file: melting not predicted." in notes(ax)


def test_a_caution_of_nearly_every_soak_is_said_in_words(grid, punch):
    hot, cool = punch.soak(celsius=1200), punch.soak(celsius=1100)
    nearly = remade(grid, lambda i, s: cool if i == 0 else hot)
    ax = gs.plot.map(nearly, CARBON)
    assert letters(ax) == []
    words = "no liquid in the file: melting not predicted"
    assert f"Nearly everywhere, 17 of 18 soaks: {words}." in notes(ax)


def test_a_map_of_a_hardening_estimate_says_that_families_differ():
    steel = gs.Steel({"C": 1, "Cr": 5, "Mo": 1.5, "V": 1})
    grid = steel.grid(Mo=[1.5, 3.6], C=[0.9, 1.0], celsius=1000)
    families = (
        "The steels are of the families general and high-speed: their hardening "
        "estimates have offsets and errors of their own."
    )
    assert families in notes(gs.plot.map(grid, gs.quantities.hardness_hrc()))
    assert "families" not in notes(gs.plot.map(grid, CARBON))


def test_soaks_that_are_not_usable_or_not_done_leave_the_map_open(grid, punch):
    bad = punch.soak(celsius=1100, phases=["graphite"])
    assert not bad.usable
    holes = remade(grid, lambda i, s: bad if i == 2 else None if i > 15 else s)
    assert (holes.failures, holes.not_done) == (1, 2)
    ax = gs.plot.map(holes, CARBON)
    assert marks(ax, "not usable") == [(0.6, pytest.approx(1100.0))]
    assert "Crosses: not usable, 1 of 18 soaks." in notes(ax)
    assert "Hatched: not done, 2 of 18 soaks." in notes(ax)
    assert len(contour_lines(ax)) >= 4
    for vertices in contour_lines(ax):  # none passes through a cell with a hole
        x, y = vertices.T
        inside = (x > 0.5 + 1e-9) & (y > 1060.0 + 1e-9) & (y < 1140.0 - 1e-9)
        assert not inside.any()
    (hatch,) = [p for p in ax.patches if p.get_gid() == "hatch"]
    assert hatch.get_hatch()


def test_nothing_to_draw_is_drawn_empty(grid):
    empty = remade(grid, lambda i, s: None)
    ax = gs.plot.map(empty, CARBON)
    assert contour_lines(ax) == []
    assert "Hatched: not done, 18 of 18 soaks." in notes(ax)


def test_one_number_everywhere_is_a_plain_fill():
    grid = gs.Steel({"C": 0.2}).grid(C=[0.1, 0.2], celsius=[1000, 1100])
    ax = gs.plot.map(grid, gs.quantities.carbide_volume_percent())
    assert contour_lines(ax) == []
    (bar,) = [other for other in ax.figure.axes if other is not ax]
    assert list(bar.get_yticks()) == [0.0]


def test_two_maps_side_by_side(grid):
    left, right = gs.plot.maps(grid, levels=6)
    assert left.figure is right.figure
    assert left.get_title(loc="left") == "punch heat 7: carbide"
    assert right.get_title(loc="left") == "punch heat 7: C in the matrix"
    assert "volumes at room temperature" in notes(left)
    assert "volumes" not in notes(right)
    figure, axes = plt.subplots(1, 2)
    assert gs.plot.maps(grid, axes=axes) == list(axes)


def refused(call, expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == expected


def test_what_is_no_map_is_named(grid, punch, state):
    refused(
        lambda: gs.plot.map(state, CARBON),
        "[gibbsteel.input.297] grid: is State, not SoakGrid; give what "
        "steel.grid(C=[0.5, 0.6], celsius=range(1000, 1201, 50)) returns",
    )
    refused(
        lambda: gs.plot.map(grid, "C"),
        "[gibbsteel.input.297] quantity: is str, not Quantity; "
        'give for instance gs.quantities.matrix("C")',
    )
    row = punch.grid(C=[0.5], celsius=[1000, 1100])
    for call in (lambda: gs.plot.map(row, CARBON), lambda: gs.plot.maps(row)):
        refused(
            call,
            "[gibbsteel.input.297] grid: has 1 x 2 soaks; "
            "sweep two or more values of each variable",
        )
    refused(
        lambda: gs.plot.maps(grid, axes=[]),
        "[gibbsteel.input.297] axes: are 0; give two",
    )
    refused(
        lambda: gs.plot.map(grid, CARBON, color="red"),
        "[gibbsteel.input.298] keyword: is 'color'; choose from: " + KEYWORDS,
    )
    refused(
        lambda: gs.plot.maps(grid, kelvin=True),
        "[gibbsteel.input.298] keyword: is 'kelvin'; choose from: " + KEYWORDS,
    )


def test_every_keyword_that_is_offered_is_one_of_filled_contours(grid):
    given = {"levels": 5, "cmap": "Greys", "vmin": 0.0, "vmax": 1.0, "alpha": 0.5}
    given |= {"extend": "both", "hatches": ["/"], "antialiased": True, "zorder": 1}
    given |= {"corner_mask": False, "algorithm": "serial", "nchunk": 0}
    given |= dict.fromkeys(("colors", "norm", "locator"))
    assert sorted(given) == sorted(KEYWORDS.split(", "))
    gs.plot.map(grid, CARBON, **given)  # pytest turns warnings into errors


def fahrenheit_scale(ax):
    (second,) = ax.child_axes
    ax.figure.canvas.draw()
    assert second.get_ylabel() == "soak temperature [°F]"
    assert second.get_ylim() == pytest.approx([1.8 * y + 32.0 for y in ax.get_ylim()])
    return second


@pytest.mark.parametrize("plain", [False, True])
def test_a_second_scale_in_fahrenheit_beside_the_bar(grid, plain):
    ax = gs.plot.map(
        grid, CARBON, ax=plt.subplots()[1] if plain else None, fahrenheit=True
    )
    second = fahrenheit_scale(ax)
    renderer = ax.figure.canvas.get_renderer()
    (bar,) = [other for other in ax.figure.axes if other is not ax]
    assert second.get_tightbbox(renderer).x1 < bar.get_window_extent().x0
    for one in gs.plot.maps(grid, fahrenheit=True):
        fahrenheit_scale(one)


def test_a_temperature_that_is_not_swept_stands_in_both_units(punch):
    grid = punch.grid(C=[0.5, 0.6], Co=[0, 2], celsius=1120)
    ax = gs.plot.map(grid, CARBON, fahrenheit=True)
    assert "Long-hold limit at 1120 °C (2048 °F). " in notes(ax)
    assert ax.child_axes == []
    assert "Long-hold limit at 1120 °C. " in notes(gs.plot.map(grid, CARBON))
