"""The measurements that ship are the records, and come out as the records do."""

import gibbsteel as gs
import pytest
import shipped_measurements
from evaluate import record_file

RECORDS = {r["id"]: r for r in record_file.records()}
PUBLISHED = gs.published_measurements()


def test_the_file_is_what_would_be_written():
    written = shipped_measurements.written()
    assert shipped_measurements.SHIPPED.read_text("utf-8") == written


def test_what_is_left_out_is_another_kind_of_record():
    """Of the records of steels, nothing else: the reason stands in `ships`."""
    shipped = {one.measurement.record for one in PUBLISHED}
    left = [r for r in RECORDS.values() if r["id"] not in shipped]
    steels = [r for r in left if not r["id"].startswith("systems/")]
    plain = [
        r["id"]
        for r in steels
        if r["comparison"] in ("within", "between")
        and r.get("celsius") is not None
        and not any(key in r for key in shipped_measurements.OTHER_SOAKS)
    ]
    kinds = sorted({RECORDS[i]["quantity"] for i in plain})
    assert kinds == [
        "atom_percent",
        "cell_volume",
        "density",
        "lattice_parameter",
        "volume_expansion",
        "volume_fraction_gained",
    ]


@pytest.mark.parametrize("one", PUBLISHED, ids=lambda one: one.measurement.record)
def test_it_comes_out_as_the_record_does(one, outcome_of):
    """The number by the quantity of the file, against the suite's own evaluation."""
    measured = one.measurement
    record = RECORDS[measured.record]
    judged = outcome_of(record)
    row = next(
        row
        for row in gs.Steel(measured.weight_percent)
        .evidence(celsius=measured.celsius, most_soaks=1, measurements=[one])
        .rows
    )
    factor = shipped_measurements.quantity_of(record)[1]
    assert row.computed == pytest.approx(judged.computed * factor, rel=1e-12)
    assert row.miss == pytest.approx(judged.miss, rel=1e-9, abs=1e-9)
    assert row.met == (judged.verdict == "pass")
    assert (one.from_memory, one.fitted_to, one.confidence, one.source) == (
        record["from_memory"],
        record["fitted"],
        record["confidence"],
        record["source"],
    )


def test_a_remark_that_names_another_record_says_what_stands_there():
    remarks = {one.measurement.record: one.remark for one in PUBLISHED}
    assert remarks["hss/M2-RA"] == (
        "Equation: the two records of the family ask for rates of 0.0057 and 0.0089 "
        "1/C; the mean misses both by about one uncertainty."
    )
    assert not any(": as " in remark for remark in remarks.values())
