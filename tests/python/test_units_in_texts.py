"""Whoever gives fahrenheit or kelvin reads it too."""

import pickle

import gibbsteel as gs
import pytest

RANGE = {"fahrenheit": (1292, 1562)}


@pytest.fixture(scope="module")
def plain():
    return gs.Steel(C=0.4, name="plain")


@pytest.fixture(scope="module")
def changes(plain):
    return plain.phase_changes(**RANGE)


def again(value):
    return pickle.loads(pickle.dumps(value))


def test_phase_changes(changes):
    text = str(changes)
    assert repr(changes) == (
        "<plain, 700 to 850 C (1292 to 1562 F), long-hold limit: 2 phase changes>"
    )
    assert [change.text for change in changes.changes] == [
        "727 C (1340 F) on heating: ferrite + M3C -> austenite (invariant)",
        "787 C (1449 F) on heating: ferrite disappears",
    ]
    assert "  austenite            787 to 850 C (1449 to 1562 F)\n" in text
    assert "Ae3: the last ferrite is gone at 787 C (1449 F)\n" in text
    assert str(again(changes)) == text


def test_dissolution(changes):
    assert changes.dissolution("ferrite").text == (
        "ferrite is gone above 787 C (1449 F); ferrite is present from 700 C (1292 F) "
        "(low end of the range) to 787 C (1449 F)"
    )


def test_temperature_for(plain):
    found = plain.temperature_for(volume_percent={"ferrite": 20}, **RANGE)
    (degrees,) = found.temperatures_fahrenheit
    (celsius,) = found.temperatures_celsius
    assert repr(found) == (
        "<plain, 700 to 850 C (1292 to 1562 F), long-hold limit: found: ferrite "
        f"is 20 vol% at {celsius:.0f} C ({degrees:.0f} F) (falling)>"
    )
    assert str(again(found)) == str(found)
    never = plain.temperature_for(matrix_carbon=2, **RANGE)
    assert never.text == (
        "C in the matrix is between 0.01452 wt% (700 C, 1292 F) and 0.4 wt% (727 C, "
        "1340 F) in the range and never 2 wt%"
    )


def test_kelvin_is_shown_too(plain):
    found = plain.hardening_window(kelvin=(1000, 1100))
    assert found.text == (
        "from 787 C (1060 K); floor set by: no ferrite alone; no ceiling: nothing that "
        "was given sets one up to 827 C (1100 K), where the search ended"
    )


def test_melting_range():
    steel = gs.Steel(C=1.0, name="bar", parameters=gs.default_parameters("liquid"))
    found = steel.melting_range(fahrenheit=(2000, 2800))
    solidus, liquidus = found.solidus_fahrenheit, found.liquidus_fahrenheit
    assert found.text == (
        f"begins to melt at {found.solidus_celsius:.0f} C +-30 ({solidus:.0f} F +-54) "
        f"(solidus, out of austenite), molten above {found.liquidus_celsius:.0f} C "
        f"+-15 ({liquidus:.0f} F +-27) (liquidus, austenite melts last)"
    )
    assert str(again(found)) == str(found)


def test_sweep(plain):
    sweep = plain.sweep(fahrenheit=[1300, 1400, 1600])
    assert repr(sweep) == (
        "<plain, 3 soaks from 704 to 871 C (1300 to 1600 F), long-hold limit>"
    )
    table = str(sweep).split("\n\n")[1].splitlines()
    assert table[:3] == [
        "soak       carbide  vol%  matrix",
        "F       C      all   M3C       C",
        "1300  704     5.90  5.90   0.015  f",
    ]
    assert "\n! 704 C (1300 F): [gibbsteel.warning.305] " in str(sweep)
    assert str(again(sweep)) == str(sweep)


def test_composition_for(plain):
    found = plain.composition_for(
        "C", percent=(0.2, 0.6), fahrenheit=1700, matrix_carbon=0.5
    )
    assert repr(found) == (
        "<plain with 0.2 to 0.6 wt% C at 927 C (1700 F), long-hold limit: found: C in "
        "the matrix is 0.5 wt% at 0.500 wt% C (rising)>"
    )


def test_warnings_of_a_soak(plain):
    (validity,) = plain.soak(kelvin=2050).warnings[:1]
    assert str(validity) == (
        "[gibbsteel.warning.301] The temperature is outside the validity of the "
        "parameter file, 600 C (873 K) to 1300 C (1573 K). Did you mean 2050 F (1121 "
        "C)? It was given as 2050 K."
    )


def test_refused_in_the_unit_of_the_call(plain):
    with pytest.raises(gs.InputError) as error:
        plain.sweep(fahrenheit=[5000])
    assert str(error.value) == (
        "[gibbsteel.input.210] temperature: is 5000.0 F = 2760.0 C; give 300 K to 2500 "
        "K (27 C to 2227 C, 80 F to 4040 F) and check the unit"
    )


def test_compare_and_match(plain):
    both = gs.compare([plain, plain.changed(C=0.5, name="rich")], fahrenheit=1500)
    assert repr(both) == (
        "<comparison of 2 states, long-hold limit: plain at 816 C (1500 F), rich at "
        "816 C (1500 F)>"
    )
    first = "A: plain at 816 C (1500 F), long-hold limit; 0.4C, balance Fe\n"
    assert first in str(both)
    assert str(again(both)) == str(both)
    match = gs.matching_temperature(
        reference=both.states[0], steel=plain.changed(C=0.5, name="rich"), **RANGE
    )
    assert repr(match) == (
        "<as plain at 816 C (1500 F) (C in the matrix 0.4 wt%): rich, 700 to 850 C "
        "(1292 to 1562 F), long-hold limit: jumps over: C in the matrix jumps over 0.4 "
        "wt% at 727 C (1340 F) (from 0.01904 to 0.5 wt%)>"
    )


def test_grid(plain):
    grid = plain.grid(C=[0.4, 0.5], fahrenheit=[2000, 2050])
    assert repr(grid) == (
        "<plain, 2 x 2 soaks, C 0.4 to 0.5 wt%, temperature 1093 to 1121 C (2000 to "
        "2050 F), long-hold limit>"
    )
    table = str(grid).split("\n\n")[1].splitlines()
    assert table[0].split("  ")[-2:] == ["1093 (2000 F)", "1121 (2050 F)"]
    assert str(again(grid)) == str(grid)
    assert repr(plain.grid(C=[0.4], Cr=[0, 1], fahrenheit=2000)) == (
        "<plain, 1 x 2 soaks, C 0.4 to 0.4 wt%, Cr 0 to 1 wt%, 1093 C (2000 F), "
        "long-hold limit>"
    )
    close = plain.grid(C=[0.4], celsius=[1000.2, 1000.4])
    assert "temperature 1000.20 to 1000.40 C, long-hold limit>" in repr(close)


def test_section_map(plain):
    coarse = gs.SectionOptions(columns=2, rows=2, temperature_tolerance=5)
    section = plain.section_map(C=(0.4, 1.2), fahrenheit=(1292, 1472), section=coarse)
    assert repr(section).startswith(
        "<plain, 0.40 to 1.20 wt% C against 700 to 800 C (1292 to 1472 F): "
    )
    meeting = str(section).split("points where fields meet\n")[1].splitlines()[0]
    assert meeting == (
        "0.730 wt% C, 728 C (1343 F): austenite | austenite + ferrite | ferrite + M3C"
    )
    assert str(again(section)) == str(section)


def test_twin_study():
    steel = gs.Steel(C=0.9, Cr=4, Mo=5, W=6, V=2, name="M2")
    study = steel.twin_study(fahrenheit=2200, others_fahrenheit=[1900])
    table = str(study).split("\n\n")[2].splitlines()[:3]
    assert [line.split("  ")[0] for line in table] == [
        "twin at, C",
        "1204 (2200 F)",
        "1038 (1900 F)",
    ]
    assert study.others[0].fahrenheit == pytest.approx(1900)
    with pytest.raises(gs.InputError) as error:
        steel.twin_study(celsius=1200, others_celsius=[1], others_fahrenheit=[2])
    assert str(error.value) == (
        "[gibbsteel.input.211] others: are given as others_celsius= and as "
        "others_fahrenheit=; give one of the two"
    )
    assert str(again(study)) == str(study)


def test_design(plain):
    wish = gs.target(gs.quantities.matrix("C"), equal=0.5, fahrenheit=1700)
    assert repr(wish) == (
        "<DesignTarget: C in the matrix [wt%] equal 0.5 at 927 C (1700 F)>"
    )
    assert repr(again(wish)) == repr(wish)
    found = gs.design(plain, vary={"C": (0.3, 1.0)}, targets=[wish])
    assert "C in the matrix, wt%  927 (1700 F)     0.5" in str(found)
    assert str(again(found)) == str(found)
    state = plain.soak(celsius=900)
    (moved,) = gs.matrix_targets(state, ["C"], fahrenheit=1700)
    assert "at 927 C (1700 F)" in repr(moved)


def test_tolerance_band(plain):
    few = {"samples": 0, "corners": False}
    band = plain.tolerance_band(fahrenheit=2000, furnace_fahrenheit=18, **few)
    assert band.inputs[0].low == pytest.approx(1093.33 - 10, abs=0.01)
    assert (
        "temperature     C  1093 (2000 F)  1083 (1982 F)  1103 (2018 F)     5.77  "
        "uniform\n"
    ) in str(band)
    assert str(again(band)) == str(band)
    in_c = plain.tolerance_band(celsius=1100, furnace_celsius=10, **few)
    assert "temperature     C     1100  1090  1110     5.77  uniform\n" in str(in_c)
    with pytest.raises(gs.InputError) as error:
        plain.tolerance_band(celsius=1100, furnace_celsius=1, furnace_fahrenheit=2)
    assert str(error.value) == (
        "[gibbsteel.input.211] furnace error: is given as furnace_celsius= and as "
        "furnace_fahrenheit=; give one of the two"
    )


def test_how_unsure():
    steel = gs.Steel(C=0.55, Cr=4.5, Mo=2.75, W=2, V=1, name="heat")
    found = steel.temperature_for(matrix_carbon=0.5, fahrenheit=(1700, 2200))
    (crossing,) = found.crossings
    at, width = crossing, crossing.uncertainty_at_least
    assert 1 < width < 100
    assert found.text == (
        f"C in the matrix is 0.5 wt% at {at.celsius:.0f} C ({at.fahrenheit:.0f} F) "
        f"(rising, at least +-{width:.0f} C, +-{1.8 * width:.0f} F)"
    )
    assert again(crossing).uncertainty_at_least == width
    gone = steel.dissolution_temperature("M6C", fahrenheit=(1700, 2300))
    width = gone.uncertainty_at_least
    assert 1 < width < 100
    assert gone.text.startswith(
        f"M6C is gone above {gone.celsius:.0f} C ({gone.fahrenheit:.0f} F) (at least "
        f"+-{width:.0f} C, +-{1.8 * width:.0f} F); M6C is present from "
    )
    assert again(gone).uncertainty_at_least == width
