"""CSV and JSON: full precision, traced to their data, read back by other programs."""

import csv
import json

import gibbsteel as gs
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st


@pytest.fixture(scope="module")
def sweep(high_speed):
    return high_speed.sweep(celsius=[1000, 1100, 1200])


def header_and_rows(file):
    lines = file.read_text(encoding="utf-8").splitlines()
    header = [line for line in lines if line.startswith("# ")]
    assert lines[: len(header)] == header
    assert header[0] == f"# gibbsteel table; lines of header: {len(header)}"
    return header, list(csv.DictReader(lines[len(header) :]))


def test_csv_of_a_state(state, tmp_path):
    state.to_csv(tmp_path / "state.csv")
    header, rows = header_and_rows(tmp_path / "state.csv")
    parameters = gs.default_parameters()
    assert header[1:7] == [
        f"# library: gibbsteel {gs.__version__}",
        f"# parameters: {parameters.title}",
        f"# parameters_hash: {parameters.content_hash}",
        "# limit: long-hold limit (true equilibrium)",
        "# basis: volumes at room temperature, austenite counted as untempered "
        "martensite",
        "# caution: Long-hold limit (true equilibrium): a shop soak of minutes leaves "
        "more carbide and less carbon in the matrix. Before hardening real parts try "
        "coupons and follow the steel maker's data. Hot salt, oil, cryogens and "
        "furnaces injure: local codes and licensed practice come first.",
    ]
    assert header[7:] == [
        "# steel: punch heat 12",
        "# analysis as given, wt%: C 0.9 Cr 4.1 Mo 5 W 6.2 V 1.9 Mn 0.3 Si 0.3",
        "# not modelled, wt%: nothing",
        *[f"# {warning}" for warning in state.warnings],
    ]
    assert [row["name"] for row in rows] == [o.name for o in state.occurrences]
    for row, occurrence in zip(rows, state.occurrences, strict=True):
        assert float(row["volume_percent"]) == occurrence.volume_percent
        assert float(row["C_weight_percent"]) == occurrence.weight_percent["C"]


def test_csv_of_a_sweep(sweep, tmp_path):
    sweep.to_csv(tmp_path / "wide.csv", wide=True)
    header, rows = header_and_rows(tmp_path / "wide.csv")
    assert [float(row["temperature_C"]) for row in rows] == [s.celsius for s in sweep]
    for row, state in zip(rows, sweep, strict=True):
        carbon = float(row["matrix_C_weight_percent"])
        assert carbon == state.matrix.weight_percent["C"]
        assert row["usable"] == "True"
    assert [line[2:] for line in header[10:]] == [str(w) for w in sweep.warnings]
    sweep.to_csv(str(tmp_path / "tidy.csv"))
    assert len(header_and_rows(tmp_path / "tidy.csv")[1]) == sum(
        len(state.occurrences) for state in sweep
    )


def test_csv_is_read_by_pandas(punch, tmp_path):
    pandas = pytest.importorskip("pandas")
    named = punch.changed(C=0.6, name='heat #7, "big"\nfurnace')
    sweep = named.sweep(celsius=[1000, 1100])
    sweep.to_csv(tmp_path / "table.csv", wide=True)
    table = pandas.read_csv(
        tmp_path / "table.csv", comment="#", float_precision="round_trip"
    )
    expected = sweep.to_frame(wide=True)
    assert list(table) == list(expected)
    assert (table["steel"] == named.name).all()
    for name in expected.attrs["units"]:
        assert (table[name] == expected[name]).all(), name


def test_what_is_not_known_is_an_empty_cell(punch, tmp_path):
    punch.soak(celsius=900, phases=["graphite"]).to_csv(tmp_path / "a.csv", wide=True)
    _, rows = header_and_rows(tmp_path / "a.csv")
    assert rows[0]["carbide_volume_percent"] == "" and rows[0]["usable"] == "False"
    punch.sweep(celsius=[]).to_csv(tmp_path / "empty.csv")
    text = (tmp_path / "empty.csv").read_text(encoding="utf-8")
    assert text == "# gibbsteel table; lines of header: 1\n"


def test_json_of_a_state(state, tmp_path):
    state.to_json(tmp_path / "state.json")
    content = json.loads((tmp_path / "state.json").read_text(encoding="utf-8"))
    assert content["about"]["parameters_hash"] == state.parameters_hash
    assert content["about"]["parameters"] == state.parameters
    assert content["about"]["library"] == f"gibbsteel {gs.__version__}"
    assert "coupons" in content["about"]["caution"]
    assert content["steel"] == "punch heat 12"
    assert content["analysis"]["given"] == state.analysis.given
    (stored,) = content["states"]
    assert stored["matrix"]["weight_percent"] == state.matrix.weight_percent
    assert stored["carbide_volume_percent"] == state.carbide_volume_percent
    assert [o["name"] for o in stored["occurrences"]] == [
        o.name for o in state.occurrences
    ]
    for item, occurrence in zip(stored["occurrences"], state.occurrences, strict=True):
        assert item["weight_percent"] == occurrence.weight_percent
        assert item["site_fractions"] == occurrence.site_fractions
        assert item["sites"] == occurrence.sites
    assert stored["driving_force_J_per_mol_of_atoms"] == state.driving_force
    assert stored["chemical_potential_J_per_mol"] == state.chemical_potential
    assert [w["code"] for w in stored["warnings"]] == [w.code for w in state.warnings]


def test_json_of_a_sweep(sweep, punch, tmp_path):
    sweep.to_json(tmp_path / "sweep.json")
    content = json.loads((tmp_path / "sweep.json").read_text(encoding="utf-8"))
    assert content["cancelled"] is False and len(content["states"]) == 3
    stopped = punch.sweep(celsius=[900, 950], progress=lambda done: False)
    stopped.to_json(tmp_path / "stopped.json")
    content = json.loads((tmp_path / "stopped.json").read_text(encoding="utf-8"))
    assert content["cancelled"] is True and len(content["states"]) == 1


def test_json_knows_no_nan(tmp_path):
    steel = gs.Steel({"C": 0.8, "S": 0.1, "Mn": 0.3}, bind_tramp_elements=True)
    steel.soak(celsius=900, phases=["graphite"]).to_json(tmp_path / "bad.json")
    text = (tmp_path / "bad.json").read_text(encoding="utf-8")
    assert "NaN" not in text
    content = json.loads(text)
    assert content["states"][0]["carbide_volume_percent"] is None
    assert content["states"][0]["usable"] is False
    assert list(content["analysis"]["bound"]) == ["MnS"]
    steel.sweep(celsius=[]).to_json(tmp_path / "empty.json")
    assert json.loads((tmp_path / "empty.json").read_text())["states"] == []


@settings(max_examples=60, deadline=None, derandomize=True)
@given(name=st.text(max_size=20))
def test_any_name_comes_through(name, tmp_path_factory):
    file = tmp_path_factory.mktemp("named") / "state"
    state = gs.Steel(C=0.8, name=name).soak(celsius=900)
    state.to_json(file)
    assert json.loads(file.read_text(encoding="utf-8"))["steel"] == name
    state.to_csv(file)
    with open(file, encoding="utf-8", newline="") as stream:
        top = next(stream)
        for _ in range(int(top.rpartition(": ")[2]) - 1):
            assert next(stream).startswith("# ")
        (row,) = csv.DictReader(stream)
    assert row["steel"] == name and float(row["volume_percent"]) == 100.0
