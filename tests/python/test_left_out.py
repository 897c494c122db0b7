"""Much of an element that is not modelled is told wherever a result is read."""

import gibbsteel as gs
import pytest

q = gs.quantities
BASE = {"C": 0.56, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0, "Mn": 0.3, "Si": 0.3}
MUCH = "[gibbsteel.warning.318] Not modelled, and more than a residual or a "
BORON = (
    MUCH + "micro-addition: B 2 wt% (forms borides, which bind iron, Cr, Mo and W; "
    "melts with iron from 1175 C, with carbon and alloy lower). The numbers are those "
    "of a steel without, not of this one."
)


def told(warnings):
    return [str(warning) for warning in warnings if warning.code.endswith("318")]


@pytest.fixture(scope="module")
def boron():
    return gs.Steel({**BASE, "B": 2})


@pytest.mark.parametrize(
    "more", [{"B": 2}, {"Al": 2}, {"Cu": 3}, {"S": 0.3}, {"P": 0.3}, {"K": 0.56}]
)
def test_state_and_estimates_are_warned(more):
    state = gs.Steel({**BASE, **more}).soak(celsius=1120)
    assert len(told(state.warnings)) == 1
    assert told(state.hardening().warnings) == told(state.warnings)


def test_an_ordinary_certificate_is_not():
    rest = {"P": 0.03, "S": 0.03, "Cu": 0.25, "Al": 0.03, "B": 0.003, "N": 0.03}
    state = gs.Steel({**BASE, **rest}).soak(celsius=1120)
    assert told(state.warnings) == told(state.hardening().warnings) == []


def test_searches_comparisons_and_maps_carry_it(boron):
    found = boron.temperature_for(q.hardness_hrc(), 62)
    assert told(found.warnings) == [BORON]
    assert told(boron.temperature_for(matrix_carbon=0.4).warnings) == [BORON]
    pair = [boron, gs.Steel(BASE)]
    compared = gs.compare(pair, celsius=1120, quantities=[q.hardness_hrc()])
    assert told(compared.warnings_of(0)) == [BORON]
    assert told(compared.warnings_of(1)) == []
    reference = gs.Steel(BASE).soak(celsius=1120)
    matched = gs.matching_temperature(reference=reference, steel=boron)
    assert told(matched.warnings) == [BORON]
    assert told(boron.dissolution_temperature("M6C").warnings) == [BORON]
    assert told(boron.phase_changes(celsius=(800, 900)).warnings) == [BORON]
    assert told(boron.sweep(celsius=[1100, 1120]).warnings) == [BORON]
    grid = boron.grid(Co=[0, 2], celsius=[1120])
    assert told(grid.warnings_of(q.hardness_hrc())) == [BORON]


def test_a_row_of_a_screen_carries_it():
    heats = [[0.56, 4.5, 0.003], [0.56, 4.5, 2.0]]
    table = gs.screen(heats, ["C", "Cr", "B"], celsius=1050)
    assert table.count_warnings()["gibbsteel.warning.318"] == 1
    assert table.warning_texts["gibbsteel.warning.318"] == BORON.split("] ")[1]


def test_soaks_of_minutes_carry_it():
    steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25, "Cu": 0.6})
    state = steel.soak(celsius=845)
    for short in (state.timed_soak(minutes=30), state.short_soak_limit()):
        assert len(told(short.state.warnings)) == 1
        assert len(told(short.state.hardening().warnings)) == 1


def test_windows_and_melting_ranges_do_not_claim_to_be_free_of_melt(boron):
    melt = (
        "possible melt of what is not modelled: B melts with iron from 1175 C, with "
        "carbon and alloy lower"
    )
    liquid = gs.default_parameters("liquid")
    for steel in (boron, boron.with_parameters(liquid)):
        window = steel.hardening_window(celsius=(750, 1250))
        assert window.text == (
            "827 to 1075 C; floor set by: no ferrite alone; ceiling set by: " + melt
        )
        assert window.ceiling_rule == "left out"
        assert told(window.warnings) == [BORON]
    melting = boron.with_parameters(liquid).melting_range(celsius=(1100, 1500))
    assert melting.text.startswith(
        f"computed without B 2 wt%, not modelled ({melt}): begins to melt at 1285 C"
    )
    assert told(melting.warnings) == [BORON]
