"""compare.py sees one bit, and a number that is missing."""

import math
import subprocess
import sys
from pathlib import Path

from compare import largest, read, ulps

HERE = Path(__file__).parent
STORED = HERE / "numbers.txt"


def run(*arguments):
    return subprocess.run(
        [sys.executable, "-B", HERE / "compare.py", STORED, *arguments],
        capture_output=True,
        text=True,
        check=False,
    )


def test_distance_in_doubles():
    assert ulps(1.0, 1.0) == 0
    assert ulps(1.0, math.nextafter(1.0, 2.0)) == 1
    assert ulps(-1.0, math.nextafter(-1.0, 2.0)) == 1
    assert ulps(0.0, -0.0) == 0
    assert ulps(5e-324, -5e-324) == 2
    assert ulps(1.0, 2.0) == 2**52
    assert ulps(math.nan, math.nan) == 0
    assert ulps(math.nan, 1.0) == math.inf


def test_one_bit_of_one_number_is_seen(tmp_path):
    text = STORED.read_text(encoding="utf-8")
    line = next(x for x in text.splitlines() if "| amount |" in x)
    front, value = line.rsplit("| ", 1)
    other = math.nextafter(float.fromhex(value), 10.0).hex()
    changed = tmp_path / "changed.txt"
    changed.write_text(text.replace(line, f"{front}| {other}"), encoding="utf-8")
    assert largest(read(text), read(changed.read_text()))["amount"] == 1
    assert run(changed).returncode == 0
    told = run(changed, "--identical")
    assert told.returncode == 1
    assert "changed: amount: 1 ulps, at most 0:" in told.stdout
    assert "| amount | 44 | 1024 | 1 |" in told.stdout


def test_a_bound_is_a_bound(tmp_path):
    text = STORED.read_text(encoding="utf-8")
    line = next(x for x in text.splitlines() if "| Gibbs energy |" in x)
    front, value = line.rsplit("| ", 1)
    number = float.fromhex(value)
    for steps, code in ((16, 0), (17, 1)):
        other = (number + steps * math.ulp(number)).hex()
        changed = tmp_path / "changed.txt"
        changed.write_text(text.replace(line, f"{front}| {other}"), encoding="utf-8")
        assert run(changed).returncode == code


def test_a_slope_that_is_zero_in_truth():
    stored = {("steel", "slope of amount per K", "a"): 1e-20}
    printed = {("steel", "slope of amount per K", "a"): -1e-20}
    assert largest(stored, printed)["slope of amount per K"] == 2


def test_a_missing_number_is_seen(tmp_path):
    lines = STORED.read_text(encoding="utf-8").splitlines(keepends=True)
    shorter = tmp_path / "shorter.txt"
    shorter.write_text("".join(lines[:-1]), encoding="utf-8")
    assert run(shorter).returncode == 1
    longer = tmp_path / "longer.txt"
    longer.write_text("".join(lines) + "x | amount | y | 0x1p+0\n", encoding="utf-8")
    assert run(longer).returncode == 1


def test_nothing_to_compare_with():
    assert run().returncode == 2


def test_every_condition_is_solved():
    usable = [
        value for key, value in read(STORED.read_text()).items() if key[1] == "usable"
    ]
    assert usable == [1.0] * 20
