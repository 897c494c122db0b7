"""Looks of phases and elements: distinct, and legible in grey print."""

import doctest
import importlib
import pkgutil
from itertools import combinations

import gibbsteel as gs
import pytest
from gibbsteel.plot.element_styles import ELEMENT_STYLES, style_of_element
from gibbsteel.plot.phase_styles import PHASE_STYLES, in_order, style_of_phase
from gibbsteel.plot.plot_map import MAP_COLORS
from gibbsteel.plot.steel_styles import style_of_steel
from gibbsteel.plot.styles import luminance

# "matrix" stands for all matrix phases together and is drawn as austenite.
PHASES = {kind: style for kind, style in PHASE_STYLES.items() if kind != "matrix"}


@pytest.mark.parametrize(
    ("color", "lightness"),
    [
        ("#000000", 0.0),
        ("#ffffff", 100.0),
        # The primaries of sRGB in CIE L*a*b* (D65), tabled in many places; from memory.
        ("#ff0000", 53.24),
        ("#00ff00", 87.73),
        ("#0000ff", 32.30),
    ],
)
def test_lightness_of_known_colours(color, lightness):
    assert luminance(color) == pytest.approx(lightness, abs=0.02)


def test_every_kind_of_the_shipped_file_has_a_style(state):
    assert {*state.kinds, "liquid"} == set(PHASES)  # liquid comes with a layer
    assert set(gs.default_parameters().elements) <= set(ELEMENT_STYLES)


def test_areas_differ_by_lightness():
    for (a, one), (b, other) in combinations(PHASES.items(), 2):
        assert abs(luminance(one.face) - luminance(other.face)) >= 5.0, (a, b)


def test_carbides_that_meet_in_tool_steels_are_far_apart_in_grey():
    # Common practice, no source: MC + M6C (+ M23C6, M2C) in high-speed steels,
    # M7C3 + M23C6 (+ MC) in chromium steels, M3C + M7C3 in low-alloy tool steels.
    for a, b in [
        ("MC", "M6C"),
        ("M6C", "M23C6"),
        ("MC", "M23C6"),
        ("M2C", "M6C"),
        ("M7C3", "M23C6"),
        ("MC", "M7C3"),
        ("M3C", "M7C3"),
        ("M6C", "M7C3"),
    ]:
        one, other = PHASES[a], PHASES[b]
        assert abs(luminance(one.face) - luminance(other.face)) >= 15.0, (a, b)
        assert one.hatch != other.hatch


STEELS = {f"steel {place}": style_of_steel(place) for place in range(8)}


@pytest.mark.parametrize("styles", [PHASES, ELEMENT_STYLES, STEELS])
def test_lines_differ_without_colour_and_stand_out_on_white(styles):
    looks = [(style.dash, style.marker) for style in styles.values()]
    assert len(set(looks)) == len(looks)
    assert len({style.line for style in styles.values()}) == len(styles)
    for name, style in styles.items():
        assert luminance(style.line) <= 56.0, name


def test_an_unknown_name_has_the_same_spare_style_every_time():
    for style_of, known in (
        (style_of_phase, PHASE_STYLES),
        (style_of_element, ELEMENT_STYLES),
    ):
        spare = style_of("Z")
        assert spare == style_of("Z")
        assert spare not in known.values()
        assert (spare.dash, spare.marker) not in [
            (style.dash, style.marker) for style in known.values()
        ]


def test_order_of_stacking():
    assert in_order(["new", "M7C3", "matrix", "MC"]) == ["matrix", "MC", "M7C3", "new"]


def test_map_colours_fall_steadily_in_lightness():
    steps = [luminance(color) for color in MAP_COLORS]
    assert all(a - b >= 10.0 for a, b in zip(steps, steps[1:]))
    assert steps[-1] >= 35.0  # a black line is still seen


def test_examples_in_docstrings():
    pytest.importorskip("matplotlib", reason="Debian: python3-matplotlib")
    tried = 0
    for module in pkgutil.iter_modules(gs.plot.__path__, "gibbsteel.plot."):
        result = doctest.testmod(importlib.import_module(module.name))
        assert result.failed == 0, module.name
        tried += result.attempted
    importlib.import_module("matplotlib.pyplot").close("all")
    assert tried >= 20
