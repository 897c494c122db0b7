"""How many published values the bands of hardening estimates hold, as
thermo_data/TRUST.md counts them."""

from pathlib import Path

import pytest
from evaluate import hardening, record_file

PAGE = Path(__file__).resolve().parents[2] / "thermo_data" / "TRUST.md"
NOT_BY_LONG_HOLD = {"austenite_wt", "celsius_range", "measured_carbide", "minutes"}
RECORDS = record_file.records()


def is_held(record):
    """Whether the band and the published value, or its range, have a part in common."""
    band = hardening.estimate(record)
    scale = 100.0 if band.unit == "vol%" else 1.0
    published = record["value"]
    low, high = published if isinstance(published, list) else (published, published)
    return band.low <= scale * high and scale * low <= band.high


def long_held(quantity):
    return [
        record
        for record in RECORDS
        if record["quantity"] == quantity and not NOT_BY_LONG_HOLD & set(record)
    ]


def timed(record):
    """The same measurement by its minutes, or the record itself where there is none."""
    names = {f"{record['id']}:minutes", f"{record['id']}-minutes"}
    return next((other for other in RECORDS if other["id"] in names), record)


def counts(records):
    return f"{sum(map(is_held, records))} of {len(records)}"


@pytest.fixture(scope="module")
def page():
    return PAGE.read_text("utf-8")


@pytest.mark.parametrize(
    ("quantity", "row"),
    [
        ("martensite_start", "martensite starts"),
        ("retained_austenite", "amounts of retained austenite"),
    ],
)
def test_bands_hold_what_the_page_says(page, quantity, row):
    records = long_held(quantity)
    by_minutes = [timed(record) for record in records]
    assert by_minutes != records
    assert f"| {row} | {counts(records)} | {counts(by_minutes)} |" in page


def test_bands_of_hardness_hold_all(page):
    records = long_held("as_quenched_hardness")
    fitted = sum(record["fitted"] for record in records)
    by_minutes = counts([timed(record) for record in records])
    row = f"| hardnesses, {fitted} of them fitted to |"
    assert f"{row} {counts(records)} | {by_minutes} |" in page
