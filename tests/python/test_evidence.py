"""Published measurements near a soak, and measurements in files."""

import json
import pickle
from pathlib import Path

import gibbsteel as gs
import pytest

STEEL = gs.Steel(C=0.55, Cr=4.5, Mo=2.75, W=2.0, V=1.0, name="punch heat 7")
M2 = gs.Steel(C=0.88, Cr=4.2, Mo=5.0, W=6.3, V=1.9, Mn=0.3, Si=0.3, name="heat 9")
PAGE = Path(__file__).parents[2] / "thermo_data" / "MEASUREMENTS.md"


def test_nearest_first_and_so_many_soaks():
    found = M2.evidence(celsius=1210, most_soaks=3)
    distances = [row.distance for row in found.rows]
    assert distances == sorted(distances)
    assert {row.steel for row in found.rows} == {"AISI M2 (HS6-5-2)"}
    assert len({(row.celsius, tuple(row.weight_percent)) for row in found.rows}) == 3
    assert (found.celsius, found.nearest) == (1210, distances[0])
    assert found.measurements == len(gs.published_measurements()) == 137


def test_numbers_are_those_of_the_measured_steel():
    row = next(
        r
        for r in M2.evidence(celsius=1220, most_soaks=5).rows
        if r.record == "hss/M2-H-matrix-W"
    )
    state = gs.Steel(row.weight_percent).soak(celsius=row.celsius)
    assert row.computed == state.matrix.weight_percent["W"]
    assert row.miss == pytest.approx((row.computed - 2.0) / 0.4)
    assert not row.met and row.fitted_to and row.from_memory
    assert row.remark.startswith("File: tungsten in the matrix of M2 high")


def test_the_parameter_set_is_that_of_the_steel():
    layer = gs.default_parameters("iron_as_measured")
    shipped = M2.evidence(celsius=1220, most_soaks=3)
    other = M2.with_parameters(layer).evidence(celsius=1220, most_soaks=3)
    assert [r.record for r in other.rows] == [r.record for r in shipped.rows]
    assert all(a.computed != b.computed for a, b in zip(other.rows, shipped.rows))
    assert other.parameters == layer.title


def test_far_from_everything_it_says_so():
    assert repr(STEEL.evidence(celsius=1120)) == (
        "<punch heat 7 at 1120 C, long-hold limit: no measurement is near this soak: "
        "how far off the numbers are is not known; nearest AISI M2 (HS6-5-2), 3.4 away "
        "(W)>"
    )


def test_table():
    found = M2.evidence(fahrenheit=2200, most_soaks=4)
    frame = found.to_frame()
    assert len(frame) == len(found) == len(found.rows)
    assert list(frame["record"]) == [row.record for row in found.rows]
    assert frame["met"].sum() == found.met
    assert frame.attrs["parameters"] == M2.parameters.title


def test_pickle():
    found = M2.evidence(celsius=1210)
    assert pickle.loads(pickle.dumps(found)) == found
    one = gs.published_measurements()[0]
    back = pickle.loads(pickle.dumps(one))
    assert (back.source, back.remark, back.confidence) == (
        one.source,
        one.remark,
        one.confidence,
    )
    assert repr(back) == repr(one) == (
        "<RecordedMeasurement bearing steel 1.1C-1.4Cr (52100 class), Cr in M3C [wt%] "
        "at 700 C: 7.21 +- 0.3>"
    )


def test_own_measurements(tmp_path):
    """The example of the page, as a file of one's own."""
    example = PAGE.read_text("utf-8").split("```json\n")[1].split("```")[0]
    whole = {
        "format": {"name": "gibbsteel measurement file", "version": 1},
        "title": "Counted in the shop",
        "licence": "CC0-1.0",
        "sources": {"book": "Shop book, page 3"},
        "measurements": [json.loads(example)],
    }
    file = tmp_path / "shop.json"
    file.write_text(json.dumps(whole), encoding="utf-8")
    own = gs.load_measurements(file)
    found = STEEL.evidence(celsius=1120, measurements=own)
    (row,) = found.rows
    assert (row.distance, row.source) == (0.0, "Shop book, page 3")
    assert row.computed == STEEL.soak(celsius=1120).carbide_volume_percent
    assert repr(found).startswith("<punch heat 7 at 1120 C, long-hold limit: measured ")


def test_the_page_counts_what_ships():
    known = gs.published_measurements()
    steels = {one.measurement.steel for one in known}
    text = " ".join(PAGE.read_text("utf-8").split())
    assert f"{len(known)} published numbers of {len(steels)} steels" in text


def test_they_go_into_a_calibration():
    chosen = [
        one.measurement
        for one in gs.published_measurements()
        if one.measurement.record.startswith("hss/M2-H-matrix")
    ]
    place = "/phases/M6C/energy/3/terms/1"
    fit = gs.calibrate(chosen, {place: 8000.0}, cross_validate=False)
    assert fit.status == "converged"
    assert len(fit.measurements) == len(chosen) == 5


def test_errors():
    with pytest.raises(gs.InputError) as error:
        M2.evidence(celsius=1210, most_soaks=0)
    assert str(error.value) == (
        "[gibbsteel.input.304] most_soaks: is 0; give a whole number from 1 to 1000"
    )
    for wrong, kind in (([0.47], "float"), (["M2"], "str")):
        with pytest.raises(gs.InputError) as error:
            M2.evidence(celsius=1210, measurements=wrong)
        assert str(error.value) == (
            f"[gibbsteel.input.220] measurements: is {kind}, not RecordedMeasurement; "
            "give RecordedMeasurement, as load_measurements() returns them, or "
            "Measurement, as measurement() makes them"
        )
    none = M2.evidence(celsius=1210, measurements=[])
    assert (none.rows, none.measurements) == ([], 0)
    with pytest.raises(gs.DataError) as error:
        gs.load_measurements("no-such-file.json")
    assert str(error.value) == (
        "[gibbsteel.data.101] no-such-file.json: there is no such file; give the path "
        "of a measurement file"
    )
