"""What warning 358 says of the published records is what they say."""

import gibbsteel as gs
import pytest
from accuracy_page.groups import is_steel
from accuracy_page.limits import rich_in_molybdenum
from evaluate import record_file


def most_vanadium(rich):
    compositions = [
        record["composition_wt"]
        for record in record_file.records()
        if is_steel(record) and "composition_wt" in record
    ]
    return max(c.get("V", 0.0) for c in compositions if rich_in_molybdenum(c) == rich)


@pytest.mark.parametrize("rich", [True, False])
def test_the_records_end_where_the_warning_says(rich):
    steel = gs.Steel({"C": 2.4, "Cr": 5, "V": 9.75, "W": 12 if rich else 0})
    (text,) = [
        warning.text
        for warning in steel.soak(celsius=1120).warnings
        if warning.code == "gibbsteel.warning.358"
    ]
    words = "4 wt% Mo + W/2 and more" if rich else "less than 4 wt% Mo + W/2"
    assert text == (
        f"No published record near: those of steels with {words} end at "
        f"{most_vanadium(rich):g} wt% V, this steel has 9.75. How far off carbides, "
        "matrix and hardness are is not known."
    )


def test_steels_of_the_records_carry_no_such_warning():
    for record in record_file.records():
        if is_steel(record) and "composition_wt" in record:
            state = gs.Steel(record["composition_wt"]).soak(celsius=1000)
            codes = [warning.code for warning in state.warnings]
            assert "gibbsteel.warning.358" not in codes, record["id"]
