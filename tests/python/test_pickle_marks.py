"""A pickle that is not what it says is refused with a code; it is never misread."""

import pickle

import gibbsteel as gs
import pytest
from gibbsteel import parameters, quantities, steel

FOREIGN = (
    "does not carry the mark of this class: it was not written by gibbsteel, or by a "
    "version before pickles were marked; make the value again from its steel"
)
DAMAGED = (
    "is damaged: its fields are not those of the class; make the value again from its "
    "steel"
)


def state_of(value):
    """What pickle keeps of it, besides its class."""
    return value.__reduce_ex__(4)[2]


def made_from(kind, state):
    value = kind.__new__(kind)
    value.__setstate__(state)
    return value


def refusal(make, *arguments):
    with pytest.raises(gs.InputError) as error:
        make(*arguments)
    return str(error.value)


def test_what_a_pickle_carries(state):
    mark, fields = state_of(state)
    assert mark == "gibbsteel State 3"
    assert fields[0] == state.steel
    again = made_from(type(state), (mark, fields))
    assert str(again) == str(state)
    assert state_of(state["MC"])[0] == "gibbsteel Occurrence 1"


def test_no_mark_or_that_of_another_class(state):
    mark, fields = state_of(state)
    kind = type(state)
    for wrong in (
        fields,  # as versions before the marks wrote it
        ("gibbsteel Sweep 1", fields),
        ("gibbsteel State one", fields),
        ("gibbsteel State 0", fields),
        ("gibbsteel State 3 ", fields),
        ("gibbsteel State 99999999999", fields),
        (1, fields),
        (mark, fields, fields),
        (),
        None,
        3.5,
    ):
        said = refusal(made_from, kind, wrong)
        assert said == f"[gibbsteel.input.256] pickle of State: {FOREIGN}"


def test_a_later_format(state):
    fields = state_of(state)[1]
    assert refusal(made_from, type(state), ("gibbsteel State 4", fields)) == (
        "[gibbsteel.input.257] pickle of State: is of format 4, written by a later "
        "version; read it with that version; this one knows formats up to 3"
    )


def test_damaged_fields(state):
    mark, fields = state_of(state)
    swapped = (fields[1], fields[0], *fields[2:])
    no_such_basis = (*fields[:3], 7, *fields[4:])
    no_time = (*fields[:-1], (0.0, 0.6, None))
    for wrong in (fields[:-1], (), swapped, no_such_basis, no_time, "fields", None, 5):
        said = refusal(made_from, type(state), (mark, wrong))
        assert said == f"[gibbsteel.input.258] pickle of State: {DAMAGED}"


def changed(value, at, by):
    mark, fields = state_of(value)
    return mark, (*fields[:at], by, *fields[at + 1 :])


def test_lengths_of_a_comparison_that_do_not_fit(state):
    hardness = quantities.hardness_hrc()
    table = gs.compare([state, state], quantities=[hardness])
    row = table[hardness.name]
    for at, by in ((3, [1.0]), (4, []), (2, [1.0]), (3, [1.0] * 3)):
        said = refusal(made_from, type(row), changed(row, at, by))
        assert said == f"[gibbsteel.input.258] pickle of ComparisonRow: {DAMAGED}"
    short = made_from(type(row), ("gibbsteel ComparisonRow 1", ("a", "", [1.0])))
    for at, by in ((0, [state]), (1, [short]), (4, [[]])):
        said = refusal(made_from, type(table), changed(table, at, by))
        assert said == f"[gibbsteel.input.258] pickle of Comparison: {DAMAGED}"
    assert str(made_from(type(table), state_of(table))) == str(table)


@pytest.mark.parametrize(
    "counts",
    [
        (10, 11, 5, 0, 5, 5),
        (10, 5, 11, 0, 5, 5),
        (10, 5, 5, 11, 0, 0),
        (10, 5, 5, 4, 7, 5),
        (10, 5, 5, 4, 5, 6),
        (10, 9, 5, 2, 5, 5),
        (10, 5, 5, 4, 5),
    ],
)
def test_counts_of_published_measurements_that_do_not_fit(counts):
    mark = "gibbsteel PublishedCheck 1"
    good = (10, 5, 6, 4, 3, 2)
    assert state_of(made_from(gs.PublishedCheck, (mark, good))) == (mark, good)
    assert refusal(made_from, gs.PublishedCheck, (mark, counts)) == (
        f"[gibbsteel.input.258] pickle of PublishedCheck: {DAMAGED}"
    )


def test_an_enumerator_that_is_not_known(state):
    mark, fields = state_of(state.solve_report)
    for wrong in (-1, 99, "converged"):
        said = refusal(
            made_from, type(state.solve_report), (mark, (wrong, *fields[1:]))
        )
        assert said == f"[gibbsteel.input.258] pickle of SolveReport: {DAMAGED}"


def test_options_out_of_range_say_so():
    mark, fields = state_of(gs.SolveOptions())
    said = refusal(made_from, gs.SolveOptions, (mark, (0, *fields[1:])))
    assert said == "[gibbsteel.input.232] max_rounds: is 0; give 1 or more"


@pytest.mark.parametrize(
    ("restore", "name", "value"),
    [
        (steel.restore, "Steel", gs.Steel({"C": 0.8})),
        (parameters.restore, "ParameterSet", gs.default_parameters()),
        (quantities.restore, "Quantity", quantities.matrix("C")),
    ],
)
def test_what_is_rebuilt_in_python(restore, name, value):
    made_by, (mark, *fields) = value.__reduce__()
    assert made_by is restore and mark == f"gibbsteel {name} 1"
    assert pickle.dumps(restore(mark, *fields)) == pickle.dumps(value)
    assert refusal(restore, fields[0], *fields[1:]) == (
        f"[gibbsteel.input.256] pickle of {name}: {FOREIGN}"
    )
    assert refusal(restore, f"gibbsteel {name} 2", *fields) == (
        f"[gibbsteel.input.257] pickle of {name}: is of format 2, written by a later "
        "version; read it with that version; this one knows formats up to 1"
    )
    damaged = f"[gibbsteel.input.258] pickle of {name}: {DAMAGED}"
    assert refusal(restore, mark) == damaged
    assert refusal(restore, mark, *fields[:-1]) == damaged
    if name == "Steel":  # its own check of the composition speaks first
        damaged = (
            "[gibbsteel.input.202] composition: is int, not a mapping; give weight "
            'percent by symbol, for instance {"C": 0.55}'
        )
    assert refusal(restore, mark, 1, *fields[1:]) == damaged


def test_a_quantity_names_no_other_function():
    for name in ("restore", "_core", "print", "__import__"):
        assert refusal(quantities.restore, "gibbsteel Quantity 1", name, "x") == (
            f"[gibbsteel.input.258] pickle of Quantity: {DAMAGED}"
        )


def double_carbon(state):
    """A user's own quantity."""
    return 2.0 * state.matrix.weight_percent["C"]


def test_a_quantity_of_the_users_own(state):
    own = gs.Quantity("double carbon", "wt%", double_carbon)
    again = pickle.loads(pickle.dumps(own))
    assert again.value(state) == own.value(state)
    assert (again.name, again.unit) == ("double carbon", "wt%")
