"""What the shop scenarios print: computed beside published, met or missed."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterable

import gibbsteel as gs

HANDBOOK = "producers' handbooks, from memory"

LONG_HOLD = """
Long-hold limit (true equilibrium): a shop soak of minutes leaves more carbide and less
carbon in the matrix."""

CAUTION = f"""{LONG_HOLD}
Before hardening real parts try coupons and follow the steel maker's data. Hot salt,
oil, cryogens and furnaces injure: local codes and licensed practice come first."""

_WEIGHT = re.compile(r"\d+(?:\.\d+)?(?= wt%)")


def heading(text: str) -> None:
    print(text)
    print("=" * len(text))


def filled(text: str) -> str:
    return textwrap.fill(text, 78, subsequent_indent="  ", break_on_hyphens=False)


def note(text: str) -> None:
    """A paragraph under a line of `compared`."""
    print(textwrap.indent(textwrap.fill(text, 78, break_on_hyphens=False), "    "))


def compared(
    label: str,
    computed: float | gs.Estimate | None,
    unit: str,
    published: tuple[float, float],
    *,
    digits: int = 1,
    source: str = HANDBOOK,
    why: str = "not explained yet",
    fitted: str = "",
) -> None:
    """One line: computed, what was published, and whether they agree.

    Compared as printed: a difference below the last digit shown is none. `computed`:
    None is a miss, for something that the library does not find at all; an estimate
    prints its band too. `fitted`: the record that the family of steels in the library
    was fitted to, when it is this one, so that agreement is no evidence.
    """
    low, high = published
    shown = None if computed is None else round(float(computed), digits)
    met = shown is not None and low <= shown <= high
    if low == float("-inf"):
        wanted = f"at most {high:g}"
    elif high == float("inf"):
        wanted = f"at least {low:g}"
    else:
        wanted = f"{low:g} to {high:g}"
    value = "none" if shown is None else f"{shown:.{digits}f} {unit}"
    verdict = "met" if met else "MISSED"
    print(f"  {label}: {value}; published {wanted}  {verdict}")
    note(f"({source})")
    if isinstance(computed, gs.Estimate):
        ends = f"{computed.low:.{digits}f} to {computed.high:.{digits}f} {unit}"
        share = "about two in three measurements"
        if computed.unit in ("HRC", "HV"):
            share = "all that were compared"
        note(f"band {ends} ({share})")
    if fitted:
        note(f"no independent check: the estimate was fitted to {fitted}")
    if not met:
        note(f"why: {why}")


def _said(
    states: Iterable[gs.State], quenches: Iterable[gs.HardeningEstimates]
) -> Iterable[tuple[str, float, str]]:
    """Steel, soak and text of every warning and of every remark on an estimate."""
    for state in states:
        for warning in state.warnings:
            yield state.steel, state.celsius, f"[{warning.code}] {warning.text}"
    for quench in quenches:
        where = quench.steel, quench.soak_celsius
        for warning in quench.warnings:
            yield *where, f"[{warning.code}] {warning.text}"
        warned = " ".join(warning.text for warning in quench.warnings)
        for estimate in (
            quench.martensite_start,
            quench.retained_austenite_of_matrix,
            quench.hardness_hrc,
        ):
            for remark in estimate.remarks:
                if remark not in warned:
                    yield *where, f"{estimate.name}: {remark}"


def _span(values: list[str]) -> str:
    low, high = min(values, key=float), max(values, key=float)
    return low if low == high else f"{low} to {high}"


def warnings(
    states: Iterable[gs.State], quenches: Iterable[gs.HardeningEstimates] = ()
) -> None:
    """What the library warns of, each text once, with the soaks that it is for.

    Texts that differ only in a weight percent are one text with a range.
    """
    found: dict[tuple[str, str], list[tuple[float, list[str]]]] = {}
    for steel, celsius, text in _said(states, quenches):
        key = (steel, _WEIGHT.sub("#", text))
        found.setdefault(key, []).append((celsius, _WEIGHT.findall(text)))
    if found:
        print()
    for (steel, text), cases in found.items():
        for numbers in zip(*(weights for _, weights in cases)):
            text = text.replace("#", _span(list(numbers)), 1)
        soaks = _span([f"{celsius:.0f}" for celsius, _ in cases])
        line = f"! {steel}, {soaks} C: {text}"
        print(filled(line))
