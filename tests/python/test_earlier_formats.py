"""Pickles of the format before fields were appended are read and say what they said."""

import json
import math
import pickle
import pickletools
from pathlib import Path

import gibbsteel as gs
import pytest

FOLDER = Path(__file__).with_name("earlier_formats")
TOLD = json.loads((FOLDER / "told.json").read_text("utf-8"))
PICKLES = sorted(FOLDER.glob("*.pickle"))
NOW = dict.fromkeys(
    [
        "comparison",
        "design",
        "dissolution",
        "hardening_estimates",
        "hardening_window",
        "screen_table",
        "state",
    ],
    3,
)
NOW |= {"composition_search": 4, "temperature_search": 4}
NOW |= {"matching_temperature": 1}  # what it holds has changed, it has not
every = pytest.mark.parametrize("path", PICKLES, ids=[p.stem for p in PICKLES])


def marks(data):
    found = [arg for _, arg, _ in pickletools.genops(data) if isinstance(arg, str)]
    return [text for text in found if text.startswith("gibbsteel ")]


def test_there_is_one_of_each_class():
    assert [path.stem for path in PICKLES] == sorted(TOLD)


@every
def test_it_says_what_it_said(path):
    data = path.read_bytes()
    assert {mark[-2:] for mark in marks(data)} == {" 1"}
    value = pickle.loads(data)
    for name, told in TOLD[path.stem].items():
        now = getattr(value, name)
        if isinstance(told, list):
            now = list(now)
        assert now == told or now == pytest.approx(told, rel=1e-12), name


@every
def test_it_is_written_in_the_format_of_now(path):
    value = pickle.loads(path.read_bytes())
    data = pickle.dumps(value)
    now = NOW.get(path.stem, 2)
    assert f"gibbsteel {type(value).__name__} {now}" in marks(data)
    assert str(pickle.loads(data)) == str(value)


def test_what_the_format_did_not_hold_is_not_made_up():
    path = FOLDER / "dissolution.pickle"
    found = pickle.loads(path.read_bytes())
    assert repr(found) == (
        "<Dissolution long-hold limit: found: M6C is gone above 1150 C; M6C is present "
        "from 1000 C (low end of the range) to 1150 C>"
    )
    assert all(math.isnan(degrees) for degrees in found.searched_celsius)
    assert (found.steel, found.parameters, found.warnings) == ("", "", [])
    assert "analysis" not in str(found) and "Before hardening" in str(found)
    fresh = gs.Steel(C=0.9, Cr=4, Mo=5).dissolution_temperature("M6C")
    assert "analysis, wt%: 0.9C 4Cr 5Mo, balance Fe\n" in str(fresh)


SECOND = FOLDER / "format_2"


@pytest.mark.parametrize("folder", [FOLDER, SECOND], ids=["format 1", "format 2"])
def test_estimates_do_not_say_what_soak_they_do_not_know(folder):
    found = pickle.loads((folder / "hardening_estimates.pickle").read_bytes())
    assert " to 20 C (68 F): martensite start " in repr(found)
    assert " to 20 C (68 F), estimates\nfamily: " in str(found)
    assert (found.parameters, found.parameters_hash) == ("", "")
    assert len(found.analysis.given) == 0


def test_rows_of_a_screen_carried_that_the_families_differ():
    found = pickle.loads((SECOND / "screen_table.pickle").read_bytes())
    assert found.families == found.table_warnings == []
    assert found.count_warnings()["gibbsteel.warning.357"] == 2
    assert all(int(bits) >> 57 & 1 for bits in found.warning_bits)
    assert found.to_frame()["warnings"].str.endswith("357").all()


FOUND = {
    "format_3/composition_search.pickle": (
        "CompositionSearch",
        "as-quenched hardness is 64 HRC at 0.753 wt% C (rising)",
        (0.7530972443895452, 0.0, "crossing", True, 64.0),
    ),
    "format_3/temperature_search.pickle": (
        "TemperatureSearch",
        "as-quenched hardness is 64 HRC at 1078 C (rising, at least +-16 C)",
        (1078.059000349188, 0.0, "crossing", True, 64.0),
    ),
}


def said(crossing):
    at = getattr(crossing, "weight_percent", None) or crossing.celsius
    kind = crossing.kind
    return at, crossing.bracket_width, kind, crossing.rising, crossing.value


def unknown(ends):
    return len(ends) == 2 and all(math.isnan(end) for end in ends)


@pytest.mark.parametrize("name", FOUND)
def test_searches_did_not_hold_the_band_of_an_estimate(name):
    kind, text, crossing = FOUND[name]
    data = (FOLDER / name).read_bytes()
    assert f"gibbsteel {kind} 3" in marks(data)
    found = pickle.loads(data)
    assert found.text == text
    assert [said(one) for one in found.crossings] == [crossing]
    assert unknown(found.band_of_nearest) and unknown(found.crossings[0].band)
    assert math.isnan(found.crossings[0].slope)
    again = pickle.dumps(found)
    assert f"gibbsteel {kind} 4" in marks(again)
    assert str(pickle.loads(again)) == str(found)


def test_a_crossing_did_not_hold_its_slope():
    data = (SECOND / "crossing.pickle").read_bytes()
    assert "gibbsteel Crossing 2" in marks(data)
    found = pickle.loads(data)
    assert said(found) == (1169.0837158682443, 0.0, "crossing", True, 0.5)
    assert found.uncertainty_at_least == 12.567593974262715
    assert math.isnan(found.slope) and unknown(found.band)
    assert "gibbsteel Crossing 3" in marks(pickle.dumps(found))


def test_ends_of_minutes_were_in_the_text_alone():
    found = pickle.loads((FOLDER / "minutes_for.pickle").read_bytes())
    assert math.isnan(found.low_minutes) and math.isnan(found.high_minutes)
    assert "37 min" in found.text
