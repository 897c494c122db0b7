"""Memory of a screen that goes to a folder does not grow with its rows, as
benchmarks/scaling measures it for many more."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

pytestmark = [
    pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="needs Linux"),
    pytest.mark.skipif(
        os.environ.get("LD_PRELOAD") is not None,
        reason="a sanitizer keeps memory that was freed, to find late uses of it",
    ),
]
SCRIPT = Path(__file__).parents[2] / "benchmarks" / "scaling" / "screen_memory.py"
MOST_GROWTH = 2.0  # [MB]


def screened(rows, folder):
    command = [sys.executable, "-B", str(SCRIPT), str(rows), str(folder), "1"]
    return subprocess.run(command, capture_output=True, text=True, check=False)


def test_memory_of_a_folder_does_not_grow_with_the_rows(tmp_path):
    done = [screened(rows, tmp_path / str(rows)) for rows in (8_000, 32_000)]
    assert [each.stderr for each in done] == ["", ""]
    few, many = (json.loads(each.stdout) for each in done)
    # Kept rows would be seen.
    assert many["results_MB"] - few["results_MB"] > 2.0 * MOST_GROWTH
    assert many["peak_MB"] - few["peak_MB"] < MOST_GROWTH
    assert few["peak_MB"] > few["before_MB"]


def test_rows_that_are_no_whole_compositions_are_refused(tmp_path):
    done = screened(30, tmp_path)
    assert done.returncode == 1
    assert done.stderr == "screen_memory: 30 rows, not a multiple of 20\n"
