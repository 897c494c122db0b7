"""Tables of mill certificates: what is read, what is refused and in which words."""

import csv
import io

import gibbsteel as gs
import numpy as np
import pytest

HEATS = """Heat,C %,Si,Cr [wt%],Mo wt.%,V (mass %),Co,P,N ppm
7411,0.56,0.31,4.48,2.71,1.02,,0.018,180
7412,0.54,0.28,4.39,2.80,0.98,0.05,0.021,-
"""
READ = [
    {"C": 0.56, "Si": 0.31, "Cr": 4.48, "Mo": 2.71, "V": 1.02, "P": 0.018, "N": 0.018},
    {"C": 0.54, "Si": 0.28, "Cr": 4.39, "Mo": 2.8, "V": 0.98, "Co": 0.05, "P": 0.021},
]


def rows(text, **options):
    return csv.DictReader(io.StringIO(text), **options)


def refused(call, *expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == "\n".join(expected)


def given(steels):
    return [dict(steel.analysis.given) for steel in steels]


def test_a_csv_file_as_it_is():
    steels = gs.steels_from_table(rows(HEATS), name="Heat")
    assert given(steels) == READ
    assert [steel.name for steel in steels] == ["7411", "7412"]


def test_a_data_frame():
    pandas = pytest.importorskip("pandas")
    frame = pandas.read_csv(io.StringIO(HEATS), na_values="-")
    assert given(gs.steels_from_table(frame, name="Heat")) == READ
    frame["Heat"] = frame["Heat"].astype(float)
    frame["Si"] = frame["Si"].astype("Float64")
    frame.loc[1, "Si"] = pandas.NA
    refused(
        lambda: gs.steels_from_table(frame, name="Heat"),
        GAP.format("'Si'", "row 1 (7412)", "0.31"),
    )
    first, second = gs.steels_from_table(frame, name="Heat", empty_is_none=True)
    assert (first.name, second.name) == ("7411", "7412")
    assert "Si" not in second.analysis.given
    assert first == gs.Steel(READ[0], name="7411")


def test_decimal_commas_and_marks_of_spreadsheets():
    text = "\ufeffname; C ;Fe;N [ppm];;\nA;0,56;Bal.;1.200e2;;\nB; .5 ;;;;\n"
    a, b = gs.steels_from_table(rows(text, delimiter=";"))
    assert (a.name, dict(a.analysis.given)) == ("A", {"C": 0.56, "N": 0.012})
    assert (b.name, dict(b.analysis.given)) == ("B", {"C": 0.5})


@pytest.mark.parametrize(
    "empty", [None, float("nan"), np.float32("nan"), np.ma.masked, "", " ", "-", "NaN"]
)
def test_what_was_not_measured_is_left_out(empty):
    (steel,) = gs.steels_from_table([{"C": 0.5, "Co": empty}])
    assert dict(steel.analysis.given) == {"C": 0.5}


@pytest.mark.parametrize(
    "heading",
    [
        *("C", " C ", "C%", "C %", "C wt%", "C [wt%]", "C wt.%", "C wt-%", "C (%)"),
        *("C mass%", "C [mass %]", "C_wt%", "% C", "%C", "wt% C", "C weight %"),
    ],
)
def test_units_in_headings(heading):
    (steel,) = gs.steels_from_table([{heading: 0.5, "Cr": 4.0}])
    assert steel.analysis.given["C"] == 0.5


@pytest.mark.parametrize("heading", ["C ppm", "C [ppm]", "C wt ppm", "ppm C"])
def test_ppm_in_headings(heading):
    (steel,) = gs.steels_from_table([{heading: 1.0, "Cr": 4.0}])
    assert steel.analysis.given["C"] == 0.0001


def test_less_than_1_ppm_may_be_weight_percent():
    table = [{"C": 0.5, "B ppm": b} for b in (0, "0,2", 20.0, 0.002)]
    asks = "below 1 ppm; if it is weight percent, head the column so; else give 0"
    refused(
        lambda: gs.steels_from_table(table),
        f"[gibbsteel.input.329] row 1, column 'B ppm': is '0,2', {asks}",
        f"[gibbsteel.input.329] row 3, column 'B ppm': is 0.002, {asks}",
    )
    steels = gs.steels_from_table(table[::2])
    assert [steel.analysis.given["B"] for steel in steels] == [0.0, 0.002]


M2 = "Heat;C;Cr;Mo;W;V;N\n1;0,85;4,1;5;6,2;1,9;0,03\n2;0,86;4;4,9;-;1,8;\n3;;;;;;\n"
GAP = (
    "[gibbsteel.input.329] column {}: is empty in {}, where other rows hold up to {} "
    "wt%; give 0 where the steel has none, or empty_is_none=True where that holds for "
    "every empty cell"
)


def test_an_empty_cell_of_an_alloying_element_is_asked_about():
    text = M2.removesuffix("3;;;;;;\n")
    refused(
        lambda: gs.steels_from_table(rows(text, delimiter=";"), name="Heat"),
        GAP.format("'W'", "row 1 (2)", "6.2"),
    )
    asked = rows(text, delimiter=";")
    first, second = gs.steels_from_table(asked, name="Heat", empty_is_none=True)
    assert first.analysis.given["W"] == 6.2
    assert dict(second.analysis.given) == {"C": 0.86, "Cr": 4, "Mo": 4.9, "V": 1.8}
    whole = rows(text.replace("-", "0"), delimiter=";")
    assert gs.steels_from_table(whole, name="Heat")[1].analysis.given["W"] == 0.0


def test_empty_rows_and_empty_cells_of_several_columns():
    refused(
        lambda: gs.steels_from_table(rows(M2, delimiter=";"), name="Heat"),
        "[gibbsteel.input.208] row 2 (3): holds no weight percent; take the row out of "
        "the table",
        GAP.format("'W'", "row 1 (2)", "6.2"),
    )
    table = [{"C": 0.5, "Cr": 5.0, "Mo ppm": 1001}, *[{"C": 0.5}] * 7, {"Cr": "x"}]
    refused(
        lambda: gs.steels_from_table(table),
        "[gibbsteel.input.202] row 8, column 'Cr': is 'x', no number; give weight "
        "percent as a number, for instance 0.55",
        GAP.format("'C'", "row 8", "0.5"),
        GAP.format("'Cr'", "row 1, row 2, row 3, row 4, row 5 and 2 more", "5"),
        GAP.format(
            "'Mo ppm'", "row 1, row 2, row 3, row 4, row 5 and 3 more", "0.1001"
        ),
    )


@pytest.mark.parametrize(
    "present", [{"Mo": 0.1}, {"P": 0.2}, {"N": 0.3}, {"Fe": 99.5}, {"Mo": "-"}]
)
def test_an_empty_cell_that_makes_no_other_steel_is_none(present):
    steels = gs.steels_from_table([{"C": 0.5, **present}, {"C": 0.6}])
    assert given(steels)[1] == {"C": 0.6}


def test_cells_that_no_steel_has_ask_about_no_empty_one():
    refused(
        lambda: gs.steels_from_table([{"C": 0.5, "W": 640}, {"C": 0.6}]),
        "[gibbsteel.input.204] row 0, column 'W': is above 100: 640; give weight "
        "percent, from 0 to 100",
    )


def test_an_element_that_a_layer_models_is_asked_about_too():
    layered = gs.default_parameters("niobium_titanium_nitrogen")
    table = [{"C": 0.5, "Nb": 0.3}, {"C": 0.6, "Nb": None}]
    assert len(gs.steels_from_table(table)) == 2
    refused(
        lambda: gs.steels_from_table(table, parameters=layered),
        GAP.format("'Nb'", "row 1", "0.3"),
    )


def test_columns_that_are_no_elements_are_named_all_at_once():
    table = [{"Heat": 1, "No": 1, "C": 0.5, "CR %": 4, "Mo at%": 1, "N": 0, "N ppm": 2}]
    refused(
        lambda: gs.steels_from_table(table, name="Melt"),
        "[gibbsteel.input.329] name: the table has no column 'Melt'; choose from: "
        "Heat, No, C, CR %, Mo at%, N, N ppm",
        "[gibbsteel.input.201] table: column 'Heat' is not the symbol of an element; "
        'give ignore=["Heat"], or name="Heat" where it names the steels',
        "[gibbsteel.input.201] table: column 'No' is not the symbol of an element; "
        'give ignore=["No"], or name="No" where it names the steels',
        "[gibbsteel.input.201] table: column 'CR %' is not the symbol of an element; "
        'did you mean \'Cr\'? Or give ignore=["CR %"], or name="CR %" where it names '
        "the steels",
        "[gibbsteel.input.329] table: column 'Mo at%' has the unit 'at%'; give Mo in "
        'percent or ppm by weight, or ignore=["Mo at%"]',
        "[gibbsteel.input.321] table: columns 'N' and 'N ppm' are one element; keep "
        "one, or name the other in ignore=",
    )
    ignored = ["No", "CR %", "Mo at%", "N", "not there"]
    (steel,) = gs.steels_from_table(table, name="Heat", ignore=ignored)
    assert given([steel]) == [{"C": 0.5, "N": 0.0002}]


TWICE = (
    "[gibbsteel.input.321] table: has 2 columns headed 'C'; rename all but one, and "
    "name in ignore= what is not to count"
)


class OwnReader(csv.DictReader):
    """A reader that somebody made for files of one works."""


@pytest.mark.parametrize("reader", [csv.DictReader, OwnReader])
def test_a_reader_with_two_columns_of_one_heading(reader):
    text = "Heat,C,Mn,Cr,Mo,C\n1,0.56,0.3,4.5,2.7,0.1\n"
    table = reader(io.StringIO(text))
    refused(lambda: gs.steels_from_table(table, name="Heat"), TWICE)


def test_two_headings_that_read_the_same():
    pandas = pytest.importorskip("pandas")
    frames = [pandas.DataFrame([[0.5, 0.6]], columns=["C", c]) for c in ("C", " C")]
    for frame in frames:
        refused(lambda: gs.steels_from_table(frame), TWICE)
        refused(lambda: gs.steels_from_table(frame, ignore="C"), TWICE)


def test_two_columns_of_one_heading_that_are_no_elements():
    text = "Heat,C,Place,Place,Heat\n1,0.56,a,b,2\n"
    (steel,) = gs.steels_from_table(rows(text), ignore=["Heat", "Place"])
    assert given([steel]) == [{"C": 0.56}]
    refused(
        lambda: gs.steels_from_table(rows(text), name="Heat", ignore=["Heat", "Place"]),
        "[gibbsteel.input.329] name: the table has 2 columns headed 'Heat'; rename all "
        "but one, and name in ignore= what is not to count",
    )


def test_an_unnamed_column_with_cells_is_not_lost_behind_an_empty_one():
    refused(
        lambda: gs.steels_from_table(rows("C;;\n0,5;0,3;\n", delimiter=";")),
        "[gibbsteel.input.201] table: column '' is not the symbol of an element; give "
        'ignore=[""], or name="" where it names the steels',
    )


@pytest.mark.parametrize("read", [lambda table: table, list])
def test_a_separator_at_the_end_of_the_rows(read):
    text = "name;C;Cr\nA;0,56;4,5;\nB;0,5;4;-;\n"
    steels = gs.steels_from_table(read(rows(text, delimiter=";")))
    assert given(steels) == [{"C": 0.56, "Cr": 4.5}, {"C": 0.5, "Cr": 4.0}]


def test_a_column_of_a_frame_that_is_headed_none():
    pandas = pytest.importorskip("pandas")
    frame = pandas.DataFrame([[0.5, "x"]], columns=["C", None])
    refused(
        lambda: gs.steels_from_table(frame),
        "[gibbsteel.input.201] table: column '' is not the symbol of an element; give "
        'ignore=[""], or name="" where it names the steels',
    )
    assert given(gs.steels_from_table(frame, ignore="")) == [{"C": 0.5}]


def test_cells_that_cannot_be_read_are_named_all_at_once():
    text = "Heat;C;Cr %;N ppm;V\n7411;<0,01;1,234.5;1,200;much\n7412;0,5;-4;x;\n;;;;\n"
    refused(
        lambda: gs.steels_from_table(rows(text, delimiter=";"), name="Heat"),
        "[gibbsteel.input.202] row 0 (7411), column 'C': is '<0,01', less than could "
        "be measured; leave it out where that is as good as none, or give a number",
        "[gibbsteel.input.202] row 0 (7411), column 'Cr %': is '1,234.5', with more "
        "than a decimal sign; write 1234.5 or 1234,5",
        "[gibbsteel.input.202] row 0 (7411), column 'N ppm': is '1,200', which may be "
        "a thousand times as much; write 1200 or 1.2",
        "[gibbsteel.input.202] row 0 (7411), column 'V': is 'much', no number; give "
        "weight percent as a number, for instance 0.55",
        "[gibbsteel.input.202] row 1 (7412), column 'N ppm': is 'x', no number; give "
        "weight percent as a number, for instance 0.55",
        "[gibbsteel.input.208] row 2: holds no weight percent; take the row out of the "
        "table",
    )


@pytest.mark.parametrize("cell", [True, [0.5], 0.5 + 1j, b"0.5"])
def test_a_cell_of_another_kind(cell):
    refused(
        lambda: gs.steels_from_table([{"C": cell}]),
        f"[gibbsteel.input.202] row 0, column 'C': is {cell!r}, no number; give weight "
        "percent as a number, for instance 0.55",
    )


def test_a_quantity_with_a_unit_of_its_own():
    class Percent(float):
        magnitude = 0.5

        def to(self, unit):
            raise AssertionError(unit)

        def __str__(self):
            return "0.5 percent"

    refused(
        lambda: gs.steels_from_table([{"C": Percent(0.005)}]),
        "[gibbsteel.input.202] row 0, column 'C': is 0.5 percent, with a unit of its "
        "own; give the number in the unit of the heading",
    )


def test_a_table_of_names_only():
    refused(
        lambda: gs.steels_from_table([{"name": "A"}]),
        "[gibbsteel.input.329] table: has no column of an element; head one by its "
        "symbol: C, C %, N ppm",
    )


def test_weight_percents_that_no_steel_has():
    table = [{"C %": -0.5, "N ppm": 2e6, "Cr": 0}, {"C %": 60, "Cr": 50}]
    refused(
        lambda: gs.steels_from_table(table),
        "[gibbsteel.input.203] row 0, column 'C %': is negative: -0.5; give weight "
        "percent, from 0 to 100",
        "[gibbsteel.input.204] row 0, column 'N ppm': is above 100: 200; give weight "
        "percent, from 0 to 100",
        "[gibbsteel.input.204] row 1, composition: sums to 110.00; the sum cannot be "
        "above 100 weight percent",
    )


def test_a_separator_that_is_another_one():
    refused(
        lambda: gs.steels_from_table(rows("Heat,C,Cr\n1,0,56,4,5\n"), name="Heat"),
        "[gibbsteel.input.329] row 0 (1): has more cells than the table has columns: "
        "['4', '5']; put texts that hold the separator in quotes, or name another one, "
        'such as csv.DictReader(file, delimiter=";")',
    )
    refused(
        lambda: gs.steels_from_table(rows("Heat;C\n1;0.5\n"), name="Heat"),
        "[gibbsteel.input.329] name: the table has no column 'Heat'; choose from: "
        "Heat;C",
        "[gibbsteel.input.201] table: column 'Heat;C' is not the symbol of an element; "
        'give the separator of the file: delimiter=";", in pandas sep=";"',
    )


def test_a_long_table_names_the_first_problems():
    with pytest.raises(gs.InputError) as error:
        gs.steels_from_table([{"C": "much"}] * 1000)
    assert len(error.value.problems) == 31
    assert str(error.value.problems[-1]) == (
        "[gibbsteel.input.329] table: has 970 problems more; mend these first, then "
        "see the others"
    )


@pytest.mark.parametrize("table", [{"C": [0.5]}, "heats.csv", 0.5, None])
def test_what_is_no_table(table):
    refused(
        lambda: gs.steels_from_table(table),
        f"[gibbsteel.input.329] table: is {type(table).__name__}, no table with one "
        "row per heat; give a pandas DataFrame, a list of dicts or a csv.DictReader",
    )


def test_rows_and_columns_of_another_kind():
    refused(
        lambda: gs.steels_from_table([{"C": 0.5}, [0.5]]),
        "[gibbsteel.input.329] row 1: is list, no dict by heading; give a pandas "
        "DataFrame, a list of dicts or a csv.DictReader",
    )
    refused(
        lambda: gs.steels_from_table([{"C": 0.5}], ignore=[5]),
        "[gibbsteel.input.220] ignore: is int, not str; give headings, for instance "
        '["Furnace"]',
    )


def test_an_empty_table_has_no_steels():
    assert gs.steels_from_table([]) == []
    assert gs.steels_from_table(rows("C,Cr\n")) == []


def test_settings_of_the_steels():
    layered = gs.default_parameters("niobium_titanium_nitrogen")
    (steel,) = gs.steels_from_table(
        [{"C": 0.5, "Mn": 0.3, "S": 0.01}], parameters=layered, bind_tramp_elements=True
    )
    assert steel.parameters == layered
    assert [bound.name for bound in steel.analysis.bound] == ["MnS"]
    refused(
        lambda: gs.steels_from_table([], parameters="liquid"),
        "[gibbsteel.input.220] parameters: is str, not ParameterSet; give what "
        'load_parameters or default_parameters("liquid") return',
    )


def test_a_screen_takes_the_steels():
    steels = gs.steels_from_table(rows(HEATS), name="Heat")
    table = gs.screen(steels, celsius=[1100, 1150])
    assert table.steel_elements == ["C", "Si", "Cr", "Mo", "V", "P", "N", "Co"]
    assert table.count() == {"usable": 4}
    for row, steel in ((0, steels[0]), (3, steels[1])):
        state = steel.soak(celsius=1100 if row == 0 else 1150)
        np.testing.assert_allclose(
            table.matrix_weight_percent[row, table.elements.index("C")],
            state.matrix.weight_percent["C"],
            rtol=1e-9,
        )
    assert gs.screen(steels[0], celsius=1100) == gs.screen(
        [list(READ[0].values())], list(READ[0]), celsius=1100
    )


def test_a_screen_balances_iron_that_one_steel_has():
    whole = gs.Steel({"Fe": 95.0, "C": 0.5, "Cr": 4.5})
    table = gs.screen([whole, gs.Steel({"C": 0.5, "Cr": 5.0})], celsius=1000)
    assert table.count() == {"usable": 2}
    assert table.steel_weight_percent.tolist() == [[95.0, 0.5, 4.5], [94.5, 0.5, 5.0]]


def test_a_screen_keeps_the_settings_of_its_steels():
    layered = gs.default_parameters("niobium_titanium_nitrogen")
    heat = {"C": 0.5, "Mn": 0.3, "S": 0.02}
    bound = gs.Steel(heat, parameters=layered, bind_tramp_elements=True)
    symbols, percents = list(heat), [list(heat.values())]
    settings = {"celsius": 900, "bind_tramp_elements": True}
    assert gs.screen([bound], celsius=900) == gs.screen(
        percents, symbols, parameters=layered, **settings
    )
    plain = gs.Steel(heat)
    own = gs.default_parameters()
    assert gs.screen([bound, plain], parameters=own, **settings) == gs.screen(
        percents * 2, symbols, **settings
    )
    assert gs.screen(
        [bound, plain], parameters=own, celsius=900, bind_tramp_elements=False
    ) == gs.screen(percents * 2, symbols, celsius=900)
    refused(
        lambda: gs.screen([bound, plain], celsius=900),
        "[gibbsteel.input.320] compositions: are steels of several parameter sets; "
        "give parameters=, or screen the steels of each set apart",
    )
    refused(
        lambda: gs.screen([bound, plain], celsius=900, parameters=own),
        "[gibbsteel.input.320] compositions: are steels with and without bound tramp "
        "elements; give bind_tramp_elements= True or False, or screen them apart",
    )
    refused(
        lambda: gs.screen([], celsius=900),
        "[gibbsteel.input.320] compositions: are none; give at least one steel",
    )
    refused(
        lambda: gs.screen([plain, [0.5]], celsius=900),
        "[gibbsteel.input.320] compositions: are not all steels; give steels only",
    )
    refused(
        lambda: gs.screen([plain], ["C"], celsius=900),
        "[gibbsteel.input.320] elements: are given beside steels; leave them out",
    )
