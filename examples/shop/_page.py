"""What the shop scenarios print: computed beside handbook, met or missed."""

from __future__ import annotations

import textwrap
from collections.abc import Iterable

import gibbsteel as gs

HANDBOOK = "producers' handbooks, from memory"

CAUTION = """
Long-hold limit unless measured carbide is named; estimates carry their bands. Before
hardening real parts try coupons and follow the steel maker's data. Hot salt, oil,
cryogens and furnaces injure: local codes and licensed practice come first."""


def heading(text: str) -> None:
    print(text)
    print("=" * len(text))


def compared(
    label: str,
    value: float,
    unit: str,
    handbook: tuple[float, float],
    *,
    digits: int = 1,
    source: str = HANDBOOK,
    why: str = "",
    fitted: bool = False,
) -> None:
    """One line: computed, what the handbook gives, and whether they agree.

    Compared as printed: a difference below the last digit shown is none. A miss that
    nobody has explained yet says so. `fitted`: the family of steels in the library was
    fitted to this very measurement, so that agreement is no evidence.
    """
    low, high = handbook
    shown = round(value, digits)
    met = low <= shown <= high
    if low == float("-inf"):
        wanted = f"at most {high:g}"
    elif high == float("inf"):
        wanted = f"at least {low:g}"
    else:
        wanted = f"{low:g} to {high:g}"
    verdict = "met" if met else "MISSED"
    text = f"{label}: {shown:.{digits}f} {unit}; handbook {wanted}"
    print(f"  {text}  {verdict}")
    print(f"    ({source})")
    if fitted:
        print("    no independent check: the estimate was fitted to this record")
    if not met:
        print(f"    why: {why or 'not explained yet'}")


def warnings(states: Iterable[gs.State]) -> None:
    """What the library warns of, each text once, with the soaks that it is for."""
    soaks: dict[tuple[str, str, str], list[float]] = {}
    for state in states:
        for warning in state.warnings:
            key = (state.steel, warning.code, warning.text)
            soaks.setdefault(key, []).append(state.celsius)
    if soaks:
        print()
    for (steel, code, text), at in soaks.items():
        low, high = min(at), max(at)
        span = f"{low:.0f} C" if low == high else f"{low:.0f} to {high:.0f} C"
        print(
            textwrap.fill(
                f"! {steel}, {span}: [{code}] {text}", 78, subsequent_indent="  "
            )
        )
