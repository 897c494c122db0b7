"""Numbers that no float can hold, truth values, and texts that UTF-8 cannot write."""

import gibbsteel as gs
import numpy as np
import pytest

NUMBER = "give weight percent as a number, for instance 0.55"
LARGE = "1" + 56 * "0" + "..."


def refused(call, *expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == "\n".join(expected)


@pytest.mark.parametrize(
    ("cell", "shown"),
    [
        (10**400, LARGE),
        (10**5000, "a number that is too large"),
        (True, "True"),
        (np.bool_(True), repr(np.bool_(True))),
        (np.complex64(1), repr(np.complex64(1))),
        (bytearray(b"1"), "bytearray(b'1')"),
    ],
    ids=lambda _: "",
)
def test_cells_and_weight_percents(cell, shown):
    refused(
        lambda: gs.steels_from_table([{"C": cell}]),
        f"[gibbsteel.input.202] row 0, column 'C': is {shown}, no number; {NUMBER}",
    )
    refused(
        lambda: gs.Steel(C=cell),
        f"[gibbsteel.input.202] composition, C: is {shown}; {NUMBER}",
    )


@pytest.mark.parametrize(
    ("value", "shown"),
    [
        (10**400, LARGE),
        ((0.5, 10**400), "(0.5, 1" + 50 * "0" + "..."),
        (10**5000, "a number that is too large"),
        (b"ab", "b'ab'"),
        (True, "True"),
        ((False, True), "(False, True)"),
        (np.bool_(True), repr(np.bool_(True))),
        ("ab", "'ab'"),
    ],
    ids=lambda _: "",
)
def test_ranges(punch, value, shown):
    refused(
        lambda: punch.tolerance_band(celsius=1120, ranges={"C": value}),
        f"[gibbsteel.input.270] ranges, C: is {shown}; give (lowest, highest), or plus "
        "or minus one number: 0.02",
    )


def test_numbers_of_a_screen():
    refused(
        lambda: gs.screen([[10**400]], ["C"], celsius=1000),
        "[gibbsteel.input.320] compositions: are list, no table of numbers; give an "
        "array with one row per composition and one column per element",
    )
    pandas = pytest.importorskip("pandas")
    frame = pandas.DataFrame({"C": [0.5, 10**400]}, dtype=object)
    refused(
        lambda: gs.screen(frame, celsius=1000),
        f"[gibbsteel.input.320] compositions: column 'C' holds {LARGE}, no number; "
        "give numbers, or gs.steels_from_table(table) instead of the table",
    )


def test_texts_that_are_not_unicode(punch):
    name = (
        "name: is 'K\\udce4ln', which UTF-8 cannot write; read its file in the "
        "encoding it has, for instance encoding='cp1252'"
    )
    for call in (lambda **given: gs.Steel(C=0.5, **given), punch.changed):
        refused(lambda: call(name="K\udce4ln"), f"[gibbsteel.input.220] {name}")
    refused(
        lambda: gs.steels_from_table([{"name": "K\udce4ln", "C": 0.5}]),
        f"[gibbsteel.input.220] row 0 (K\\udce4ln), {name}",
    )
    refused(
        lambda: gs.steels_from_table([{"K\udce4": 1, "C": 0.5}]),
        "[gibbsteel.input.201] table: column 'K\\\\udce4' is not the symbol of an "
        'element; give ignore=["K\\udce4"], or name="K\\udce4" where it names the '
        "steels",
    )
    table = [{"K\udce4": 1, "C": 0.5}]
    assert gs.steels_from_table(table, ignore="K\udce4") == [gs.Steel(C=0.5)]
    assert gs.steels_from_table(table, name="K\udce4")[0].name == "1"


@pytest.mark.parametrize(
    "call",
    [
        lambda: gs.Steel({"K\udce4": 1.0}),
        lambda: gs.screen([[0.5]], ["K\udce4"], celsius=1000),
        lambda: gs.Steel(C=0.5).soak(celsius=900, phases=["K\udce4"]),
        lambda: gs.Steel(C=0.5).tolerance_band(celsius=900, ranges={"K\udce4": 0.1}),
    ],
)
def test_names_that_are_not_unicode(call):
    with pytest.raises(gs.InputError) as error:
        call()
    assert "K\\udce4" in str(error.value)
