"""What tells timed soaks from both limits: the counts of thermo_data/TRUST.md, on the
same records."""

import pytest
from evaluate import record_file
from evaluate.verdict import PASS, judge

TIMED = [r for r in record_file.records() if "minutes" in r]
AT_ONCE = 1e-3  # minutes: carbon alone has moved, the short-soak limit


def passed(change):
    judged = [judge(change(record)) for record in TIMED]
    return {o.record["id"] for o in judged if o.verdict == PASS}


@pytest.fixture(scope="module")
def by_minutes():
    return passed(lambda record: record)


def test_eleven_of_twelve_are_met_by_their_minutes(by_minutes):
    assert len(TIMED) == 12
    assert {r["id"] for r in TIMED} - by_minutes == {"coldwork/FEC-08:minutes"}
    assert len([r for r in TIMED if r["fitted"]]) == 3


def test_the_short_soak_limit_alone_meets_ten(by_minutes):
    limit = passed(lambda record: {**record, "minutes": AT_ONCE})
    assert by_minutes - limit == {"coldwork/BRG-13:890-minutes"}
    assert len(limit) == 10


def test_the_long_hold_meets_three():
    def long_held(record):
        return {k: v for k, v in record.items() if k not in ("minutes", "annealed")}

    assert passed(long_held) == {
        "coldwork/BRG-12:minutes",
        "coldwork/FEC-07:minutes",
        "coldwork/O1-01:minutes",
    }
