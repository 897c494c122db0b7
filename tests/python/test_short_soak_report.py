"""What is filed of a short soak: report, table and file with count and band."""

import csv
import math

import gibbsteel as gs
import pytest
from test_display import read


@pytest.fixture(scope="module")
def long_hold():
    steel = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25}, name="AISI 52100")
    return steel.soak(celsius=845)


@pytest.fixture(scope="module")
def timed(long_hold):
    return long_hold.timed_soak(minutes=30)


@pytest.fixture(scope="module")
def counted(long_hold):
    return long_hold.with_measured_carbide([gs.MeasuredCarbide("M3C", 6.0, 0.4, 0.2)])


def table_of(page, title):
    (section,) = [s for s in page.sections if s.title == title]
    return section.table


def test_the_page_holds_the_band(timed, counted):
    # tests/unit/short_soak_report_test.cpp compares whole sections.
    for soak in (timed, counted):
        page = soak.report(coldest_celsius=-80)
        band = table_of(page, "Band of the matrix")
        carbon = soak.band("C")
        numbers = (carbon.value, carbon.low, carbon.high, carbon.long_hold)
        assert band[1] == ["C", *(f"{number:.3f}" for number in numbers)]
        assert f"{carbon.low:.3f}" in read(page.html).texts
        assert any("-80 C" in section.title for section in page.sections)
    assert table_of(timed.report(), "Carbide as computed")[1] == ["M3C", "5.99", "2.04"]
    count = table_of(counted.report(), "Carbide as counted")[1]
    assert count == ["M3C", "6.00", "0.40", "2.04", "845 C"]
    with pytest.raises(TypeError, match="coldest"):
        timed.report(coldest=20)


def test_the_table_holds_count_and_band(counted):
    pytest.importorskip("pandas")
    frame = counted.to_frame()
    assert list(frame["name"]) == ["M3C", *(band.element for band in counted.bands)]
    carbide = frame.iloc[0]
    assert (carbide["part"], carbide["unit"], carbide["kept"]) == (
        "carbide",
        "vol%",
        False,
    )
    numbers = ["value", "long_hold", "standard_deviation", "smallest_counted_um"]
    (entered,) = counted.carbides
    assert list(carbide[numbers]) == [6.0, entered.long_hold_volume, 0.4, 0.2]
    assert math.isnan(carbide["low"]) and math.isnan(carbide["high"])
    rows = frame[frame["part"] == "matrix"].set_index("name")
    for band in counted.bands:
        row = rows.loc[band.element]
        for name in ("value", "low", "high", "long_hold", "standard_deviation"):
            assert row[name] == getattr(band, name), (band.element, name)
    assert set(rows["unit"]) == {"wt%"}
    assert frame.attrs["limit"] == counted.state.to_frame().attrs["limit"]
    assert frame.attrs["parameters_hash"] == counted.state.parameters_hash
    assert frame.attrs["units"] == {
        "temperature_C": "degC",
        "temperature_F": "degF",
        "smallest_counted_um": "um",
    }


def test_minutes_have_a_unit_and_what_is_not_known_is_not_zero(timed):
    pytest.importorskip("pandas")
    frame = timed.to_frame()
    assert frame.attrs["units"]["soak_minutes"] == "min"
    assert timed.state.to_frame().attrs["units"]["soak_minutes"] == "min"
    assert set(frame["soak_minutes"]) == {30.0}
    assert frame["standard_deviation"].isna().all()
    assert list(frame)[-2:] == ["usable", "warnings"]


def test_csv(timed, tmp_path):
    pandas = pytest.importorskip("pandas")
    timed.to_csv(tmp_path / "soak.csv")
    lines = (tmp_path / "soak.csv").read_text(encoding="utf-8").splitlines()
    header = [line for line in lines if line.startswith("# ")]
    assert "# limit: timed soak of 30 min, matrix by mass balance" in header
    assert header[-1] == f"# {timed.state.warnings[0]}"
    rows = list(csv.DictReader(lines[len(header) :]))
    frame = timed.to_frame()
    assert list(rows[0]) == list(frame) and len(rows) == len(frame)
    again = pandas.read_csv(
        tmp_path / "soak.csv", comment="#", float_precision="round_trip"
    )
    for name in ("value", "low", "high", "long_hold"):
        assert again[name].equals(frame[name]), name


def test_a_comparison_says_where_the_band_is(long_hold, timed, counted):
    text = " ".join(str(gs.compare([long_hold, timed, counted])).split())
    assert "to a factor of three in time: see the band of the ShortSoak." in text
    assert "the matrix is what it leaves (its band: see the ShortSoak);" in text
