"""Searches for temperatures: what Python adds to the C++ tests."""

import pickle

import gibbsteel as gs
import pytest


def again(value):
    return pickle.loads(pickle.dumps(value))


@pytest.fixture(scope="module")
def plain():
    return gs.Steel(C=0.4, name="plain")


@pytest.fixture(scope="module")
def changes(plain):
    return plain.phase_changes(celsius=(700, 850))


@pytest.fixture(scope="module")
def found(plain):
    return plain.temperature_for(carbon_activity=0.5, celsius=(700, 850))


def problem(call, *arguments, **keywords):
    """The whole text of the InputError that the call raises."""
    with pytest.raises(gs.InputError) as error:
        call(*arguments, **keywords)
    return str(error.value)


def test_phase_changes(plain, changes):
    assert [change.invariant for change in changes.changes] == [True, False]
    assert changes.changes[1].disappears == ["ferrite"]
    assert changes.ae3.celsius == changes.changes[1].celsius
    assert changes.acm.kelvin is None
    assert [field.phases for field in changes.fields] == [
        ["ferrite", "M3C"],
        ["austenite", "ferrite"],
        ["austenite"],
    ]
    assert changes.fields[0].celsius == pytest.approx((700, changes.ae1.celsius))
    for side in ("below", "above"):
        state = getattr(changes.changes[1], side)
        single = plain.soak(kelvin=state.kelvin)
        assert state.occurrences == single.occurrences
    assert changes.complete and changes.stopped == "" and changes.gaps == []


def test_texts(changes, found):
    assert repr(changes) == ("<plain, 700 to 850 C, long-hold limit: 2 phase changes>")
    assert str(changes).startswith("plain, 700 to 850 C, long-hold limit: 2 phase")
    assert repr(changes.changes[1]) == (
        "<PhaseChange 787 C on heating: ferrite disappears>"
    )
    assert repr(changes.fields[2]) == "<PhaseField 787 to 850 C: austenite>"
    assert repr(changes.acm) == "<TransformationLimit: no M3C is left above Ae3>"
    assert repr(found) == (
        "<plain, 700 to 850 C, long-hold limit: found: carbon activity is 0.5 at "
        "776 C (falling)>"
    )
    assert repr(found.crossings[0]) == "<Crossing at 776 C: crossing, falling>"
    assert repr(gs.SearchOptions()) == (
        "SearchOptions(node_spacing=5, tolerance=0.01, most_soaks=20000)"
    )


def test_units_of_a_range(plain, changes):
    in_fahrenheit = plain.phase_changes(fahrenheit=(1292, 1562))
    assert in_fahrenheit.searched_celsius == pytest.approx((700, 850))
    assert in_fahrenheit.searched_fahrenheit == pytest.approx((1292, 1562))
    assert in_fahrenheit.ae3.fahrenheit == pytest.approx(
        changes.ae3.fahrenheit, abs=0.02
    )
    assert plain.phase_changes().searched_celsius == pytest.approx((700, 1250))


def test_one_meaning_of_celsius(plain, changes, found):
    """An answer: a range that was searched is `searched_celsius`."""
    for result in (changes, found):
        assert not hasattr(result, "celsius")
        assert result.searched_celsius == pytest.approx((700, 850))
        assert result.to_frame().attrs["searched_C"] == result.searched_celsius
    assert changes.temperatures_celsius == tuple(c.celsius for c in changes.changes)
    assert found.temperatures_kelvin == tuple(c.kelvin for c in found.crossings)
    assert isinstance(found.temperatures_fahrenheit, tuple)
    never = plain.temperature_for(carbon_activity=30, celsius=(700, 850))
    assert never.temperatures_celsius == ()


def test_dissolution(plain):
    cementite = plain.dissolution_temperature("M3C", celsius=(700, 800))
    assert cementite.status == "found"
    assert cementite.celsius == pytest.approx(727, abs=2)  # eutectoid, Okamoto 1992
    never = plain.dissolution_temperature("M6C", celsius=(700, 720))
    assert (never.status, never.celsius) == ("never present", None)
    assert repr(never) == (
        "<Dissolution plain, 700 to 720 C, long-hold limit: never present: M6C is not "
        "present anywhere in the range>"
    )
    assert str(never).startswith(repr(never)[13:60])
    assert never.searched_celsius == pytest.approx((700, 720))
    assert never.analysis.given == {"C": 0.4}
    copy = again(never)
    assert str(copy) == str(never)
    assert copy.warnings == never.warnings


def test_a_search_that_finds_nothing_carries_the_warnings_of_its_ends(punch):
    for search in (
        punch.temperature_for(matrix_carbon=0.5, celsius=(1250, 1500)),
        punch.composition_for("C", matrix_carbon=5, percent=(0.3, 0.8), celsius=1320),
    ):
        assert (search.status, search.crossings) == ("never reached", [])
        ends = [*search.low.warnings, *search.high.warnings]
        assert search.warnings and all(w in ends for w in search.warnings)
        assert {w.code[-3:] for w in search.warnings} >= {"301", "303"}
        for warning in search.warnings:
            assert f"! [{warning.code}]" in str(search)
        assert again(search).warnings == search.warnings
    frame = punch.temperature_for(matrix_carbon=5, celsius=(1250, 1300)).to_frame()
    assert frame.attrs["warnings"]
    gone = punch.dissolution_temperature("MC", celsius=(1200, 1320))
    assert {"301", "303"} <= {w.code[-3:] for w in gone.warnings}
    assert "! [gibbsteel.warning.303]" in str(gone)
    match = gs.matching_temperature(reference=gone_reference(punch), steel=punch)
    assert match.warnings[0] == match.reference.warnings[0]
    assert f"! reference: [{match.warnings[0].code}]" in str(match)


def gone_reference(steel):
    return steel.soak(celsius=1240)


def test_a_wish_that_cannot_be(punch):
    never = "; give 0 to 100 wt%"
    carbon = "which 'C in the matrix' can never be"
    assert problem(punch.temperature_for, matrix_carbon=-0.5) == (
        f"[gibbsteel.input.340] value: is -0.5, {carbon}{never}"
    )
    assert problem(
        punch.composition_for, "C", matrix_carbon=101, percent=(0.3, 0.8), celsius=1100
    ) == (f"[gibbsteel.input.340] value: is 101, {carbon}{never}")


def test_a_jump_is_no_crossing():
    steel = gs.Steel(C=1.0, Cr=5, V=2, Si=0.4, Mn=0.4, Mo=1.9, name="x")
    table = gs.Quantity(
        "allowance",
        "vol%",
        lambda state: 9.5 if state.analysis.modelled["Mo"] < 2 else 35.0,
    )
    search = steel.composition_for("Mo", table, 20, percent=(1, 4), celsius=1040)
    assert repr(search) == (
        "<x with 1 to 4 wt% Mo at 1040 C, long-hold limit: jumps over: allowance "
        "jumps over 20 vol% at 2.00 wt% Mo (from 9.5 to 35 vol%)>"
    )
    (jump,) = search.crossings
    assert (search.status, jump.kind) == ("jumps over", "jump")
    assert jump.below < 20 < jump.above and jump.value == jump.below
    assert repr(jump) == "<CompositionCrossing at 2.0000 wt%: jump, rising>"
    plain = gs.Steel(C=0.4, name="plain")
    over = plain.temperature_for(volume_percent={"ferrite": 70}, celsius=(700, 800))
    assert over.status == "jumps over"
    frame = over.to_frame()
    assert list(frame["kind"]) == ["jump"]
    assert frame["value_below"][0] > 70 > frame["value_above"][0]
    assert frame.attrs["status"] == "jumps over"


def test_an_estimate_that_goes_over_to_another_family_has_a_crossing():
    steel = gs.Steel(C=1.0, Cr=5, V=2, Si=0.4, Mn=0.4, Mo=1.9, name="x")
    retained = gs.quantities.retained_austenite()
    search = steel.composition_for("Mo", retained, 20, percent=(1, 4), celsius=1040)
    (crossing,) = search.crossings
    assert (search.status, crossing.kind) == ("found", "crossing")
    found = steel.changed(Mo=crossing.weight_percent).soak(celsius=1040)
    assert retained.value(found) == pytest.approx(20, abs=1e-3)


def test_every_way_to_name_a_target(plain):
    span = {"celsius": (740, 780)}
    for keywords in (
        {"matrix_carbon": 0.4},
        {"matrix": {"C": 0.4}},
        {"carbide_volume_percent": 0},
        {"carbide_mass_percent": 0},
        {"volume_percent": {"ferrite": 20}},
        {"mass_percent": {"ferrite": 20}},
        {"carbon_activity": 0.6},
        {"quantity": gs.quantities.carbon_activity(), "value": 0.6},
        {"quantity": lambda state: state.carbon_activity, "value": 0.6},
    ):
        search = plain.temperature_for(**keywords, **span)
        assert search.status in ("found", "never reached", "always equal")
    assert search.crossings[0].state.carbon_activity == pytest.approx(0.6, abs=1e-6)
    assert search.quantity == "<lambda>"


def test_targets_that_are_none(plain):
    head = "[gibbsteel.input.255] target: "
    one = "; give exactly one, for instance matrix_carbon=0.50"
    wrong = plain.temperature_for
    assert problem(wrong) == head + "got none" + one
    assert problem(wrong, matrix_carbon=0.5, carbon_activity=0.5) == (
        head + "got matrix_carbon= and carbon_activity=" + one
    )
    assert problem(wrong, gs.quantities.carbon_activity()) == (
        head + "got a quantity without value=; give the value: value=0.5"
    )
    assert problem(wrong, value=1) == head + "got value= without a quantity" + one
    assert problem(wrong, "carbon", 0.5) == (
        head + "'carbon' is neither a Quantity nor a function of a State; give for "
        'instance gibbsteel.quantities.matrix("C")'
    )
    assert problem(wrong, matrix={"C": 0.5, "Cr": 1}) == (
        head + "matrix={'C': 0.5, 'Cr': 1} is not one name and its value; give "
        '{"Cr": 4.4}'
    )
    assert problem(wrong, matrix_carbon="0.5") == (
        head + "matrix_carbon='0.5' is not a number; give a number"
    )


def test_ranges_that_are_none(plain):
    head = "[gibbsteel.input.211] temperature: "
    pair = "; give the low and the high end, for instance celsius=(700, 1250)"
    wrong = plain.phase_changes
    assert problem(wrong, celsius=900) == (
        head + "celsius=900 is no pair of temperatures" + pair
    )
    assert problem(wrong, celsius=(700, 800, 900)) == (
        head + "celsius=(700, 800, 900) is no pair of temperatures" + pair
    )
    assert problem(wrong, celsius=(900, 700)) == (
        "[gibbsteel.input.250] range: goes from 900.0 C to 700.0 C; give the lower "
        "temperature first"
    )
    assert problem(wrong, search=gs.SearchOptions(tolerance=0)) == (
        "[gibbsteel.input.251] tolerance: is 0; give 0.0001 to 1 [K]"
    )


def test_matching_temperature():
    lean = gs.Steel(C=0.9, name="lean").soak(celsius=780)
    rich = gs.Steel(C=1.2, name="rich")
    match = gs.matching_temperature(reference=lean, steel=rich, celsius=(720, 950))
    (kelvin,) = match.temperatures_kelvin
    assert match.searched_celsius == pytest.approx((720, 950))
    there = rich.soak(kelvin=kelvin)
    assert there.matrix.weight_percent["C"] == pytest.approx(match.value, abs=1e-6)
    assert again(match).search.text == match.search.text
    assert str(match).startswith("reference: lean at 780 C (C in the matrix")
    frame = match.to_frame()
    assert list(frame["reference"]) == ["lean"]


def test_hardening_window():
    steel = gs.Steel(C=0.8, name="plain")
    window = steel.hardening_window(celsius=(700, 900))
    assert (window.status, window.floor_rule) == ("found", "ferrite")
    floor, ceiling = window.celsius
    assert floor == pytest.approx(727, abs=2)  # Okamoto 1992
    assert (ceiling, window.ceiling_rule) == (None, "range")
    assert window.searched_celsius == pytest.approx((700, 900))
    assert repr(window) == (
        "<plain, hardening window, long-hold limit: from 727 C; floor set by: no "
        "ferrite alone; no ceiling: nothing that was given sets one up to 900 C, where "
        "the search ended>"
    )
    assert "ferrite" not in window.at_floor
    none = steel.hardening_window(
        celsius=(700, 900), hardness=lambda state: 60.0, least_hardness=64
    )
    assert (none.status, none.celsius) == ("no window", None)
    assert str(again(none)) == str(none)
    frame = window.to_frame()
    assert set(frame["rule"]) == {"ferrite", "all"}
    assert list(frame["low_C"]) == pytest.approx([floor, floor])
    assert frame["high_C"].isna().all() and frame["high_F"].isna().all()
    assert frame.attrs["remarks"] == window.remarks
    assert frame.attrs["searched_C"] == window.searched_celsius
    assert problem(steel.hardening_window, solidus_margin=-5) == (
        "[gibbsteel.input.254] solidus_margin: is -5; give 0 or more [K]"
    )


def test_rules_of_a_window_are_never_dropped():
    """`least_hardness` alone is a rule on the estimate, half a rule is refused."""
    steel = gs.Steel({"C": 0.4, "Cr": 5, "Mo": 1.35, "V": 1, "Si": 1}, name="H13")
    alone = steel.hardening_window(least_hardness=52)
    both = steel.hardening_window(
        hardness=gs.quantities.hardness_hrc(), least_hardness=52
    )
    assert alone.text == both.text
    assert alone.floor_rule == "hardness"
    # Below 20 HRC the scale has no numbers, but there the other rule is broken.
    assert alone.gaps == [] and "Not known" not in str(alone)
    search = steel.temperature_for(gs.quantities.hardness_hrc(), 52)
    assert search.complete and search.gaps == []
    assert [stretch.reason for stretch in search.no_value] == [
        "no austenite",
        "the quantity has no value there",
    ]
    soft = steel.hardening_window(no_ferrite=False, least_hardness=52)
    (gap,) = soft.gaps
    assert gap.reason == "the quantity has no value there"
    low, high = gap.celsius
    assert soft.remarks[0] == (
        f"Not known and left out: {low:.2f} to {high:.2f} C (the quantity has no value "
        "there)."
    )
    hardness = gs.quantities.hardness_hrc().value(alone.at_floor)
    assert hardness == pytest.approx(52, abs=1e-3)
    assert problem(steel.hardening_window, hardness=gs.quantities.hardness_hrc()) == (
        "[gibbsteel.input.285] hardness: is 'as-quenched hardness' without a least "
        "value; give least_hardness in HRC"
    )
    assert problem(steel.hardening_window, pinning_kind="MC") == (
        "[gibbsteel.input.285] pinning_kind: is 'MC' without a least volume; give "
        "least_pinning_volume_percent, for instance 1"
    )


def test_pickles(changes, found):
    copy = again(changes)
    assert str(copy) == str(changes)
    assert copy.fields == changes.fields
    assert copy.changes[0].below.matrix == changes.changes[0].below.matrix
    assert str(again(found)) == str(found)
    assert again(found).crossings[0].state.matrix == found.crossings[0].state.matrix
    assert again(gs.SearchOptions(tolerance=0.1)) == gs.SearchOptions(tolerance=0.1)
    dissolution = changes.dissolution("M3C")
    assert again(dissolution).warnings == dissolution.warnings
    assert str(again(dissolution)) == str(dissolution)


def test_frames(changes, found):
    frame = changes.to_frame()
    assert list(frame["disappears"]) == ["M3C", "ferrite"]
    assert frame["phases_above"][1] == "austenite"
    assert frame.attrs["stopped"] == ""
    crossing = found.to_frame()
    assert list(crossing["kind"]) == ["crossing"]
    assert crossing.attrs["status"] == "found"


def test_stopping(plain):
    counts = []

    def stop(done):
        counts.append(done)
        return done < 3

    part = plain.phase_changes(celsius=(700, 850), progress=stop)
    assert counts == [1, 2, 3]
    assert part.stopped == "cancelled"
    assert not part.complete

    def interrupt(done):
        raise KeyboardInterrupt

    assert plain.phase_changes(celsius=(700, 850), progress=interrupt).stopped == (
        "cancelled"
    )


def test_an_exception_of_a_quantity_reaches_the_caller(plain):
    def fails(state):
        raise ZeroDivisionError("of the function")

    with pytest.raises(ZeroDivisionError, match="of the function"):
        plain.temperature_for(fails, 1.0, celsius=(700, 720))


def test_options_of_a_soak_count(plain):
    graphite = plain.phase_changes(celsius=(700, 780), graphite=True)
    assert "graphite" in graphite.kinds
    without = plain.phase_changes(celsius=(700, 780), suppressed="M3C")
    assert "M3C" not in without.kinds
