"""What a screen tells: what was soaked, warnings by code, tables that can be used."""

import pickle

import gibbsteel as gs
import numpy as np
import pytest

NAMES = ["C", "Cr", "Mo", "W", "V"]
HEATS = [[0.55, 4.5, 2.75, 2.0, 1.0], [0.62, 4.1, 3.5, 0.0, 1.2]]
CELSIUS = [1000, 1300]


def refused(call, *expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == "\n".join(expected)


def states():
    for heat in HEATS:
        steel = gs.Steel(dict(zip(NAMES, heat, strict=True)))
        yield from (steel.soak(celsius=c) for c in CELSIUS)


@pytest.fixture(scope="module")
def table():
    wanted = [gs.quantities.hardness_hrc(), gs.quantities.matrix("C")]
    return gs.screen(HEATS, NAMES, celsius=CELSIUS, quantities=wanted)


@pytest.fixture(scope="module")
def singles():
    return list(states())


def told(state):
    """Of the state, and of the hardness that the table has."""
    more = [w for w in state.hardening().warnings if w not in state.warnings]
    return state.warnings + more


def numbers(state):
    return list(dict.fromkeys(w.code.rpartition(".")[2] for w in told(state)))


def test_warnings_by_code(table, singles):
    counted = {}
    texts = {}
    for state in singles:
        for warning in told(state):
            counted[warning.code] = counted.get(warning.code, 0) + 1
            texts.setdefault(warning.code, warning.text)
    assert "gibbsteel.warning.303" in counted
    assert "gibbsteel.warning.331" in counted
    assert table.count_warnings() == counted
    assert table.warning_texts == texts
    listed = ", ".join(f"{code[-3:]} in {counted[code]}" for code in sorted(counted))
    rows = "4 rows, long-hold limit, 4 usable"
    assert repr(table) == f"<ScreenTable: {rows}, warnings: {listed}>"


def test_print_tells_each_code_once(table):
    text = str(table)
    assert text.startswith("screen: 4 rows, long-hold limit, 4 usable\nparameters: ")
    flat = " ".join(text.split())
    for code, count in table.count_warnings().items():
        rows = "row" if count == 1 else "rows"
        assert flat.count(f"! [{code}] in {count} {rows}, first in row ") == 1
        assert " ".join(table.warning_texts[code].split()) in flat
    assert "licensed practice" in flat


@pytest.mark.parametrize(
    ("factor", "celsius", "code"),
    [(0.01, 1120, "314"), (1.0, 1393, "303"), (1.0, 2050, "301")],
)
def test_wrong_units_are_seen(factor, celsius, code):
    table = gs.screen(factor * np.array(HEATS), NAMES, celsius=celsius)
    assert table.count_warnings()[f"gibbsteel.warning.{code}"] == 2
    assert f"{code} in 2" in repr(table)
    assert all(code in row.split() for row in table.to_frame()["warnings"])


def test_frame_holds_what_was_soaked(table, singles):
    pytest.importorskip("pandas")
    frame = table.to_frame()
    assert list(frame["composition"]) == [0, 0, 1, 1]
    assert list(frame["temperature_C"]) == [1000.0, 1300.0] * 2
    assert list(frame["temperature_F"]) == [1832.0, 2372.0] * 2
    for e, symbol in enumerate(NAMES):
        expected = [heat[e] for heat in HEATS for _ in CELSIUS]
        assert list(frame[f"steel_{symbol}_weight_percent"]) == expected
    assert list(frame["warnings"]) == [" ".join(sorted(numbers(s))) for s in singles]
    assert frame.attrs["warning_texts"] == table.warning_texts


def test_frame_has_only_what_is_somewhere(table):
    pytest.importorskip("pandas")
    frame = table.to_frame()
    kinds = [k for k, v in zip(table.kinds, table.volume_percent.T) if v.max() > 0.0]
    assert list(frame.columns) == [
        "composition",
        "temperature_C",
        "temperature_F",
        *[f"steel_{symbol}_weight_percent" for symbol in NAMES],
        "carbide_volume_percent",
        *[f"{kind}_volume_percent" for kind in kinds],
        *[
            f"matrix_{e}_weight_percent"
            for e in table.elements
            if e in (*NAMES, "Fe")
        ],
        "carbon_activity",
        "gibbs_energy_J_per_mol",
        "as_quenched_hardness_HRC",
        "usable",
        "status",
        "certificate",
        "warnings",
    ]
    everything = table.to_frame(absent=True)
    assert "hexagonal_MC_volume_percent" in everything
    assert "matrix_Co_weight_percent" in everything
    assert list(frame.columns) == [c for c in everything.columns if c in frame]


def test_parts_know_their_compositions():
    heats = [[0.5 + 0.001 * i] for i in range(70)]
    part = gs.screen(heats, ["C"], celsius=[900, 950], first_row=101, last_row=103)
    frame = part.to_frame()
    assert list(frame.index) == [101, 102]
    assert list(frame["composition"]) == [50, 51]
    assert list(frame["temperature_C"]) == [950.0, 900.0]
    assert list(frame["steel_C_weight_percent"]) == [heats[50][0], heats[51][0]]


def test_a_pickle_of_the_first_format_has_no_conditions(table):
    mark, fields = table.__reduce_ex__(4)[2]
    assert mark == "gibbsteel ScreenTable 3"
    old = gs.ScreenTable.__new__(gs.ScreenTable)
    old.__setstate__(("gibbsteel ScreenTable 1", fields[:18]))
    assert old.gibbs_energy.tolist() == table.gibbs_energy.tolist()
    assert old.steel_elements == [] and np.isnan(old.celsius).all()
    warned = int((table.warnings > 0).sum())
    rows = "row" if warned == 1 else "rows"
    told = f"long-hold limit, 4 usable, warnings in {warned} {rows}"
    assert repr(old) == f"<ScreenTable: 4 rows, {told}>"
    frame = old.to_frame()
    assert "composition" not in frame
    assert list(frame["warnings"]) == ["unknown" if n else "" for n in old.warnings]
    again = pickle.loads(pickle.dumps(table))
    assert again == table and again.warning_texts == table.warning_texts
    assert again.rows_per_composition == 2


def test_a_folder_keeps_warnings_and_conditions(table, tmp_path):
    folder = gs.screen_to_folder(tmp_path, HEATS, NAMES, celsius=CELSIUS)
    plain = gs.screen(HEATS, NAMES, celsius=CELSIUS)
    assert folder.table() == plain
    assert plain.count_warnings() == {"gibbsteel.warning.303": 2}
    assert folder.table().count_warnings() == plain.count_warnings()
    assert folder.table().to_frame().equals(plain.to_frame())


def test_a_data_frame_with_further_columns():
    pandas = pytest.importorskip("pandas")
    frame = pandas.DataFrame(HEATS, columns=NAMES)
    plain = gs.screen(HEATS, NAMES, celsius=1000)
    frame.insert(0, "Name", ["heat 7", "heat 8"])
    assert gs.screen(frame, celsius=1000) == plain
    frame["furnace"] = ["A", "B"]
    assert gs.screen(frame, NAMES, celsius=1000) == plain
    some = gs.screen(frame, ["Cr", "C"], celsius=1000)
    assert some.steel_elements == ["Cr", "C"]
    listed = ", ".join(f'"{name}"' for name in NAMES)
    refused(
        lambda: gs.screen(frame, celsius=1000),
        "[gibbsteel.input.201] compositions: column 'furnace' is not the symbol of an "
        f"element; name the columns to use: elements=[{listed}]",
    )
    refused(
        lambda: gs.screen(frame, ["C", "Co"], celsius=1000),
        "[gibbsteel.input.320] elements: the table has no column 'Co'; choose from: "
        "Name, C, Cr, Mo, W, V, furnace",
    )
    refused(
        lambda: gs.screen(frame.rename(columns={"Cr": "cr"})[["C", "cr"]], celsius=900),
        "[gibbsteel.input.201] compositions: column 'cr' is not the symbol of an "
        "element; did you mean 'Cr'?",
    )
    frame["Cr"] = ["4.5", "much"]
    refused(
        lambda: gs.screen(frame, NAMES, celsius=1000),
        "[gibbsteel.input.320] compositions: column 'Cr' holds 'much', no number; give "
        "numbers, or gs.steels_from_table(table) instead of the table",
    )


def test_no_remedy_leaves_out_an_element():
    """A list of columns without carbon, once pasted, would be another steel."""
    pandas = pytest.importorskip("pandas")
    columns = ["Heat", "No", "C %", "Cr", "N ppm", "MO"]
    frame = pandas.DataFrame([[7411, 1, 0.5, 4.5, 180, 2.7]], columns=columns)
    no = "is not the symbol of an element;"
    ignored = 'gs.steels_from_table(table, ignore=["Heat", "No"]) instead of the table'
    refused(
        lambda: gs.screen(frame, celsius=1000),
        f"[gibbsteel.input.201] compositions: column 'Heat' {no} leave it out; or give "
        + ignored,
        f"[gibbsteel.input.201] compositions: column 'No' {no} leave it out; or give "
        + ignored,
        f"[gibbsteel.input.201] compositions: column 'C %' {no} call it 'C'; or give "
        + ignored,
        f"[gibbsteel.input.201] compositions: column 'N ppm' {no} call it 'N' and give "
        f"weight percent: 1 of it is 10000 ppm; or give {ignored}",
        f"[gibbsteel.input.201] compositions: column 'MO' {no} did you mean 'Mo'?",
    )
    refused(
        lambda: gs.screen(frame[["Heat", "Cr"]], celsius=1000),
        f"[gibbsteel.input.201] compositions: column 'Heat' {no} leave it out; or give "
        'gs.steels_from_table(table, ignore=["Heat"]) instead of the table',
    )


def test_what_is_not_finite_is_named():
    nan, rows = float("nan"), np.full((4, 7), 0.1)
    rows[1, 1], rows[2, 1], rows[2, 6] = nan, nan, float("inf")
    symbols = ["C", "Co", "Cr", "Mo", "W", "V", "Mn"]
    flat = " ".join(str(gs.screen(rows, symbols, celsius=1000)).split())
    assert (
        "! composition not finite, first in row 1: Co in 2 rows, Mn in 1 row. Give 0 "
        "where an element was not measured. " in flat
    )
    flat = " ".join(str(gs.screen(rows * nan, symbols, celsius=1000)).split())
    assert (
        "! composition not finite, first in row 0: C in 4 rows, Co in 4 rows, Cr in 4 "
        "rows, Mo in 4 rows, W in 4 rows and others. Give 0 where an element was not "
        "measured. " in flat
    )
    assert "not finite," not in str(gs.screen(rows[:1], symbols, celsius=1000))


def test_a_row_without_carbon_is_told():
    table = gs.screen([[0.5, 4.5], [0.0, 4.5]], ["C", "Cr"], celsius=1000)
    code = "gibbsteel.warning.319"
    assert table.count_warnings()[code] == 1
    assert table.warning_texts[code] == "The steel has no carbon: was it left out?"


def test_a_quantity_without_a_list():
    hardness = gs.quantities.hardness_hrc()
    one = gs.screen(HEATS, NAMES, celsius=1000, quantities=hardness)
    assert one == gs.screen(HEATS, NAMES, celsius=1000, quantities=[hardness])
    steel = gs.Steel(C=0.8, Cr=4.0)
    assert gs.compare(steel, celsius=900, quantities=hardness).rows[-1].name == (
        hardness.name
    )


def test_a_quantity_that_fails_says_why(tmp_path):
    other = gs.quantities.timed_soak_matrix(
        "C", 20, parameters=gs.default_parameters("niobium_titanium_nitrogen")
    )

    def grain(state):
        raise ValueError(f"no grain size at {state.celsius:.0f} C")

    steel = gs.Steel({"C": 1.0})
    with pytest.raises(gs.InputError) as error:
        other.value(steel.soak(celsius=800))
    table = gs.screen([[1.0]], ["C"], celsius=[800, 820], quantities=[other])
    assert table.count() == {"quantity failed": 2}
    assert table.count_warnings()["gibbsteel.warning.361"] == 2
    said = table.warning_texts["gibbsteel.warning.361"]
    assert said == f"{other.label}: {error.value}"
    flat = " ".join(str(table).split())
    start = "! [gibbsteel.warning.361] in 2 rows, first in row 0: "
    assert start + " ".join(said.split()) in flat
    assert pickle.loads(pickle.dumps(table)) == table
    own = {"celsius": [800, 820], "quantities": [gs.Quantity("grain", "um", grain)]}
    table = gs.screen([[1.0]], ["C"], **own)
    said = table.warning_texts["gibbsteel.warning.361"]
    assert said == "grain [um]: ValueError: no grain size at 800 C"
    assert np.isnan(table.quantity).all()
    folder = gs.screen_to_folder(tmp_path, [[1.0]], ["C"], **own)
    assert folder.table() == table
