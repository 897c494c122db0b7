"""Things of another kind than is asked for: one coded error, or taken as meant."""

import gibbsteel as gs
import numpy as np
import pytest


def message(call):
    with pytest.raises(gs.InputError) as error:
        call()
    return str(error.value)


def test_a_list_where_one_kind_belongs(punch):
    assert message(lambda: punch.dissolution_temperature(["M6C", "MC"])) == (
        "[gibbsteel.input.220] kind: is list, not str; give one kind, and call it "
        "once for each"
    )


def test_a_steel_where_a_soak_belongs(punch):
    assert message(lambda: gs.matching_temperature(reference=punch, steel=punch)) == (
        "[gibbsteel.input.220] reference: is Steel, not State; give a soak of it: "
        "steel.soak(celsius=1120)"
    )
    soak = punch.soak(celsius=1120)
    assert message(lambda: gs.matching_temperature(reference=soak, steel=soak)) == (
        "[gibbsteel.input.220] steel: is State, not Steel; give the steel that is to "
        "match the reference"
    )


def test_a_name_where_a_parameter_set_belongs(punch):
    text = (
        "[gibbsteel.input.220] parameters: is str, not ParameterSet; give what "
        'load_parameters or default_parameters("liquid") return'
    )
    assert message(lambda: gs.Steel(C=0.8, parameters="liquid")) == text
    assert message(lambda: punch.with_parameters("liquid")) == text


@pytest.mark.parametrize(
    ("threads", "text"),
    [
        (-1, "is -1; give a whole number from 0 to 4096"),
        (10**12, "is 1000000000000; give a whole number from 0 to 4096"),
        (1.5, "is float, not int; give a whole number"),
        ("two", "is str, not int; give a whole number"),
    ],
)
def test_what_is_no_number_of_threads(punch, threads, text):
    at = {"celsius": 1000, "threads": threads}
    for work in (
        lambda: gs.screen([[0.5]], ["C"], **at),
        lambda: punch.tolerance_band(ranges={"C": (0.5, 0.6)}, **at),
        lambda: punch.parameter_band(**at),
        lambda: gs.calibrate([], ["/phases/M6C/energy/2/terms/1"], threads=threads),
    ):
        assert message(work) == f"[gibbsteel.input.220] threads: {text}"


def test_counts_and_seeds_outside_what_there_is(punch):
    band = {"celsius": 1000, "ranges": {"C": (0.5, 0.6)}}
    vary = {"vary": {"C": (0.3, 1.0)}, "targets": []}
    most = 2**64
    for work, text in (
        (
            lambda: punch.tolerance_band(samples=-1, **band),
            "276] samples: is -1; give a whole number from 0 to 1000000",
        ),
        (
            lambda: punch.tolerance_band(seed=-1, **band),
            f"276] seed: is -1; give a whole number from 0 to {most - 1}",
        ),
        (
            lambda: punch.parameter_band(celsius=1000, seed=most),
            f"276] seed: is {most}; give a whole number from 0 to {most - 1}",
        ),
        (
            lambda: gs.design(punch, starts=10**12, **vary),
            "269] starts: is 1000000000000; give a whole number from 0 to 1000",
        ),
        (
            lambda: gs.design(punch, candidates=-1, **vary),
            "269] candidates: is -1; give a whole number from 0 to 100000",
        ),
    ):
        assert message(work) == f"[gibbsteel.input.{text}"


def test_counts_and_rows_outside_what_there_is(punch):
    carbon = {"matrix_carbon": 0.5, "percent": (0.3, 0.8), "celsius": 1000}
    for work, text in (
        (
            lambda: punch.composition_for("C", steps=-1, **carbon),
            "268] steps: is -1; give a whole number from 4 to 10000",
        ),
        (
            lambda: gs.calibrate([], {}, most_evaluations=10**12),
            "302] most_evaluations: is 1000000000000; give a whole number from 2 to "
            "100000",
        ),
        (
            lambda: gs.screen([[0.5]], ["C"], celsius=950, first_row=2**70),
            f"323] first_row: is {2**70} of 1 rows; give the number of a row, counted "
            "from 0",
        ),
        (
            lambda: gs.screen([[0.5]], ["C"], celsius=950, last_row="end"),
            "220] last_row: is str, not int; give a whole number",
        ),
        (
            lambda: next(gs.screen_chunks([[0.5]], ["C"], celsius=950, chunk_rows=1.5)),
            "220] chunk_rows: is float, not int; give a whole number",
        ),
        (
            lambda: gs.screen_pieces([[0.5]], ["C"], celsius=950, pilot="all"),
            "220] pilot: is str, not int; give a whole number",
        ),
    ):
        assert message(work) == f"[gibbsteel.input.{text}"


def test_counts_of_options_are_whole():
    most = 2**53
    for options, names in (
        (gs.SearchOptions, ["most_soaks"]),
        (gs.SectionOptions, ["columns", "rows", "most_soaks", "threads"]),
    ):
        for name in names:
            for given, what in (
                (-1, f"is -1; give a whole number from 0 to {most}"),
                (10**20, f"is {10**20}; give a whole number from 0 to {most}"),
                (2.5, "is float, not int; give a whole number"),
            ):
                text = message(lambda o=options, n=name, g=given: o(**{n: g}))
                assert text == f"[gibbsteel.input.220] {name}: {what}"
    assert gs.SearchOptions(most_soaks=np.int64(50)).most_soaks == 50


def test_numbers_of_numpy_are_whole(punch):
    one, two = np.int64(1), np.int32(2)
    assert gs.screen(
        [[0.5]] * 4, ["C"], celsius=950, threads=one, first_row=one, last_row=two
    ).rows_asked == 1


def test_a_number_is_no_name():
    assert message(lambda: gs.Steel(C=0.8, name=3)) == (
        "[gibbsteel.input.220] name: is int, not str; give a text, for instance "
        "name='heat 7'"
    )


def test_what_is_no_target(punch):
    vary = {"C": (0.3, 1.0)}
    assert message(lambda: gs.design(punch, vary=vary, targets=[0.5])) == (
        "[gibbsteel.input.220] targets: is float, not DesignTarget; make each with "
        "gs.target(...)"
    )


def test_one_is_as_good_as_a_list_of_one(punch):
    soak = punch.soak(celsius=1120)
    assert str(gs.compare(soak)) == str(gs.compare([soak]))
    carbon = gs.target(gs.quantities.matrix("C"), equal=0.45, celsius=1100)
    vary = {"C": (0.3, 1.0)}
    one = gs.design(punch, vary=vary, targets=carbon)
    assert str(one) == str(gs.design(punch, vary=vary, targets=[carbon]))


def test_a_short_soak_serves_as_reference_and_hardens():
    bearing = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    short = bearing.soak(celsius=845).with_measured_carbide({"M3C": 6.0})
    assert short.hardening() == short.state.hardening()
    by_short = gs.matching_temperature(reference=short, steel=bearing)
    by_state = gs.matching_temperature(reference=short.state, steel=bearing)
    assert str(by_short) == str(by_state)


def test_a_twin_is_not_made_from_ferrite(punch):
    assert message(lambda: punch.matrix_twin(celsius=700)) == (
        "[gibbsteel.input.260] state: has a matrix without austenite; take a "
        "temperature at which the steel is austenitized: the matrix of an annealed "
        "steel holds next to no carbon"
    )


def test_bearing_steel_is_warned_of_short_soaks():
    bearing = gs.Steel({"C": 1.0, "Cr": 1.45, "Mn": 0.35, "Si": 0.25})
    soak = bearing.soak(celsius=845)
    code = "gibbsteel.warning.336"
    assert code in [w.code for w in soak.hardening().warnings]
    short = soak.with_measured_carbide({"M3C": 6.0})
    assert code not in [w.code for w in short.hardening().warnings]


def test_oil_hardening_steel_is_warned_of_short_soaks_annealed_steel_is_not():
    code = "gibbsteel.warning.336"
    oil = gs.Steel({"C": 0.92, "Mn": 1.2, "Cr": 0.5, "W": 0.5, "V": 0.1})
    assert code in [w.code for w in oil.soak(celsius=805).hardening().warnings]
    assert code not in [w.code for w in oil.soak(celsius=680).hardening().warnings]


def test_what_is_no_mapping(punch):
    carbon = gs.target(gs.quantities.matrix("C"), equal=0.4, celsius=1120)
    measured = [gs.measurement(punch, gs.quantities.matrix("C"), 0.4, 1, celsius=1120)]
    number = ["/phases/M6C/energy/2/terms/1"]
    for work, text in (
        (
            lambda: gs.design(punch, vary=["C", "Mo"], targets=[carbon]),
            "220] vary: is list, not a mapping; give lowest and highest weight percent "
            'by element: vary={"C": (0.3, 0.9)}',
        ),
        (
            lambda: punch.tolerance_band(celsius=1120, ranges=["C"]),
            "220] ranges: is list, not a mapping; give them by element: "
            'ranges={"C": (0.50, 0.60)}',
        ),
        (
            lambda: punch.tolerance_band(celsius=1120, standard_deviations=["C"]),
            "202] standard_deviations: is list, not a mapping; give weight percent by "
            'symbol, for instance {"C": 0.55}',
        ),
        (
            lambda: gs.calibrate(measured, number, start=number),
            "220] start: is list, not a mapping; give first values by number, as those "
            "of numbers=",
        ),
        (
            lambda: gs.screen_into(["status"], [[0.5]], ["C"], celsius=950),
            "220] out: is list, not a mapping; give arrays by column, such as "
            '{"status": array}',
        ),
        (
            lambda: punch.soak(celsius=1120).with_measured_carbide(["M6C"]),
            "220] measured: is str, not MeasuredCarbide; make each with "
            'gs.MeasuredCarbide("M3C", 6.0)',
        ),
    ):
        assert message(work) == f"[gibbsteel.input.{text}"


def test_rounding_that_would_not_be_that_of_the_caller(punch):
    text = (
        "[gibbsteel.input.220] rounding: is dict, not MakeableSteps; give True, or for "
        'instance MakeableSteps({"C": 0.02}, others=0.1)'
    )
    carbon = gs.target(gs.quantities.matrix("C"), equal=0.4, celsius=1120)
    how = {"vary": {"C": (0.3, 0.9)}, "targets": carbon, "rounding": {"C": 0.1}}
    assert message(lambda: gs.design(punch, **how)) == text
    assert message(lambda: punch.matrix_twin(celsius=1120, rounding={"C": 1})) == text


def test_a_single_target_and_none(punch):
    how = {"vary": {"C": (0.3, 0.9)}}
    assert message(lambda: gs.design(punch, targets=None, **how)) == (
        "[gibbsteel.input.220] targets: is NoneType, not DesignTarget; make each with "
        "gs.target(...)"
    )
