"""Warnings of hardening estimates stay with whatever takes them as quantities."""

import pickle

import gibbsteel as gs
import pytest

STEEL = gs.Steel(C=1.0, Cr=1.5, Mn=0.35, Si=0.25, name="bearing")
HARDNESS = gs.quantities.hardness_hrc()


def window():
    return STEEL.hardening_window(least_hardness=64)


def search():
    return STEEL.temperature_for(HARDNESS, 64, celsius=(700, 800))


def along_chromium():
    start = gs.quantities.martensite_start()
    wanted = start.value(STEEL.soak(celsius=850))
    return STEEL.composition_for("Cr", start, wanted, percent=(1.0, 1.8), celsius=850)


def comparison():
    return gs.compare([STEEL.soak(celsius=850)], quantities=[HARDNESS])


def result_of_design():
    target = gs.target(HARDNESS, at_least=60, celsius=850)
    return gs.design(STEEL, vary={"Cr": (1.2, 1.8)}, targets=target)


@pytest.mark.parametrize(
    "make", [window, search, along_chromium, comparison, result_of_design]
)
def test_a_soak_of_minutes_is_warned_of_before_and_after_pickling(make):
    result = make()
    text = next(w.text for w in result.warnings if w.code == "gibbsteel.warning.336")
    assert text.startswith("A soak of minutes can leave carbide of such a steel")
    copy = pickle.loads(pickle.dumps(result))
    assert copy.warnings == result.warnings
    assert str(copy) == str(result)


def test_a_window_says_where_its_equations_are_extrapolated():
    heat = gs.Steel(C=0.55, Cr=4.5, Mo=2.75, W=2, V=1, name="heat 7")
    found = heat.hardening_window(least_hardness=60)
    own = [w for w in found.at_floor.hardening().warnings if w.code.endswith(".331")]
    assert [w for w in found.warnings if w.code.endswith(".331")][: len(own)] == own
    assert own


def test_a_screen_counts_them():
    table = gs.screen(
        [[1.0, 1.5], [0.4, 1.0]], ["C", "Cr"], celsius=860, quantities=HARDNESS
    )
    counted = table.count_warnings()
    assert counted["gibbsteel.warning.331"] == 1
    assert counted["gibbsteel.warning.336"] == 1
