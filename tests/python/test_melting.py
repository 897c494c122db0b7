"""Melting: what Python adds to the C++ tests."""

import pickle

import gibbsteel as gs
import pytest


@pytest.fixture(scope="module")
def steel(with_liquid):
    return gs.Steel(C=0.8, name="bar 9", parameters=with_liquid)


@pytest.fixture(scope="module")
def found(steel):
    return steel.melting_range()


def test_the_answer(steel, found):
    assert found.status == "found"
    assert found.solidus_celsius < found.liquidus_celsius
    assert found.solidus_kelvin == pytest.approx(found.solidus_celsius + 273.15)
    assert found.liquidus_fahrenheit == pytest.approx(
        32 + 1.8 * found.liquidus_celsius
    )
    assert found.solids_at_solidus == found.primary_solids == ["austenite"]
    single = steel.soak(kelvin=found.at_solidus.kelvin)
    assert found.at_solidus.occurrences == single.occurrences
    assert set(found.at_liquidus.occurrences[0].weight_percent) == {"Fe", "C"}
    assert [field.phases for field in found.fields] == [
        ["austenite"],
        ["austenite", "liquid"],
        ["liquid"],
    ]
    assert found.analysis == steel.analysis and found.warnings == []


def test_the_range_that_is_searched(with_liquid, steel, found):
    highest = with_liquid.kelvin_validity[1]
    assert found.searched_kelvin == pytest.approx((1273.15, highest))
    narrow = steel.melting_range(fahrenheit=(1900, 2000))
    assert narrow.searched_fahrenheit == pytest.approx((1900, 2000))
    assert (narrow.status, narrow.solidus_celsius) == ("solid", None)
    assert narrow.text == (
        "no liquid forms in the range, 1038 to 1093 C (1900 to 2000 F)"
    )
    assert not hasattr(narrow, "celsius")


def test_texts(found):
    first, last = round(found.solidus_celsius), round(found.liquidus_celsius)
    line = (
        f"bar 9, melting, long-hold limit: begins to melt at {first} C +-30 "
        f"(solidus, out of austenite), molten above {last} C +-15 (liquidus, austenite "
        "melts last)"
    )
    assert repr(found) == f"<{line}>"
    assert str(found).replace("\n  ", " ").startswith(line + "\nanalysis, wt%: 0.8C")
    html = found._repr_html_()
    assert line in html and "last austenite" in html


def test_the_shipped_file_has_no_liquid():
    plain = gs.Steel(C=0.8).melting_range()
    assert plain.status == "no liquid"
    assert plain.text == (
        "the parameter file has no liquid: lay layers/liquid.json on it, in Python "
        'steel.with_parameters(default_parameters("liquid"))'
    )
    assert not plain.at_solidus.usable and plain.fields == []


def test_a_layer_that_lies_there_is_not_lost_by_the_remedy():
    iron = gs.Steel(C=0.8, parameters=gs.default_parameters("iron_as_measured"))
    both = 'default_parameters("iron_as_measured", "liquid"))'
    assert iron.melting_range().text == (
        "the parameter file has no liquid: lay layers/liquid.json on it, in Python "
        f"steel.with_parameters({both}"
    )
    assert iron.hardening_window().remarks[0] == (
        "No start of melting is known of a steel like this: no rule keeps the ceiling "
        "away from it. With a liquid in the parameter file it is computed. Lay "
        f"layers/liquid.json on it, in Python steel.with_parameters({both}."
    )


def test_pickle(found):
    copy = pickle.loads(pickle.dumps(found))
    assert str(copy) == str(found) and repr(copy) == repr(found)
    assert copy.solidus_kelvin == found.solidus_kelvin
    assert copy.at_liquidus.occurrences == found.at_liquidus.occurrences


def test_a_window_below_the_solidus_survives_pickling(steel):
    window = steel.hardening_window(celsius=(800, 1500))
    assert window.ceiling_rule == window.rules[-1].rule == "melting"
    copy = pickle.loads(pickle.dumps(window))
    assert str(copy) == str(window) and copy.rules == window.rules


def test_wrong_arguments(steel):
    with pytest.raises(gs.InputError) as error:
        steel.melting_range(celsius=1200)
    assert str(error.value) == (
        "[gibbsteel.input.211] temperature: celsius=1200 is no pair of temperatures; "
        "give the low and the high end, for instance celsius=(700, 1250)"
    )


def test_progress_can_stop_it(steel):
    stopped = steel.melting_range(progress=lambda done: done < 5)
    assert (stopped.status, stopped.text) == (
        "not known",
        "part of the range is not known",
    )


def test_tables_that_stand_side_by_side_show_the_liquid(steel, found):
    middle = 0.5 * (found.solidus_celsius + found.liquidus_celsius)
    soaks = steel.sweep(celsius=[1200, middle])
    frame = soaks.to_frame(wide=True)
    assert list(frame["liquid_volume_percent"]) == [
        0.0,
        soaks[1].volume_percent_of("liquid"),
    ]
    row = gs.compare(list(soaks))["liquid"]
    assert (row.unit, row.values) == ("vol%", list(frame["liquid_volume_percent"]))
    assert "liquid_volume_percent" not in soaks[0].to_frame(wide=True)
    with pytest.raises(gs.InputError):
        gs.compare([soaks[0]])["liquid"]


def test_a_molten_steel_has_no_matrix_in_any_table(steel, found):
    above = found.liquidus_celsius + 5.0
    down = steel.sweep(celsius=[above, 1200])
    assert "matrix C wt%" in down._repr_html_()
    activity = down[0].carbon_activity
    search = steel.temperature_for(
        carbon_activity=activity, celsius=(above - 2.0, above + 2.0)
    )
    (row,) = search.to_frame().to_dict("records")
    assert row["matrix_C_weight_percent"] != row["matrix_C_weight_percent"]
    (line,) = [
        line for line in str(down[0].hardening()).splitlines() if "Mo + W/2 " in line
    ]
    assert line.split()[-2:] == ["n/a", "0.00"]
    (told,) = [row for row in str(search).splitlines() if row.endswith(" 0.00")]
    assert told.split()[-2:] == ["n/a", "0.00"]
    rows = [row.split() for row in str(down).splitlines()]
    assert ["C", "all", "liquid", "C"] in rows
    assert [f"{above:.0f}", "0.00", "100.00", "-", "l"] in rows


def test_a_band_of_a_molten_steel_says_where_it_has_no_number(with_liquid):
    heat = gs.Steel(C=0.8, V=1.0, parameters=with_liquid)
    above = heat.melting_range().liquidus_celsius + 10.0
    assert "nan" not in str(heat.parameter_band(celsius=above))


def test_a_tolerance_band_says_of_how_many_samples_its_numbers_are(steel, found):
    edge = found.liquidus_celsius - 1.0
    band = steel.tolerance_band(
        celsius=edge, ranges={"C": (0.75, 0.85)}, furnace_celsius=5, samples=40
    )
    carbon = band["C in the matrix"].sampled.count
    assert 0 < carbon < 40
    (text,) = [w.text for w in band.warnings if "have no number" in w.text]
    assert text == (
        f"Up to {40 - carbon} of 40 samples have no number for C in the matrix: their "
        "bands are those of the others."
    )
