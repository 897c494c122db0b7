"""The page that is filed with a heat: the same in Python and C++, saved, pickled."""

import pickle

import gibbsteel as gs
import pytest
from test_display import read


@pytest.fixture(scope="module")
def report(state):
    return state.report()


def test_the_text_is_what_prints(report, state):
    # tests/unit/report_test.cpp compares whole pages; here: the page of this state.
    assert report.text == str(report)
    assert report.text.startswith("punch heat 12 at 1150 C (2102 F), long-hold limit\n")
    assert repr(report) == f"<Report: {report.title}>"
    assert [section.title for section in report.sections] == [
        "Certificate as given, weight percent",
        "Basis",
        "Carbides",
        "Composition of the carbides",
        "Matrix",
        "Estimates after a quench to 20 C (68 F)",
        "How well solved",
        "Origin of the numbers",
    ]
    carbides = report.sections[2].table
    assert [row[0] for row in carbides] == ["", *state.carbides, "all carbides"]
    assert carbides[1][1] == f"{state['M6C'].volume_percent:.2f}"
    assert carbides[-1][2] == f"{state.carbide_mass_percent:.2f}"
    matrix = report.sections[4].table
    assert matrix[1][2] == f"{state.matrix.weight_percent['C']:.3f}"
    assert state.parameters_hash in report.text
    assert report.warnings == [str(warning) for warning in state.warnings]


def test_html_holds_every_number_of_the_text(report):
    shown = read(report.html).texts
    for section in report.sections:
        assert section.title in shown
        for row in section.table:
            assert {cell for cell in row if cell} <= set(shown)
        for line in section.lines:
            assert line in shown


def test_estimates_of_a_quench_stand_in_their_section(state):
    estimates = state.hardening(coldest_celsius=-80)
    page = state.report(coldest_celsius=-80)
    (section,) = [s for s in page.sections if s.title.startswith("Estimates")]
    assert section.title == "Estimates after a quench to -80 C (-112 F)"
    shown = {(row[0], row[4]): row[1:4] for row in section.table[1:]}
    for each, digits in (
        (estimates.martensite_start, 0),
        (estimates.retained_austenite, 1),
        (estimates.hardness_hv, 0),
        (estimates.hardness_hrc, 1),
    ):
        numbers = [f"{x:.{digits}f}" for x in (each.value, each.low, each.high)]
        assert shown[(each.name, each.unit)] == numbers
        assert any(each.source in line for line in section.lines)
    with pytest.raises(TypeError, match="coldest"):
        state.report(coldest=20)


def test_a_sweep_has_the_same_estimates_by_temperature(high_speed):
    sweep = high_speed.sweep(celsius=[1000, 1100, 1200])
    (section,) = [
        s
        for s in sweep.report(coldest_celsius=-80, particle_diameter=1.0).sections
        if s.title == "Estimates after a quench to -80 C (-112 F)"
    ]
    names = ["Ms, C", "RA, vol%", "HRC", "grain, um"]
    assert section.table[0][2::3] == names
    assert section.table[0][3:5] == ["low", "high"]
    for row, state in zip(section.table[1:], sweep, strict=True):
        found = state.hardening(coldest_celsius=-80, particle_diameter=1.0)
        for at, (each, digits) in enumerate(
            (
                (found.martensite_start, 0),
                (found.retained_austenite, 1),
                (found.hardness_hrc, 1),
                (found.grain_diameter, 1),
            )
        ):
            numbers = [f"{x:.{digits}f}" for x in (each.value, each.low, each.high)]
            assert row[2 + 3 * at : 5 + 3 * at] == numbers
    with pytest.raises(gs.InputError, match="gibbsteel.input.243"):
        sweep.report(coldest_celsius=1100)
    with pytest.raises(TypeError, match="coldest"):
        sweep.report(coldest=20)


def test_without_austenite_there_is_nothing_to_estimate():
    page = gs.Steel(C=0.8).soak(celsius=700).report()
    (section,) = [s for s in page.sections if s.title.startswith("Estimates")]
    assert section.table == []
    assert section.lines == [
        "no martensite start: there is no austenite: nothing hardens"
    ]


def test_a_state_with_measured_carbide_is_no_long_hold_limit(punch):
    measured = punch.soak(celsius=1050).with_measured_carbide({"MC": 2.0}).state
    page = measured.report()
    words = "short soak with measured carbide"
    assert words in page.title and "long-hold limit" not in page.title
    assert "long-hold limit (true equilibrium)" not in page.text.split("Warnings")[0]
    assert words in measured._repr_html_()
    assert words in measured.to_frame().attrs["limit"]


def test_saved_pages(report, tmp_path):
    report.save(tmp_path / "heat.txt")
    assert (tmp_path / "heat.txt").read_text(encoding="utf-8") == report.text
    report.save(str(tmp_path / "heat.html"))
    page = (tmp_path / "heat.html").read_text(encoding="utf-8")
    assert page.startswith("<!DOCTYPE html>\n") and report.html in page
    assert "http" not in page and "<script" not in page
    read(page.partition("\n")[2])


def test_only_two_kinds_of_file(report, tmp_path):
    with pytest.raises(gs.InputError) as error:
        report.save(tmp_path / "heat7.doc")
    assert str(error.value) == (
        "[gibbsteel.input.291] path: the file name 'heat7.doc' ends in neither .txt "
        'nor .html; give a name such as "heat7.html"'
    )
    assert list(tmp_path.iterdir()) == []


def test_reports_pickle_and_compare(report, state, high_speed):
    assert pickle.loads(pickle.dumps(report)) == report == state.report()
    assert report != high_speed.soak(celsius=1000).report()
    assert report != "report" and report.sections[0] != report.sections[1]
    with pytest.raises(AttributeError):
        report.title = "another"
    report.sections.clear()
    assert len(report.sections) == 8


def test_suppressed_phases_are_on_record(punch):
    assert punch.soak(celsius=1000).suppressed == ["graphite"]
    assert punch.soak(celsius=1000, graphite=True).suppressed == []
    state = punch.soak(celsius=1000, suppressed=["M6C"])
    assert set(state.suppressed) == {"M6C", "graphite"}
    assert pickle.loads(pickle.dumps(state)).suppressed == state.suppressed
    assert "phases not allowed to form: " in state.report().text
