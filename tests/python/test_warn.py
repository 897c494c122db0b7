"""Warnings of a result, issued through Python's warnings when asked for."""

import pickle
import warnings

import gibbsteel as gs
import pytest


def issued(result):
    with warnings.catch_warnings(record=True) as caught:
        warnings.simplefilter("always")
        result.warn()
    return caught


def test_nothing_is_issued_unless_asked(punch):
    # pyproject.toml turns every warning into an error.
    assert punch.soak(celsius=1350).warnings


def test_every_warning_of_a_result_is_issued_once(punch):
    state = punch.soak(celsius=1350)
    caught = issued(state)
    assert [str(w.message) for w in caught] == [str(w) for w in state.warnings]
    assert [w.message.code for w in caught] == [w.code for w in state.warnings]
    assert {w.filename for w in caught} == {__file__}
    sweep = punch.sweep(celsius=[1300, 1350, 1351])
    assert len(issued(sweep)) == len(sweep.warnings)
    assert issued(punch.soak(celsius=1100)) == []


def test_classes_can_be_filtered(punch):
    classes = {w.message.code: w.category for w in issued(punch.soak(celsius=1350))}
    assert classes["gibbsteel.warning.301"] is gs.OutsideValidityWarning
    assert classes["gibbsteel.warning.303"] is gs.GibbsteelWarning
    bad = issued(punch.soak(celsius=900, phases=["graphite"]))
    assert [w.category for w in bad] == [gs.NotUsableWarning]
    for kind in (gs.OutsideValidityWarning, gs.NotUsableWarning):
        assert issubclass(kind, gs.GibbsteelWarning)
    assert issubclass(gs.GibbsteelWarning, UserWarning)
    with warnings.catch_warnings():
        warnings.simplefilter("error", gs.NotUsableWarning)
        with pytest.raises(gs.NotUsableWarning) as error:
            punch.soak(celsius=900, phases=["graphite"]).warn()
    copy = pickle.loads(pickle.dumps(error.value))
    assert (copy.code, str(copy)) == (error.value.code, str(error.value))
