"""Section maps in Python: results, figures, wrong arguments."""

import os
import pickle

import numpy as np
import pytest

os.environ.setdefault("MPLBACKEND", "Agg")

import gibbsteel as gs


@pytest.fixture(scope="module")
def iron_carbon():
    coarse = gs.SectionOptions(
        columns=4, rows=4, temperature_tolerance=0.5, percent_tolerance=0.005
    )
    steel = gs.Steel({"C": 0.6}, name="bar 3")
    return steel.section_map(C=(0, 1.2), celsius=(700, 900), section=coarse)


def test_a_section_holds_boundaries_fields_and_nodes(iron_carbon):
    assert iron_carbon.complete
    assert {field.label for field in iron_carbon.fields} == {
        "austenite",
        "ferrite",
        "austenite + ferrite",
        "austenite + M3C",
        "ferrite + M3C",
    }
    # Eutectoid 727 +-2 C, 0.77 +-0.02 wt% C: Chipman, Metall. Trans. 3 (1972) 55.
    (eutectoid,) = [node for node in iron_carbon.nodes if len(node.fields) == 4]
    assert eutectoid.at == pytest.approx((0.77, 727.0), abs=2.0)
    assert eutectoid.at[0] == pytest.approx(0.77, abs=0.02)
    assert iron_carbon.field_at(1.1, 750).phases == ["austenite", "M3C"]
    assert iron_carbon.field_at(2.0, 750) is None
    assert iron_carbon.celsius is None
    assert iron_carbon.y.label == "temperature [C]"


def test_a_section_is_read_only_and_travels(iron_carbon):
    copy = pickle.loads(pickle.dumps(iron_carbon))
    assert copy.boundaries == iron_carbon.boundaries
    assert copy.fields == iron_carbon.fields
    assert copy.nodes == iron_carbon.nodes
    assert copy.x == iron_carbon.x and copy.y == iron_carbon.y
    assert copy.soaks == iron_carbon.soaks and copy.parameters == iron_carbon.parameters
    assert str(copy) == str(iron_carbon)
    with pytest.raises(AttributeError):
        iron_carbon.steel = "other"
    with pytest.raises(ValueError, match="read-only"):
        iron_carbon.boundaries[0].points[0, 0] = 1.0
    assert repr(iron_carbon).startswith("<bar 3, 0.00 to 1.20 wt% C against 700")


def test_the_table_of_a_section_holds_every_point(iron_carbon):
    table = iron_carbon.to_frame()
    assert list(table.columns) == [
        "boundary",
        "C [wt%]",
        "temperature [C]",
        "left",
        "right",
        "invariant",
    ]
    assert len(table) == sum(len(b.points) for b in iron_carbon.boundaries)
    of_first = table[table["boundary"] == 0][["C [wt%]", "temperature [C]"]]
    np.testing.assert_array_equal(of_first, iron_carbon.boundaries[0].points)


def test_two_elements_at_one_temperature():
    coarse = gs.SectionOptions(
        columns=3, rows=3, temperature_tolerance=1, percent_tolerance=0.01
    )
    found = gs.Steel({"C": 1}).section_map(
        C=(0.6, 1.4), Cr=(2, 8), celsius=1000, section=coarse
    )
    assert found.celsius == pytest.approx(1000)
    assert (found.x.element, found.y.element) == ("C", "Cr")
    assert found.field_at(1.3, 7).label == "austenite + M7C3"
    assert pickle.loads(pickle.dumps(found)).celsius == found.celsius


def test_a_stopped_section_says_so():
    found = gs.Steel({"C": 0.6}).section_map(
        C=(0, 1), celsius=(700, 900), progress=lambda done: False
    )
    assert found.stopped == "cancelled"
    assert not found.complete and found.gaps
    assert "NOT COMPLETE" in repr(found)
    assert gs.plot.section(found).findobj(lambda artist: artist.get_gid() == "gap")


@pytest.mark.parametrize(
    ("arguments", "message"),
    [
        (
            {"celsius": (700, 900)},
            "[gibbsteel.input.281] section: is over nothing; give "
            "section_map(C=(0, 2), celsius=(650, 1200)) or "
            "section_map(C=(0, 2), Cr=(0, 20), celsius=1000)",
        ),
        (
            {"C": 0.6, "celsius": (700, 900)},
            "[gibbsteel.input.280] C: is 0.6, no pair of numbers; give two weight "
            "percents, for instance C=(0, 2)",
        ),
        (
            {"C": (0, 1), "celsius": (700, 800, 900)},
            "[gibbsteel.input.280] temperature: are 3 temperatures; section_map("
            "C=(0, 2), celsius=(650, 1200))",
        ),
        (
            {"C": (1, 0), "celsius": (700, 900)},
            "[gibbsteel.input.280] x axis: goes from 1 to 0 wt%; give two weight "
            "percents from 0 upwards, the lower one first",
        ),
    ],
)
def test_wrong_arguments(arguments, message):
    with pytest.raises(gs.InputError) as caught:
        gs.Steel({"C": 0.6}).section_map(**arguments)
    assert str(caught.value) == message


def heading_of(ax):
    notes = [text for text in ax.texts if text.get_gid() == "notes"]
    return next(text for text in notes if "Long-hold" in text.get_text())


def test_the_figure_draws_every_boundary_and_names_every_field(iron_carbon):
    ax = gs.plot.section(iron_carbon)
    drawn = [line for line in ax.lines if line.get_gid() == "boundary"]
    assert len(drawn) == len(iron_carbon.boundaries)
    for line, boundary in zip(drawn, iron_carbon.boundaries, strict=True):
        np.testing.assert_array_equal(line.get_xydata(), boundary.points)
    names = [text.get_text() for text in ax.texts if text.get_gid() == "field"]
    flat = {name.replace("\n", " ") for name in names}
    key = heading_of(ax).get_text().splitlines()[-1]
    assert key == "1 ferrite"
    assert flat - {"1"} | {key[2:]} == {field.label for field in iron_carbon.fields}
    notes = "\n".join(t.get_text() for t in ax.texts if t.get_gid() == "notes")
    assert "Long-hold limit" in notes and "edition" in notes
    assert ax.get_xlabel() == "C in the steel [wt%]"


def test_names_in_the_figure_do_not_overlap(iron_carbon):
    ax = gs.plot.section(iron_carbon)
    ax.figure.draw_without_rendering()
    # The text alone: get_window_extent() of an annotation would hold its line.
    from matplotlib.text import Text

    boxes = [Text.get_window_extent(t) for t in ax.texts if t.get_gid() == "field"]
    for i, one in enumerate(boxes):
        assert not any(one.overlaps(other) for other in boxes[:i])


def test_crowded_fields_carry_numbers_that_the_heading_explains():
    """The map of README.md."""
    from matplotlib.text import Text

    steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
    coarse = gs.SectionOptions(
        columns=6, rows=8, temperature_tolerance=2, percent_tolerance=0.01
    )
    found = steel.section_map(C=(0.3, 0.9), celsius=(700, 1200), section=coarse)
    ax = gs.plot.section(found)
    figure = ax.figure
    figure.canvas.draw()
    texts = [text for text in ax.texts if text.get_gid() == "field"]
    notes = heading_of(ax)
    key = " ".join(notes.get_text().split()).partition("not predicted ")[2]
    numbers = dict(entry.split(" ", 1) for entry in key.split("; "))
    assert list(numbers) == [str(n + 1) for n in range(len(numbers))]
    written = {t.get_text() for t in texts}
    assert set(numbers) <= written
    names = {" ".join(name.split()) for name in written - set(numbers)}
    large = {field.label for field in found.fields if field.area_share >= 5e-4}
    assert names | set(numbers.values()) == large
    inside = ax.get_window_extent()
    for text in texts:  # nothing over the frame
        box = Text.get_window_extent(text)
        assert inside.x0 < box.x0 and box.x1 < inside.x1
        assert inside.y0 < box.y0 and box.y1 < inside.y1
        for line in ax.lines:  # or over a boundary
            if line.get_gid() == "boundary":
                assert not line.get_transform().transform_path(
                    line.get_path()
                ).intersects_bbox(box, filled=False)
    page, box = figure.bbox, notes.get_window_extent()
    assert page.x0 <= box.x0 and box.x1 <= page.x1 and box.y1 <= page.y1
    led = [text for text in texts if hasattr(text, "arrow_patch")]
    assert led
    for text in led:  # near the field
        dot = ax.transAxes.inverted().transform(ax.transData.transform(text.xy))
        assert max(abs(np.subtract(text.get_position(), dot))) < 0.1


def test_the_figure_refuses_what_is_no_section():
    with pytest.raises(gs.InputError) as caught:
        gs.plot.section("map")
    assert str(caught.value) == (
        "[gibbsteel.input.297] section_map: is str, not SectionMap; give what "
        "steel.section_map(C=(0, 2), celsius=(650, 1200)) returns"
    )


def test_degrees_fahrenheit_on_a_second_scale_or_in_the_heading(iron_carbon):
    plt = pytest.importorskip("matplotlib.pyplot")
    ax = gs.plot.section(iron_carbon, fahrenheit=True)
    (second,) = ax.child_axes
    ax.figure.canvas.draw()
    assert second.get_ylabel() == "temperature [°F]"
    assert second.get_ylim() == pytest.approx([1.8 * y + 32.0 for y in ax.get_ylim()])
    coarse = gs.SectionOptions(columns=3, rows=3, percent_tolerance=0.05)
    steel = gs.Steel({"C": 0.6, "Cr": 1.0}, name="bar 4")
    found = steel.section_map(C=(0.2, 0.6), Cr=(0.5, 1.5), celsius=900, section=coarse)
    ax = gs.plot.section(found, fahrenheit=True)
    (text,) = [t.get_text() for t in ax.texts if t.get_gid() == "notes"][:1]
    assert "Long-hold limit at 900 °C (1652 °F). " in " ".join(text.split())
    assert ax.child_axes == []
    plt.close("all")
