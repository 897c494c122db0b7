"""Counts and averages of the accuracy page, on outcomes made up by hand."""

from math import inf, isnan

import pytest
from accuracy_page import aims, groups, hardening, markdown
from accuracy_page.figures import figures, fitted, independent, without_size, worst
from evaluate import record_file
from evaluate.verdict import Outcome


def outcome(computed, value=10.0, uncertainty=2.0, **changes):
    record = {
        "id": f"made-up/{computed}",
        "steel": "AISI M2 (HS6-5-2)",
        "quantity": "weight_percent",
        "phase": "matrix",
        "element": "W",
        "celsius": 1200,
        "comparison": "within",
        "value": value,
        "uncertainty": uncertainty,
        "fitted": False,
        "confidence": "high",
        **changes,
    }
    miss = (computed - value) / uncertainty if computed is not None else inf
    return Outcome(record, computed, miss, "pass" if abs(miss) <= 1.0 else "miss")


THREE = [outcome(11.0), outcome(7.0), outcome(16.0)]  # +0.5, -1.5, +3 uncertainties


def test_counts_and_averages():
    f = figures(THREE)
    assert (f.count, f.within_1, f.within_2, f.sized) == (3, 1, 2, 3)
    assert f.bias == pytest.approx((0.5 - 1.5 + 3.0) / 3)
    assert f.absolute == pytest.approx((0.5 + 1.5 + 3.0) / 3)
    assert f.in_unit == pytest.approx((1.0 + 3.0 + 6.0) / 3)


def test_a_miss_without_a_size_counts_and_is_not_averaged():
    absent = outcome(None)
    f = figures([*THREE, absent])
    assert (f.count, f.within_2, f.sized) == (4, 2, 3)
    assert f.absolute == figures(THREE).absolute
    assert without_size([*THREE, absent]) == [absent]
    assert isnan(figures([absent]).bias)


def test_fractions_are_shown_in_percent():
    amount = outcome(0.12, value=0.10, uncertainty=0.01, quantity="volume_fraction")
    assert figures([amount]).in_unit == pytest.approx(2.0)


def test_worst_and_fitted():
    used = outcome(30.0, fitted=True)
    assert [o.computed for o in worst([*THREE, used], 2)] == [30.0, 16.0]
    assert fitted([*THREE, used]) == [used]
    assert independent([*THREE, used]) == THREE


def test_aims_are_about_hardened_steels():
    annealed = outcome(11.0, celsius=750)
    pure = outcome(11.0, steel="Fe-W")
    unsure = outcome(11.0, confidence="low")
    rows = {row[0]: row for row in aims.rows([*THREE, annealed, pure, unsure])}
    _, aim, everything, free, sure = rows["W in the matrix [wt%]"]
    assert (aim, everything.count, free.count, sure.count) == (0.5, 4, 4, 3)


def start(computed, **changes):
    record = {"quantity": "martensite_start", "value": 200.0, "uncertainty": 10.0}
    return outcome(computed, **{**record, "family": "bearing", **changes})


def test_hardening_is_told_apart_by_how_the_austenite_is_known():
    known = start(212.0, austenite_wt={"C": 1.0}, explanation="Equation: because.")
    soaked = start(170.0, explanation="Chain, long-hold limit: because.")
    text = hardening.hardening_section([known, soaked])
    name = "| martensite start [C] | bearing |"
    assert f"{name} known | 1 | 12.0 | 12.0 | 0 | - | - |" in text
    assert f"{name} soaked | 1 | -30.0 | 30.0 | 0 | - | - |" in text
    assert "| Equation | 1 | `made-up/212.0` |" in text
    assert "| Chain | 1 | `made-up/170.0` |" in text


def test_a_soak_known_by_its_range_or_a_counted_carbide_is_no_part_of_the_aims():
    ranged = start(212.0, celsius_range=[800, 820], celsius=None)
    counted = start(212.0, celsius=860, measured_carbide={"M3C": 5.0})
    plain, low = start(212.0, celsius=860), start(212.0, celsius=790)
    rows = {row[0]: row for row in aims.rows([ranged, counted, plain, low])}
    assert rows["martensite start [C]"][2].count == 2


def test_every_record_has_one_family_and_one_quantity():
    records = record_file.records()
    names = [name for steels in groups.families().values() for name in steels]
    assert len(names) == len(set(names))
    assert set(names) == {record["steel"] for record in records}
    assert all(groups.quantity_of(record) for record in records)


def test_a_quantity_with_a_unit_holds_records_of_that_unit_only():
    same = {"C": "degC", "volume fraction": "fraction", "mass fraction": "fraction"}
    units = {}
    for record in record_file.records():
        group = groups.quantity_of(record)
        if groups.has_unit(group):
            unit = (
                record["unit"].split()[0] if "wt%" in record["unit"] else record["unit"]
            )
            units.setdefault(group, set()).add(same.get(unit, unit))
    mixed = {group: found for group, found in units.items() if len(found) > 1}
    assert mixed == {}


def test_numbers_as_text():
    assert markdown.number(-0.001) == "0.00"
    assert markdown.number(float("nan")) == "-"
    assert markdown.share(3, 4) == "3 of 4 (75 %)"
    assert markdown.share(0, 0) == "none"
