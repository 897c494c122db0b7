"""The text of thermo_data/ACCURACY.md."""

from element_signs.changes import changes
from element_signs.section import signs_section
from evaluate import library

from . import aims, at_fault, groups, left_out, published_records, with_layer, within
from .figures import by_group, figures, fitted, independent, without_size, worst
from .hardening import hardening_section
from .limits import limits_section
from .markdown import number, short, table

WORST = 10
PLOTS = {
    "matrix.png": "composition of the matrix",
    "carbides.png": "composition of carbides",
    "amounts.png": "amounts of carbide",
    "carbon_activity.png": "carbon activity",
    "hardening.png": "martensite start, retained austenite and hardness",
}


def page(outcomes, reasons, layered, on_iron):
    """
    @param reasons  published record -> why it is not compared with the file
    @param layered  (board, outcomes) of each layer; none: the page leaves them out
    @param on_iron  (name, outcomes) of the file and each layer, on iron as measured
    """
    parts = [
        head(outcomes, reasons),
        within.section(outcomes),
        *([with_layer.section(outcomes, layered, on_iron)] if layered else []),
        published_records.section(outcomes),
        at_fault.section(outcomes),
        aims_section(outcomes),
        grouped("By family", "family", outcomes, groups.family_of, units=False),
        grouped("By quantity", "quantity", outcomes, groups.quantity_of, units=True),
        hardening_section(outcomes),
        worst_section(outcomes),
        unsized_section(outcomes),
        signs_section(changes()),
        plots_section(),
        limits_section(outcomes),
        left_out.section(reasons, layered),
    ]
    return "\n\n".join(parts) + "\n"


def head(outcomes, reasons):
    passes = figures(outcomes).within_1
    timed = len(aims.timed(outcomes))
    parameters = library.parameters()
    return f"""# How far off the results are

Computed by the long-hold limit with
*{parameters.title}*,
content {parameters.content_hash}, and held against published values: {len(outcomes)}
records, of which {passes} lie within their published uncertainty. {timed} of them
hold the timed soak against what stands here by the long-hold limit too.
{len(reasons)} more published records cannot be
compared with this file, see the end of the page. Written by
`python3 tests/reference/accuracy.py`; a test keeps it equal to what that command
writes. `tests/reference/README.md` says what a record is.

A miss is (computed - published) / published uncertainty. Records that terms of the
parameter file were fitted to are counted apart: that they agree proves little. One term
was added after records of 13Cr steels with false ferrite had been seen, chromium with
silicon; its number is from memory and was not fitted, so they count as not fitted to.
Values quoted from memory carry the confidence that their table gives them. What edition
2026-11-25 did, and which records were gained and lost since, stands in
[layers/carbides.md](layers/carbides.md). Long-hold limit: a shop soak of minutes leaves
more carbide and less carbon in the matrix. Before hardening real parts try coupons and
follow the steel maker's data."""


def aims_section(outcomes):
    rows = []
    for group, aim, everything, free, sure in aims.rows(outcomes):
        digits = 2 if aim < 1.0 else 1
        met = "yes" if everything.in_unit <= aim else "**no**"
        rows.append(
            [group, f"{aim:g}", everything.count, number(everything.in_unit, digits)]
            + [met if everything.count else "no record"]
            + [free.count, number(free.in_unit, digits)]
            + [sure.count, number(sure.in_unit, digits)]
        )
    header = ["mean absolute miss of", "aim", "records", "now", "met"]
    header += ["not fitted to", "now", "confidence high or medium", "now"]
    return (
        "## Aims for hardened steels\n\nComposition and amounts: high-speed and "
        "cold-work steels soaked above 800 C. Hardening: all steels, soaked (chain of "
        "soak and equation). Rows by the timed soak take the published minutes of "
        "steels with cementite when annealed, or those of common practice; the others "
        "are by the long hold there too.\n\n"
        + table(header, rows)
    )


def grouped(title, what, outcomes, group_of, units):
    groups_here = by_group(outcomes, group_of)
    order = list(groups.families()) if not units else sorted(groups_here)
    header = [what, "not fitted to", "within 1", "within 2", "bias", "mean miss"]
    header += ["in its unit"] * units + ["fitted to", "within 1"]
    rows = []
    for group in order:
        free, used = independent(groups_here[group]), fitted(groups_here[group])
        f, g = figures(free), figures(used)
        unit = [number(f.in_unit, 3) if groups.has_unit(group) else "-"] * units
        rows.append(
            [group, f.count, f.within_1, f.within_2, number(f.bias)]
            + [number(f.absolute), *unit, g.count, g.within_1]
        )
    text = (
        "Bias and mean miss (its size) are in uncertainties, over records not fitted "
        "to whose miss has a size."
    )
    return f"## {title}\n\n{text}\n\n" + table(header, rows)


def worst_section(outcomes):
    lines = ["## The ten worst, and why"]
    lines.append(
        "Largest misses that have a size, those of fitted records included; records of "
        "one measurement stand for themselves."
    )
    for place, outcome in enumerate(worst(outcomes, WORST), start=1):
        record = outcome.record
        soak = record.get("celsius")
        at = "" if soak is None else f" at {soak:g} C"
        what = " ".join([record["quantity"].replace("_", " "), *about(record)])
        lines.append(
            f"{place}. **{record['steel']}: {what}{at}**. Computed "
            f"{short(outcome.computed)}, published {short(record['value'])}"
            f"{unit_of(record)}, miss {outcome.miss:+.1f} uncertainties "
            f"(`{record['id']}`, confidence {record['confidence']}"
            f"{', fitted to' if record['fitted'] else ''}). {why(record)}"
        )
    return "\n\n".join(lines)


def unit_of(record):
    return "" if record["unit"] == "-" else " " + record["unit"]


def about(record):
    return [record[key] for key in ("element", "phase") if key in record]


def why(record):
    """The metallurgy behind a miss; the short explanation where none is written."""
    return record.get("metallurgy") or record.get("explanation", "Not explained.")


def unsized_section(outcomes):
    rows = [
        [f"`{o.record['id']}`", o.record["steel"], o.record["quantity"]]
        + [short(o.record["value"]), short(o.computed) if o.computed else o.remark]
        + [o.record.get("explanation", "")]
        for o in without_size(outcomes)
    ]
    header = ["record", "steel", "quantity", "published", "computed", "why"]
    return "## Misses without a size\n\n" + table(header, rows)


def plots_section():
    lines = ["## Parity plots"]
    lines += [f"![{text}](accuracy/{name})" for name, text in PLOTS.items()]
    return "\n\n".join(lines)
