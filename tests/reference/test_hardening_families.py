"""The families of hardening_family.hpp are what their records say, no more."""

from math import isclose

import gibbsteel as gs
import hardening_families as fits
import hardness_offsets
import pytest
from evaluate import hardening, record_file

FAMILIES = gs.hardening_families()
each_family = pytest.mark.parametrize("family", FAMILIES, ids=lambda f: f.key)


@each_family
def test_martensite_start_follows_from_the_records(family):
    fitted = fits.fit_start(family)
    if fitted is None:
        assert (family.start_offset, family.start_records) == (0.0, 0)
        return
    offset, scatter, error, records = fitted
    assert abs(family.start_offset - offset) <= 0.51
    assert abs(family.start_scatter - scatter) <= 0.51
    assert abs(family.start_error - error) <= 0.51
    assert family.start_records == records


@each_family
def test_retained_austenite_follows_from_the_records(family):
    fitted = fits.fit_retained(family)
    if fitted is None:
        assert family.transformation_rate == 0.011  # as published
        assert family.retained_records == 0
        return
    rate, error, records = fitted
    assert isclose(family.transformation_rate, rate, abs_tol=0.00005)
    assert isclose(family.retained_error, error, abs_tol=0.005)
    assert family.retained_records == records


@each_family
def test_hardness_follows_from_the_records(family):
    fitted = hardness_offsets.fit(family)
    assert abs(family.hardness_offset - fitted.offset) <= 0.51
    assert abs(family.hardness_error - fitted.error) <= 0.51
    assert family.hardness_records == fitted.records
    assert family.hardness_steels == fitted.steels
    assert family.hardness_soaked == fitted.soaked


def test_steels_that_hardness_is_fitted_to_and_steels_held_back():
    steels = {
        (family.key, fitted): sorted(
            {r["steel"] for r in hardness_offsets.measurements(family, fitted)}
        )
        for family in FAMILIES
        for fitted in (True, False)
    }
    assert steels["high-speed", True] == [
        "AISI M2 (HS6-5-2)",
        "AISI M35 (HS6-5-2-5)",
        "AISI M42 (HS2-9-1-8)",
    ]
    assert steels["high-speed", False] == ["AISI M48", "AISI T15 (HS12-0-5-5)"]
    assert steels["stainless", True] == [
        "420 (0.30-0.40C)",
        "420 class 0.38-0.40C-13Cr",
    ]
    assert steels["stainless", False] == [
        "0.65C-13Cr razor-blade strip",
        "AISI 440A",
        "AISI 440B",
        "AISI 440C",
    ]
    used, free = (
        {steel for family in FAMILIES for steel in steels[family.key, fitted]}
        for fitted in (True, False)
    )
    assert used & free == set()  # never a part of the records of a steel
    assert len(used) == 7 and len(free) == 14


def test_the_mean_is_taken_over_the_measurements_of_a_steel_first(monkeypatch):
    offsets = {"a": [100.0, 120.0, 140.0], "b": [60.0]}
    monkeypatch.setattr(hardness_offsets, "by_steel", lambda family: offsets)
    assert hardness_offsets.fit(FAMILIES[0]).offset == 90.0


def test_a_measurement_with_known_austenite_and_by_a_soak_counts_once():
    found = [
        record["id"]
        for family in FAMILIES
        for record in hardness_offsets.measurements(family, fitted=True)
        if record["id"].startswith(("hss/M2-HRC-1205", "coldwork/D2", "coldwork/BRG"))
    ]
    assert found == [
        "hss/M2-HRC-1205:austenite",
        "hss/M2-HRC-1205:second",
        "coldwork/D2-09:austenite",
        "coldwork/BRG-12:austenite",
    ]


# Of the record of 420 with another steel or soak: ferrite beside the austenite, and
# austenite of which more than half stays.
FERRITE = {"composition_wt": {"C": 0.2, "Cr": 17.0}, "celsius": 1000}
STAYS = {"composition_wt": {"C": 2.1, "Cr": 12.0, "Mn": 2.0}, "celsius": 1050}


@pytest.mark.parametrize("changes", [{}, FERRITE, STAYS], ids=["", "ferrite", "stays"])
def test_the_offset_that_a_record_asks_for_makes_its_hardness(changes):
    """With what counts of the offset of the family, in the chain of the library."""
    record = next(r for r in record_file.records() if r["id"] == "coldwork/SS-09")
    record = {**record, **changes}
    bare, counted = hardening.without_offset(record)
    assert (counted == 1.0) is (changes == {})
    key = hardening.family_key(record)
    family = next(f for f in FAMILIES if f.key == key)
    assert family.hardness_offset > 0.0
    whole = gs.hrc_from_hv(bare + counted * family.hardness_offset)
    assert isclose(whole, hardening.estimate(record).value, rel_tol=1e-12)
    asked = hardness_offsets.asked_for({**record, "value": whole})
    assert isclose(asked, family.hardness_offset, abs_tol=1e-6)


def test_the_table_is_printed(capsys):
    fits.main()
    printed = capsys.readouterr().out
    for family in FAMILIES:
        assert f"({family.key})" in printed
    assert "held back: 11, rms" in printed
    assert "mean of AISI M35 (HS6-5-2-5): +" in printed
    assert "hardness_soaked = 9 (library: 9)" in printed


def test_bands_hold_about_two_in_three_measurements():
    """Through the whole chain, so the error of the computed austenite is in it."""
    counts = [fits.in_band(quantity) for quantity in fits.QUANTITIES]
    inside, total = (sum(column) for column in zip(*counts, strict=True))
    print(f"{inside} of {total} in the band")
    assert total == 51
    assert inside >= 2 * total / 3


def test_what_is_printed_of_the_bands_of_hardness_is_counted():
    inside, total = fits.in_band("as_quenched_hardness")
    fitted = sum(
        record["fitted"]
        for record in fits.record_file.records()
        if record["quantity"] == "as_quenched_hardness"
        and not fits.NOT_SOAKED & set(record)
    )
    assert inside == total
    page = " ".join(str(gs.Steel(C=0.5).soak(celsius=900).hardening()).split())
    assert (
        "low to high: about two in three measurements, for this austenite; of hardness "
        f"all {total} that were compared, {fitted} of them fitted to"
    ) in page


def test_one_measurement_is_of_a_quench_below_room_temperature():
    cold = [
        record["id"]
        for record in fits.record_file.records()
        if record.get("coldest_celsius", fits.COLDEST) < fits.COLDEST
    ]
    assert cold == ["coldwork/SS-14"]
    record = next(r for r in fits.record_file.records() if r["id"] == cold[0])
    assert record["quantity"] == "as_quenched_hardness"
    estimates = gs.Steel(C=0.5).soak(celsius=900).hardening(coldest_celsius=-75)
    assert estimates.retained_austenite.remarks[-1] == (
        "below 20 C no measurement was compared"
    )
    assert estimates.hardness_hrc.remarks[-1] == (
        "below 20 C one measurement was compared, a 0.65C-13Cr steel at "
        f"{record['coldest_celsius']} C"
    )
    assert record["steel"].startswith("0.65C-13Cr")
