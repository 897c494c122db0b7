"""What the shop scenarios print: computed beside handbook, met or missed."""

from __future__ import annotations

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
) -> None:
    """One line: computed, what the handbook gives, and whether they agree.

    Compared as printed: a difference below the last digit shown is none. A miss that
    nobody has explained yet says so.
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
    if not met:
        print(f"    why: {why or 'not explained yet'}")
