"""What a notebook shows: stored pages, well formed, escaped, self-contained, honest."""

from html.parser import HTMLParser

import gibbsteel as gs
import pytest
from gibbsteel.html_table import html_page, html_table, html_text
from golden_file import compare
from hypothesis import given, settings
from hypothesis import strategies as st

VOID = {"br", "meta"}
FORBIDDEN = {"script", "style", "link", "img", "iframe", "object", "svg", "a"}


class Reader(HTMLParser):
    """Fails on a tag that is not closed in order; collects tags, styles and text."""

    def __init__(self):
        super().__init__()
        self.open, self.tags, self.styles, self.texts = [], [], [], []

    def handle_starttag(self, tag, attributes):
        self.tags.append(tag)
        self.styles += [value for name, value in attributes if name == "style"]
        assert all(value is not None for _, value in attributes)
        assert not any(name.startswith("on") for name, _ in attributes)
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open and self.open.pop() == tag

    def handle_data(self, data):
        self.texts.append(data)


def read(html):
    reader = Reader()
    reader.feed(html)
    reader.close()
    assert reader.open == []
    return reader


@pytest.fixture(scope="module")
def results(punch, high_speed):
    """Every type that has a display, by the name of its stored file."""
    good = high_speed.soak(celsius=1150)
    sweep = high_speed.sweep(celsius=range(1000, 1201, 50))
    return {
        "state": good,
        "state_below_hardening": punch.soak(celsius=790),
        "state_not_usable": punch.soak(celsius=900, phases=["graphite"]),
        "state_outside_validity": punch.soak(celsius=1350),
        "sweep": sweep,
        "sweep_long": punch.sweep(celsius=range(900, 1221, 10)),
        "sweep_not_usable": punch.sweep(celsius=[900, 950], phases=["graphite"]),
        "sweep_empty": punch.sweep(celsius=[]),
        "occurrence": good["M6C"],
        "matrix": good.matrix,
        "parameter_set": gs.default_parameters(),
        "steel": gs.Steel(
            {"C": 0.55, "Cr": 4.5, "Mn": 0.3, "S": 0.1, "P": 0.02},
            name="punch heat 7",
            bind_tramp_elements=True,
        ),
        "report": good.report(),
        "report_sweep": sweep.report(),
    }


NAMES = (
    "state state_below_hardening state_not_usable state_outside_validity sweep "
    "sweep_long sweep_not_usable sweep_empty occurrence matrix parameter_set steel "
    "report report_sweep"
).split()


@pytest.mark.parametrize("name", NAMES)
def test_display_is_the_stored_one(results, name):
    compare(f"{name}.html", results[name]._repr_html_())


def test_every_display_is_well_formed_and_self_contained(results):
    assert set(results) == set(NAMES)
    pages = [item._repr_html_() for item in results.values()]
    pages.append(results["state"].solve_report._repr_html_())
    for page in pages:
        reader = read(page)
        assert not FORBIDDEN & set(reader.tags)
        for style in reader.styles:
            # Colours of the page are inherited: nothing to fight a dark theme with.
            assert "background" not in style and "url" not in style
            assert "color:" not in style.replace("border-color:", "")
        assert "http" not in page


def test_a_notebook_finds_the_display(results):
    formatters = pytest.importorskip("IPython.core.formatters")
    shown = formatters.DisplayFormatter().format(results["state"])[0]
    assert shown["text/html"] == results["state"]._repr_html_()
    assert shown["text/plain"] == repr(results["state"])


@pytest.mark.parametrize(
    ("name", "why"),
    [
        ("state_not_usable", "NOT USABLE: infeasible (no mixture of the allowed"),
        ("state_outside_validity", "OUTSIDE VALIDITY of the parameter file: The temp"),
        ("sweep_not_usable", "2 of 2 soaks NOT USABLE: 900, 950 C"),
    ],
)
def test_a_result_not_to_be_trusted_looks_different_and_says_why(results, name, why):
    for page in (results[name]._repr_html_(), results[name].report().html):
        reader = read(page)
        assert reader.styles[0].count("dashed") == 1
        assert any(text.startswith(why) for text in reader.texts)
    assert "dashed" not in results["state"]._repr_html_()


def test_a_solution_that_stopped_early_looks_different(high_speed):
    few = gs.SolveOptions(max_newton_steps=1, max_rounds=1)
    report = high_speed.soak(celsius=1100, options=few).solve_report
    assert not report.usable
    assert f"NOT USABLE: {report.reason}" in read(report._repr_html_()).texts


def test_names_are_escaped():
    name = '<script>alert("heat & 7")</script>'
    steel = gs.Steel(C=0.8, name=name)
    state = steel.soak(celsius=900)
    for item in (steel, state, steel.sweep(celsius=[900]), state.report()):
        reader = read(item._repr_html_())
        assert "script" not in reader.tags
        assert any(name in text for text in reader.texts)


def test_every_result_page_carries_the_caution(results):
    for name in ("state", "state_not_usable", "sweep", "report", "report_sweep"):
        assert "Before hardening real parts try coupons" in results[name]._repr_html_()


TEXT = st.text(max_size=12)


@settings(max_examples=60, deadline=None, derandomize=True)
@given(TEXT, st.lists(st.lists(TEXT, min_size=1, max_size=4), max_size=4), TEXT, TEXT)
def test_any_text_gives_a_well_formed_page(title, rows, warning, flag):
    reader = read(html_page(title, rows, [warning], flag=flag, lines=[warning]))
    shown = "".join(reader.texts)
    for text in (title, warning, flag, *[cell for row in rows for cell in row]):
        # The reader joins the two forms of a line break, as a browser does.
        assert text.replace("\r\n", "\n") in shown.replace("\r\n", "\n")


def test_printed_text_is_shown_as_it_prints(state):
    page = html_page("as printed", inside=html_text(str(state)), flag=str(state)[:9])
    assert str(state) in read(page).texts


def test_short_rows_are_filled():
    table = html_table([["", "a", "b"], ["x"]])
    assert read(table).tags.count("td") == 1 and 'colspan="2"' in table
