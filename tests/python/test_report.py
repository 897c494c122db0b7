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
        "How it was found",
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


def test_estimates_get_their_section(state):
    rows = [("martensite start", 212.4, 190, 235, "C", "invented")]
    section = state.report(estimates=rows).sections[5]
    assert section.title == "Estimates from the matrix"
    assert section.table[1] == [
        "martensite start",
        "212",
        "190",
        "235",
        "C",
        "invented",
    ]
    assert state.report(estimates=rows, digits=1).sections[5].table[1][1] == "212.4"


def test_rows_of_estimates_that_are_not_complete_are_all_named(state):
    with pytest.raises(gs.InputError) as error:
        state.report(estimates=[("share", 1.0), ("Ms", "hot", 1, 2, "C", "invented")])
    remedy = "give (label, value, low, high, unit, source)"
    assert str(error.value) == (
        f"[gibbsteel.input.293] estimates[0]: is ('share', 1.0); {remedy}\n"
        "[gibbsteel.input.293] estimates[1]: is ('Ms', 'hot', 1, 2, 'C', 'invented'); "
        f"{remedy}"
    )


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
    assert len(report.sections) == 7


def test_suppressed_phases_are_on_record(punch):
    assert punch.soak(celsius=1000).suppressed == ["graphite"]
    assert punch.soak(celsius=1000, graphite=True).suppressed == []
    state = punch.soak(celsius=1000, suppressed=["M6C"])
    assert set(state.suppressed) == {"M6C", "graphite"}
    assert pickle.loads(pickle.dumps(state)).suppressed == state.suppressed
    assert "phases not allowed to form: " in state.report().text
