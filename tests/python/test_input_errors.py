"""What is refused, word for word."""

import gibbsteel as gs
import pytest


def refused(call, *expected):
    with pytest.raises(gs.InputError) as error:
        call()
    assert str(error.value) == "\n".join(expected)
    assert error.value.code == expected[0][1 : expected[0].index("]")]
    assert isinstance(error.value, ValueError)
    assert len(error.value.problems) == len(expected)


@pytest.mark.parametrize(
    ("composition", "expected"),
    [
        (
            {"cr": 4.0},
            "[gibbsteel.input.201] composition: 'cr' is not the symbol of an element; "
            "did you mean 'Cr'?",
        ),
        (
            {"Xx": 4.0},
            "[gibbsteel.input.201] composition: 'Xx' is not the symbol of an element; "
            "give symbols such as C, Cr, Mo",
        ),
        (
            {"C": float("nan")},
            "[gibbsteel.input.202] composition, C: is nan, not a number; give weight "
            "percent, or leave the element out where it was not measured",
        ),
        (
            {"C": -0.5},
            "[gibbsteel.input.203] composition, C: is negative: -0.5; "
            "give weight percent, from 0 to 100",
        ),
        (
            {"C": 101.0},
            "[gibbsteel.input.204] composition, C: is above 100: 101; "
            "give weight percent, from 0 to 100",
        ),
        (
            {"C": 60.0, "Cr": 50.0},
            "[gibbsteel.input.204] composition: sums to 110.00; "
            "the sum cannot be above 100 weight percent",
        ),
        (
            {"Fe": 90.0, "C": 1.0},
            "[gibbsteel.input.207] composition: sums to 91.00 with Fe; "
            "make it 100, or leave Fe out: it is the balance",
        ),
        (
            {"Fe": 0.0, "Cu": 100.0},
            "[gibbsteel.input.208] composition: holds no element that the parameter "
            "file models; give at least one of its elements",
        ),
        (
            {},
            "[gibbsteel.input.208] composition: is empty; give weight percent by "
            "symbol, for instance 0.55 C; pure iron is 100 Fe",
        ),
        (
            {"Cb": 0.1},
            "[gibbsteel.input.201] composition: 'Cb' is not the symbol of an element; "
            "did you mean 'Nb'?",
        ),
        (
            {"C": "0.55"},
            "[gibbsteel.input.202] composition, C: is '0.55', a text; give the number "
            "0.55; gs.steels_from_table reads texts",
        ),
        (
            {"C": "0,560"},
            "[gibbsteel.input.202] composition, C: is '0,560', a text with a decimal "
            "comma; give the number 0.56; gs.steels_from_table reads texts",
        ),
        (
            {"C": "<0.01"},
            "[gibbsteel.input.202] composition, C: is '<0.01', less than could be "
            "measured; leave it out where that is as good as none, or give a number",
        ),
        (
            {"C": " "},
            "[gibbsteel.input.202] composition, C: is ' '; give weight percent as a "
            "number, for instance 0.55, or leave the element out where it was not "
            "measured",
        ),
        (
            {"C %": 0.55},
            "[gibbsteel.input.201] composition: 'C %' is not the symbol of an element; "
            "call it 'C'",
        ),
        (
            {"N ppm": 180},
            "[gibbsteel.input.201] composition: 'N ppm' is not the symbol of an "
            "element; call it 'N' and give weight percent: 1 of it is 10000 ppm",
        ),
        (
            {"C at%": 2.5},
            "[gibbsteel.input.201] composition: 'C at%' is not the symbol of an "
            "element; call it 'C' and give weight percent",
        ),
        (
            {"Heat": 7411.0},
            "[gibbsteel.input.201] composition: 'Heat' is not the symbol of an "
            "element; give symbols such as C, Cr, Mo",
        ),
    ],
)
def test_compositions(composition, expected):
    refused(lambda: gs.Steel(composition), expected)


def test_all_problems_are_named_at_once():
    refused(
        lambda: gs.Steel({"C": -1.0, "CR": 4.0}),
        "[gibbsteel.input.203] composition, C: is negative: -1; "
        "give weight percent, from 0 to 100",
        "[gibbsteel.input.201] composition: 'CR' is not the symbol of an element; "
        "did you mean 'Cr'?",
    )
    refused(
        lambda: gs.Steel({"C %": 0.5, "Co": float("nan"), "Heat": 7411.0}),
        "[gibbsteel.input.201] composition: 'C %' is not the symbol of an element; "
        "call it 'C'",
        "[gibbsteel.input.202] composition, Co: is nan, not a number; give weight "
        "percent, or leave the element out where it was not measured",
        "[gibbsteel.input.201] composition: 'Heat' is not the symbol of an element; "
        "give symbols such as C, Cr, Mo",
    )


def test_a_list_is_no_composition():
    refused(
        lambda: gs.Steel([0.5]),
        "[gibbsteel.input.202] composition: is list, not a mapping; "
        'give weight percent by symbol, for instance {"C": 0.55}',
    )


def test_an_element_is_given_once():
    refused(
        lambda: gs.Steel({"C": 0.55, "Cr": None}, C=0.6),
        "[gibbsteel.input.202] composition, Cr: is None; give weight percent as a "
        "number, for instance 0.55, or leave the element out where it was not measured",
        "[gibbsteel.input.202] composition, C: is given twice; give it once",
    )


@pytest.mark.parametrize(
    ("keywords", "expected"),
    [
        (
            {},
            "[gibbsteel.input.211] temperature: got none; "
            "give exactly one of celsius=, fahrenheit= and kelvin=",
        ),
        (
            {"celsius": 1000, "kelvin": 1300},
            "[gibbsteel.input.211] temperature: got celsius= and kelvin=; "
            "give exactly one of celsius=, fahrenheit= and kelvin=",
        ),
        (
            {"celsius": "hot"},
            "[gibbsteel.input.211] temperature: celsius='hot' is text, not a number; "
            "give a number, for instance celsius=1120",
        ),
        (
            {"celsius": [1000, 1100]},
            "[gibbsteel.input.211] temperature: celsius=[1000, 1100] is not a number; "
            "give a number, for instance celsius=1120",
        ),
        (
            {"kelvin": 150},
            "[gibbsteel.input.210] temperature: is 150.0 K = -123.1 C; "
            "give 300 K to 2500 K (27 C to 2227 C, 80 F to 4040 F) and check the unit",
        ),
        (
            {"celsius": 2300},
            "[gibbsteel.input.210] temperature: is 2573.2 K = 2300.0 C; "
            "did you mean 2300 F (1260 C)? "
            "give 300 K to 2500 K (27 C to 2227 C, 80 F to 4040 F) and check the unit",
        ),
        (
            {"celsius": float("nan")},
            "[gibbsteel.input.210] temperature: is nan K = nan C; "
            "give 300 K to 2500 K (27 C to 2227 C, 80 F to 4040 F) and check the unit",
        ),
        (
            {"celsius": 1000, "phases": "M5C2"},
            "[gibbsteel.input.205] phases: there is no phase 'M5C2'; choose from: "
            "austenite, MC, ferrite, M6C, M7C3, M23C6, M3C, M2C, hexagonal matrix, "
            "M3C2, hexagonal MC, graphite",
        ),
        (
            {"celsius": 1000, "suppressed": ["MC"]},
            "[gibbsteel.input.212] suppressed: 'austenite' and 'MC' are two kinds of "
            "one phase model; suppress both or neither",
        ),
    ],
)
def test_soaks(punch, keywords, expected):
    refused(lambda: punch.soak(**keywords), expected)


def test_options():
    refused(
        lambda: gs.SolveOptions(max_rounds=0),
        "[gibbsteel.input.232] max_rounds: is 0; give 1 or more",
    )


def test_a_temperature_names_its_unit(punch):
    refused(
        lambda: punch.soak(1120),
        "[gibbsteel.input.211] temperature: got 1120 without a unit; "
        "give the unit: soak(celsius=1120)",
    )
    refused(
        lambda: punch.sweep(range(900, 1001)),
        "[gibbsteel.input.211] temperature: got range(900, 1001) without a unit; "
        "give the unit: sweep(celsius=range(900, 1231, 5))",
    )


def test_a_kind_that_the_file_does_not_know(state):
    assert state.volume_percent_of("M23C6") == 0.0
    known = ", ".join(state.kinds)
    refused(
        lambda: state.volume_percent_of("cementite"),
        "[gibbsteel.input.205] kind: there is no phase 'cementite'; "
        f"did you mean 'M3C'? choose from: {known}",
    )
    refused(
        lambda: state["cementite"],
        "[gibbsteel.input.205] state: there is no phase 'cementite'; "
        f"did you mean 'M3C'? choose from: {known}",
    )


def test_a_word_that_is_neither_element_nor_option():
    what = "is neither the symbol of an element nor an option"
    refused(
        lambda: gs.Steel(C=0.85, nam="x"),
        f"[gibbsteel.input.201] composition: 'nam' {what}; did you mean name=?",
    )
    refused(
        lambda: gs.Steel(C=0.85, units="atomic"),
        f"[gibbsteel.input.201] composition: 'units' {what}; give a symbol such as Cr",
    )
    refused(
        lambda: gs.Steel({"C": 0.85, "heat": "a", "Name": "b", "Cr": "much"}),
        "[gibbsteel.input.201] composition: 'heat' is not the symbol of an element; "
        "give a symbol such as Cr",
        "[gibbsteel.input.201] composition: 'Name' is not the symbol of an element; "
        "give the name apart: name=",
        "[gibbsteel.input.202] composition, Cr: is 'much', no number; give weight "
        "percent as a number, for instance 0.55",
    )


@pytest.mark.parametrize("celsius", [1000, "hot"])
def test_a_single_temperature_is_no_sweep(punch, celsius):
    refused(
        lambda: punch.sweep(celsius=celsius),
        f"[gibbsteel.input.211] temperature: celsius={celsius!r} is no series of "
        "temperatures; give a series, for instance celsius=range(900, 1231, 5)",
    )


def test_phase_models():
    refused(
        lambda: gs.default_parameters().phase_model("M5C2", elements=["Fe", "Nb"]),
        "[gibbsteel.input.205] name: there is no phase model 'M5C2'; choose from: "
        "austenite, ferrite, M6C, M7C3, M23C6, M3C, M2C, M3C2, "
        "hexagonal MC, graphite",
        "[gibbsteel.input.206] elements: the parameter set does not model 'Nb'; "
        "leave it out or load a file that models it",
    )


def test_curves():
    refused(
        lambda: gs.default_parameters().curve_value("nickel, cubic", 1000.0),
        "[gibbsteel.input.213] curve: there is no curve 'nickel, cubic'; "
        "see the curves of the parameter set",
    )


def test_mole_fractions():
    refused(
        lambda: gs.minimize(["Fe", "C"], [0.5, 0.1], 1000.0),
        "[gibbsteel.input.231] mole_fractions: they sum to 0.6; "
        "give one number > 0 per element of the system, sum 1",
    )


def test_outside_validity_is_a_warning_not_an_error():
    state = gs.Steel(C=0.5, Ni=9.0).soak(celsius=500)
    assert state.usable
    assert [(w.code, w.text) for w in state.warnings][:2] == [
        (
            "gibbsteel.warning.301",
            "The temperature is outside the validity of the parameter file, 600 C to "
            "1300 C.",
        ),
        (
            "gibbsteel.warning.302",
            "9 wt% Ni is outside the validity of the parameter file, 0 to 4.",
        ),
    ]
