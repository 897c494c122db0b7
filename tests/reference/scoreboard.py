#!/usr/bin/env python3
"""Prints how gibbsteel does against published values.

    python3 scoreboard.py             one line per record, then the counts
    python3 scoreboard.py --misses    only records that miss or are not computed
    python3 scoreboard.py --only ID   only records whose id contains ID
    python3 scoreboard.py --freeze    adds what passes now to frozen.json

gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

import argparse
import sys
from collections import Counter

from evaluate import record_file
from evaluate.verdict import MISS, NOT_COMPUTED, PASS, judge, show

HEADER = (
    f"{'record':<34} {'steel':<28} {'quantity':<30} {'T [C]':>6} "
    f"{'computed':>10} {'published':>10} {'uncert.':>9} {'miss/u':>7}  verdict"
)


def line(outcome):
    """One record: computed, published, uncertainty, miss in uncertainties, verdict."""
    record = outcome.record
    published = show(record["value"])
    if record["comparison"] == "between":
        published = "{:g} to {:g}".format(*record["value"])
    computed = show(outcome.computed)
    text = (
        f"{record['id']:<34} {record['steel'][:28]:<28} {quantity(record)[:30]:<30} "
        f"{temperature(record):>6} {computed:>10} {published:>10} "
        f"{uncertainty(record):>9} {miss(outcome):>7}  {outcome.verdict}"
    )
    if record["fitted"]:
        text += " (fitted)"
    if outcome.remark:
        text += f" ({outcome.remark})"
    if outcome.verdict != PASS and "explanation" in record:
        text += f"\n{'':<4}{record['explanation']}"
    return text


def quantity(record):
    """The kind of quantity with what it is about: 'weight_percent Cr M7C3'."""
    about = [record.get(key) for key in ("element", "phase")]
    return " ".join([record["quantity"], *(a for a in about if a)])


def temperature(record):
    celsius = record.get("celsius")
    return "-" if celsius is None else f"{celsius:g}"


def uncertainty(record):
    given = record.get("uncertainty")
    if record["comparison"] == "factor":
        return f"x/{given:g}"
    if isinstance(given, list):
        return f"-{given[0]:g}+{given[1]:g}"
    return "-" if given is None else f"{given:g}"


def miss(outcome):
    judged_by_size = outcome.record["comparison"] in ("within", "factor", "between")
    if not judged_by_size or outcome.computed is None:
        return "-"
    return f"{outcome.miss:+.2f}"


def counts(outcomes):
    """The closing lines."""
    tally = Counter(outcome.verdict for outcome in outcomes)
    fitted = sum(o.record["fitted"] and o.verdict == PASS for o in outcomes)
    return (
        f"{len(outcomes)} records: {tally[PASS]} pass ({fitted} of them fitted to), "
        f"{tally[MISS]} miss, {tally[NOT_COMPUTED]} not computed"
    )


def changes(outcomes, frozen):
    """(lost, new): what frozen records lost; ids that pass and are not frozen."""
    by_id = {outcome.record["id"]: outcome for outcome in outcomes}
    lost = [
        f"{name}: passed when frozen, now {by_id[name].verdict}"
        if name in by_id
        else f"{name}: frozen, but no longer in records.json"
        for name in frozen["passes"]
        if name not in by_id or by_id[name].verdict != PASS
    ]
    lost += [
        f"{name}: was computed when frozen, now not"
        for name in frozen["computed"]
        if name not in by_id or by_id[name].verdict == NOT_COMPUTED
    ]
    passes = [name for name, outcome in by_id.items() if outcome.verdict == PASS]
    return lost, [name for name in passes if name not in frozen["passes"]]


def freeze(outcomes, lost):
    """Adds to frozen.json; never drops an id, that is a decision to make by hand."""
    if lost:
        print("not frozen: mend these first, or take them out of frozen.json by hand")
        return 1
    passes = [o.record["id"] for o in outcomes if o.verdict == PASS]
    computed = [o.record["id"] for o in outcomes if o.verdict != NOT_COMPUTED]
    record_file.write_frozen(passes, computed)
    print(f"frozen: {len(passes)} that pass, {len(computed)} that are computed")
    return 0


def main(arguments=None):
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--misses", action="store_true", help="leave out what passes")
    parser.add_argument("--only", metavar="ID", default="", help="part of the id")
    parser.add_argument("--freeze", action="store_true", help="update frozen.json")
    options = parser.parse_args(arguments)
    if options.freeze and options.only:
        parser.error("--freeze needs all records; leave out --only")

    chosen = [r for r in record_file.records() if options.only in r["id"]]
    outcomes = [judge(record) for record in chosen]
    print(HEADER)
    for outcome in outcomes:
        if not (options.misses and outcome.verdict == PASS):
            print(line(outcome))
    print(counts(outcomes))
    if options.only:
        return 0
    lost, new = changes(outcomes, record_file.frozen())
    for complaint in lost:
        print(complaint)
    for name in new:
        print(f"{name}: passes now, freeze it")
    if options.freeze:
        return freeze(outcomes, lost)
    return 1 if lost else 0


if __name__ == "__main__":
    sys.exit(main())
