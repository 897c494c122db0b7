"""Compare the numbers of soaks that print_numbers printed, in units in the last place.

python3 compare.py STORED PRINTED... [--identical]
python3 compare.py STORED --run PROGRAM [--identical]

Prints a table: for each kind of number the largest difference of each PRINTED file, or
of what PROGRAM prints, from STORED, in ulps. Fails when one is above its bound (above 0
with --identical), or when the same numbers are not there by name.
"""

import argparse
import math
import struct
import subprocess
import sys
from pathlib import Path

Key = tuple[str, str, str]

# For another C library or processor. Powers of 2, at least twice what was seen with the
# stand-ins of run.sh, among them a C library in which every third log, exp and pow is
# one double off.
BOUNDS = {
    "Gibbs energy": 16,
    "chemical potential": 128,
    "amount": 1024,
    "site fraction": 1024,
    "driving force": 32768,
    "slope of Gibbs energy per K": 16,
    "slope of chemical potential per K": 128,
    "slope of amount per K": 1024,
    "slope of site fraction per K": 1024,
    "slope of Gibbs energy per mole": 512,
    "slope of chemical potential per mole": 128,
    "slope of amount per mole": 128,
    "slope of site fraction per mole": 512,
}
SMALLEST_SLOPE = 1e-4


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


def sizes(stored: dict[Key, float]) -> dict[tuple[str, str], float]:
    """Largest absolute value of each (condition, quantity)."""
    largest_of: dict[tuple[str, str], float] = {}
    for (condition, quantity, _), value in stored.items():
        before = largest_of.get((condition, quantity), 0.0)
        largest_of[condition, quantity] = max(before, abs(value))
    return largest_of


def differences(
    stored: dict[Key, float], printed: dict[Key, float]
) -> dict[Key, float]:
    """In ulps; infinite for a number that only one list has. A slope can be zero in
    truth: it is counted in ulps of the largest of its kind in the same soak, at least
    of SMALLEST_SLOPE."""
    size = sizes(stored)
    found: dict[Key, float] = {}
    for key in stored.keys() | printed.keys():
        if key not in stored or key not in printed:
            found[key] = math.inf
        elif key[1].startswith("slope"):
            unit = math.ulp(max(size[key[0], key[1]], SMALLEST_SLOPE))
            found[key] = math.ceil(abs(stored[key] - printed[key]) / unit)
        else:
            found[key] = ulps(stored[key], printed[key])
    return found


def largest(stored: dict[Key, float], printed: dict[Key, float]) -> dict[str, float]:
    """Largest difference of each quantity."""
    worst: dict[str, float] = {}
    for key, distance in differences(stored, printed).items():
        worst[key[1]] = max(worst.get(key[1], 0), distance)
    return worst


def farthest(stored: dict[Key, float], printed: dict[Key, float], over: str) -> str:
    """The number of a quantity that differs most, for the message of a failure."""
    found = differences(stored, printed)
    key = max((k for k in found if k[1] == over), key=lambda each: found[each])
    return (
        f"{' | '.join(key)}: stored {stored.get(key)!r}, printed {printed.get(key)!r}"
    )


def table_of(stored: dict[Key, float], tables: dict[str, dict[str, float]]) -> str:
    """Markdown: a line for each quantity, a column for each list."""
    lines = [
        f"| quantity | numbers | bound | {' | '.join(tables)} |",
        "| --- |" + " ---: |" * (2 + len(tables)),
    ]
    for quantity in dict.fromkeys(key[1] for key in stored):
        count = sum(key[1] == quantity for key in stored)
        cells = [f"{table.get(quantity, math.inf):.0f}" for table in tables.values()]
        bound = BOUNDS.get(quantity, 0)
        lines.append(f"| {quantity} | {count} | {bound} | {' | '.join(cells)} |")
    return "\n".join(lines)


def lists_of(given: argparse.Namespace) -> dict[str, dict[Key, float]]:
    """The printed lists by name."""
    lists = {path.stem: read(path.read_text("utf-8")) for path in given.printed}
    if given.run:
        done = subprocess.run([given.run], check=True, capture_output=True, text=True)
        lists["printed"] = read(done.stdout)
    return lists


def main() -> int:
    """Print the table; 1 when a bound is passed."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("stored", type=Path)
    parser.add_argument("printed", type=Path, nargs="*")
    parser.add_argument("--run", type=Path)
    parser.add_argument("--identical", action="store_true")
    given = parser.parse_args()
    stored = read(given.stored.read_text(encoding="utf-8"))
    lists = lists_of(given)
    if not lists or not stored:
        parser.error("nothing to compare with")
    tables = {name: largest(stored, numbers) for name, numbers in lists.items()}
    print(table_of(stored, tables))
    failed = False
    for name, table in tables.items():
        for quantity, distance in table.items():
            bound = 0 if given.identical else BOUNDS.get(quantity, 0)
            if distance > bound:
                failed = True
                print(f"{name}: {quantity}: {distance:.0f} ulps, at most {bound}:")
                print(" ", farthest(stored, lists[name], quantity))
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
