"""Compare the numbers of soaks that print_numbers printed, in units in the last place.

python3 compare.py STORED PRINTED... [--most-ulps N]
python3 compare.py STORED --run PROGRAM [--most-ulps N]

Prints a table: for each kind of number the largest difference of each PRINTED file, or
of what PROGRAM prints, from STORED, in ulps. Fails when one is above N, or when the
same numbers are not there by name.
"""

import argparse
import math
import struct
import subprocess
import sys
from pathlib import Path

Key = tuple[str, str, str]


def read(text: str) -> dict[Key, float]:
    """Every number of a list under (condition, quantity, which)."""
    numbers = {}
    for line in text.splitlines():
        condition, quantity, which, value = (part.strip() for part in line.split("|"))
        numbers[condition, quantity, which] = float.fromhex(value)
    return numbers


def place(value: float) -> int:
    """Position among all doubles, so that neighbours differ by 1."""
    bits = struct.unpack("<q", struct.pack("<d", value))[0]
    return bits if bits >= 0 else -(bits & 0x7FFF_FFFF_FFFF_FFFF)


def ulps(a: float, b: float) -> float:
    """How many doubles apart; infinite when just one of them is NaN."""
    if math.isnan(a) or math.isnan(b):
        return 0 if math.isnan(a) and math.isnan(b) else math.inf
    return abs(place(a) - place(b))


def largest(stored: dict[Key, float], printed: dict[Key, float]) -> dict[str, float]:
    """Largest difference by quantity; infinite for a number that only one file has."""
    worst: dict[str, float] = {}
    for key in stored.keys() | printed.keys():
        both = key in stored and key in printed
        distance = ulps(stored[key], printed[key]) if both else math.inf
        worst[key[1]] = max(worst.get(key[1], 0), distance)
    return worst


def farthest(stored: dict[Key, float], printed: dict[Key, float]) -> str:
    """The number that differs most, for the message of a failure."""
    key = max(
        stored.keys() & printed.keys(),
        key=lambda each: ulps(stored[each], printed[each]),
    )
    return f"{' | '.join(key)}: stored {stored[key]!r}, printed {printed[key]!r}"


def main() -> int:
    """Print the table; 1 when the bound is passed."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("stored", type=Path)
    parser.add_argument("printed", type=Path, nargs="*")
    parser.add_argument("--run", type=Path)
    parser.add_argument("--most-ulps", type=float, default=math.inf)
    given = parser.parse_args()
    stored = read(given.stored.read_text(encoding="utf-8"))
    files = {path.stem: read(path.read_text("utf-8")) for path in given.printed}
    if given.run:
        done = subprocess.run([given.run], check=True, capture_output=True, text=True)
        files["printed"] = read(done.stdout)
    if not files:
        parser.error("nothing to compare with")
    tables = {name: largest(stored, numbers) for name, numbers in files.items()}
    quantities = list(dict.fromkeys(key[1] for key in stored))
    counts = {q: sum(key[1] == q for key in stored) for q in quantities}
    print("| quantity | numbers |", " | ".join(files), "|")
    print("| --- |" + " ---: |" * (1 + len(files)))
    for quantity in quantities:
        row = [f"{table.get(quantity, math.inf):.0f}" for table in tables.values()]
        print(f"| {quantity} | {counts[quantity]} |", " | ".join(row), "|")
    failed = [
        name
        for name, table in tables.items()
        if not stored or max(table.values()) > given.most_ulps
    ]
    for name in failed:
        print(f"{name}: more than {given.most_ulps:.0f} ulps:")
        print(" ", farthest(stored, files[name]))
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
