"""What the pages say in numbers is what the library gives, and their links lead on."""

import json
import re
from pathlib import Path

import gibbsteel as gs
import pytest

ROOT = Path(__file__).resolve().parents[2]
LINK = re.compile(r"\]\((?!https?://|#)([^)#\s]+)")
PAGES = [
    *ROOT.glob("*.md"),
    *(ROOT / "thermo_data").rglob("*.md"),
    *(ROOT / "examples").rglob("*.md"),
    ROOT / "benchmarks" / "README.md",
    ROOT / "bindings" / "README.md",
    ROOT / "include" / "gibbsteel" / "ERROR_CODES.md",
    *(ROOT / "tests").glob("*/README.md"),
]


def page(name):
    """The text with line breaks as spaces, so that a sentence can be looked for."""
    return " ".join((ROOT / name).read_text("utf-8").split())


@pytest.fixture(scope="module")
def shipped():
    return json.loads(gs.write_parameters(gs.default_parameters()))


def test_links_lead_to_files():
    lost = [
        f"{p.relative_to(ROOT)}: {target}"
        for p in PAGES
        for target in LINK.findall(p.read_text("utf-8"))
        if not (p.parent / target).exists()
    ]
    assert lost == []


def test_the_range_on_the_pages_is_that_of_the_file(shipped):
    low, high = (kelvin - 273.15 for kelvin in shipped["validity"]["temperature_K"])
    percent = shipped["validity"]["weight_percent"]
    assert set(percent) | {"Fe"} == set(gs.default_parameters().elements)
    assert {lowest for lowest, _ in percent.values()} == {0}
    limits = ", ".join(f"{highest:g} % {e}" for e, (_, highest) in percent.items())
    told = f"{low:.0f} to {high:.0f} C, and up to {limits}, by weight"
    assert told in page("README.md")
    trust = page("thermo_data/TRUST.md")
    assert f"edition {shipped['edition']}, is for {low:.0f} to {high:.0f} C" in trust
    assert f"({limits}, by weight)" in trust


def test_pages_of_layers_know_the_present_edition(shipped):
    named = {
        p.stem: re.findall(r"present\s+one, ([\d.-]+\d)", p.read_text("utf-8"))
        for p in (ROOT / "thermo_data" / "layers").glob("*.md")
    }
    edition = [shipped["edition"]]
    assert {stem: told for stem, told in named.items() if told} == {
        "carbides": edition,
        "niobium_titanium_nitrogen": edition,
    }


def test_the_rows_of_hardening_in_the_readme_are_printed(punch):
    readme = (ROOT / "README.md").read_text("utf-8")
    rows = [
        line.removeprefix("# ")
        for line in readme.splitlines()
        if re.match(r"# .* (C|vol%|HRC)$", line)
    ]
    state = punch.soak(celsius=1120)
    assert len(rows) == 3
    assert [r for r in rows if r not in str(state.hardening()).splitlines()] == []
    cold = state.hardening(coldest_celsius=-75)
    austenite, hardness = cold.retained_austenite.value, cold.hardness_hrc.value
    assert f"# cold treatment: {austenite:.0f} vol%, {hardness:.1f} HRC" in readme


def test_the_soaks_of_52100_on_the_pages(punch):
    steel = gs.Steel(C=1.0, Cr=1.45, Mn=0.35, Si=0.25, name="52100")
    readme, trust = page("README.md"), page("thermo_data/TRUST.md")
    soak = steel.soak(celsius=860)
    assert f"# {soak.matrix.weight_percent['C']:.2f} % C in the matrix: long" in readme
    limit = soak.short_soak_limit().band("C").value
    assert f"# {limit:.2f} % C: only carbon has moved" in readme
    timed = soak.timed_soak(minutes=30).band("C")
    told = f"# {timed.value:.2f} % C; .low, .high: {timed.low:.2f} to {timed.high:.2f}"
    assert told in readme
    assert f"# {soak.minutes_for('C', 0.75).minutes:.0f} min, known to a" in readme
    soak = steel.soak(celsius=845)
    long_hold = soak.matrix.weight_percent["C"]
    assert f"long-hold limit gives {long_hold:.2f} % carbon in the matrix" in trust
    limit = soak.short_soak_limit().band("C").value
    assert f"metals have not: {limit:.2f} % carbon in the matrix" in trust
    timed = soak.timed_soak(minutes=30).band("C")
    band = f"{timed.low:.2f} to {timed.high:.2f} by its band"
    assert f"{timed.value:.2f} % after half an hour, {band}" in trust


def accuracy_rows(row):
    """(within one uncertainty, of) of all rows with this name, in their order."""
    text = (ROOT / "thermo_data" / "ACCURACY.md").read_text("utf-8")
    pattern = rf"^\| {row} \|.*\| (\d+) of (\d+) \([^|]*\|[^|]*\|$"
    return [(int(a), int(b)) for a, b in re.findall(pattern, text, re.MULTILINE)]


def test_the_counts_on_the_pages_are_those_of_the_accuracy_page():
    ((met, records),) = accuracy_rows("all")
    counted = (
        f"Of {records} comparisons with published numbers {met} are met within their"
    )
    assert f"{counted} uncertainty, {records - met} are missed" in page("README.md")
    trust = page("thermo_data/TRUST.md")
    assert f"{counted} uncertainty (" in trust
    assert f"{records - met} are missed." in trust
    (_, on_iron), (layers, iron_and_layers) = (
        accuracy_rows("shipped file"),
        accuracy_rows("together"),
    )
    assert f"with liquid, {layers[0]} of {layers[1]} are met" in trust
    assert f"With it {on_iron[0]} of the {on_iron[1]} are met" in trust
    assert f"with all layers {iron_and_layers[0]} of {iron_and_layers[1]}" in trust


def test_what_the_page_of_the_file_says_of_the_calibration(shipped):
    text = page("thermo_data/README.md")
    terms = [
        term
        for phase in shipped["phases"].values()
        for property_ in phase.values()
        if isinstance(property_, list)
        for term in property_
    ]
    stated = sum(len(term.get("standard_deviations", {})) for term in terms)
    assert f"states those of the {stated} numbers that were calibrated" in text
    citation = shipped["sources"]["calibration"]["citation"]
    fitted = re.match(r"fitted by calibrate\(\) to (\d+ measurements)", citation)
    assert f"the layer with its {stated} numbers on {fitted[1]}" in text
    d2 = gs.Steel({"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8, "Mn": 0.35, "Si": 0.3})
    band = d2.parameter_band(celsius=1020)["C in the matrix"].first_order
    told = f"D2 at 1020 C comes out at +- {band.standard_deviation:.4f} % matrix carbon"
    assert told in text


def test_the_list_of_names_is_what_its_script_writes(monkeypatch):
    monkeypatch.syspath_prepend(ROOT / "tests" / "tools")
    import names_page

    stored = (ROOT / names_page.PAGE).read_text("utf-8")
    command = "run tests/tools/names_page.py and read what changed"
    assert stored.splitlines() == names_page.text().splitlines(), command


def test_the_index_of_examples_names_every_example():
    folder = ROOT / "examples"
    index = (folder / "README.md").read_text("utf-8")
    names = {
        str(p.relative_to(folder))
        for ending in ("py", "cpp", "ipynb", "md")
        for p in folder.rglob(f"*.{ending}")
        if not p.name.startswith("_")
    }
    assert names - set(LINK.findall(index)) == {"README.md"}
