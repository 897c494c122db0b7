"""What the misses rest on: made-up outcomes, then all records of the shipped file."""

import pytest
from accuracy_page import at_fault
from evaluate import record_file
from evaluate.verdict import Outcome

T1 = {"steel": "AISI T1 (HS18-0-1)", "composition_wt": {"C": 0.7, "W": 18.0}}


def missed(explanation, miss=1.5, confidence="high", **record):
    record = {
        "id": f"made-up/{explanation}",
        "steel": "Fe-C gamma",
        "comparison": "within",
        "quantity": "weight_percent",
        "value": 1.0,
        "confidence": confidence,
        "explanation": explanation,
        **record,
    }
    return Outcome(record, 1.0, miss, "miss" if abs(miss) > 1.0 else "pass")


def test_the_first_words_of_an_explanation_choose_the_part():
    def part(words, **record):
        return at_fault.group_of(missed(words, **record).record)

    assert part("File: carbon.") == at_fault.PUBLISHED_TERMS
    assert part("File: tungsten.", **T1) == at_fault.ESTIMATED_TERMS
    assert part("Chain, known: carbon.", **T1) == at_fault.ESTIMATED_TERMS
    assert part("Equation: offset.", **T1) == at_fault.EQUATIONS
    assert part("Chain, long-hold limit: carbon.") == at_fault.MINUTES
    assert part("Sources disagree: two lines.") == at_fault.SOURCES
    with pytest.raises(KeyError):
        part("Bad luck: none.")


def test_what_the_aims_ask_for():
    met = [missed("File: a.", miss=0.5) for _ in range(5)]
    sure = [missed("File: b.", miss=2.5) for _ in range(2)]
    unsure = [missed("Equation: c.", confidence="low") for _ in range(3)]
    # 8 of 10 within one; of confidence high 6 of 7; 10 of 10 within two.
    assert at_fault.still_needed([*met, *sure, *unsure]) == (3, 1, 2)
    text = at_fault.section([*met, *sure, *unsure])
    assert f"| {at_fault.EQUATIONS} | 3 | 0 | 0 |" in text
    assert f"| {at_fault.PUBLISHED_TERMS} | 2 | 2 | 2 |" in text
    assert "| needed for the aims | 3 | 1 | 2 |" in text
    assert "if all 0 records of confidence high in the other rows were met, " in text
    assert "85 % would still be missed, by 1." in text
    reachable = [*met, missed("Equation: c."), missed("Equation: d.")]
    assert at_fault.still_needed(reachable) == (1, 1, 0)
    assert "would still be missed" not in at_fault.section(reachable)


def test_every_missed_record_of_the_file_rests_on_one_part(outcome_of):
    outcomes = [outcome_of(r) for r in record_file.records()]
    sorted_out = [
        o.record["id"]
        for some in at_fault.missed_by_group(outcomes).values()
        for o in some
    ]
    missed_ids = [o.record["id"] for o in outcomes if o.verdict != "pass"]
    assert sorted(sorted_out) == sorted(missed_ids)
