"""Memory of screens of different length, each in a process of its own.

PYTHONPATH=build/comparison/python /usr/bin/python3 memory.py OUT.json ROWS...

The results go to folders beside OUT.json, 0.2 MB for 1000 rows, and are deleted.
"""

from __future__ import annotations

import json
import subprocess
import sys
import tempfile
from pathlib import Path

SCREEN = Path(__file__).with_name("screen_memory.py")


def screened(rows: int, scratch: Path) -> dict[str, float]:
    """What the process says of itself."""
    with tempfile.TemporaryDirectory(dir=scratch, prefix="screen_") as folder:
        command = [sys.executable, "-B", str(SCREEN), str(rows), folder]
        done = subprocess.run(command, stdout=subprocess.PIPE, text=True, check=False)
    if done.returncode != 0:
        sys.exit(f"memory: the screen of {rows} rows failed")
    return json.loads(done.stdout)


def main(out: Path, counts: list[int]) -> None:
    """Screen all, print a line for each, write all numbers."""
    results = []
    for rows in counts:
        result = screened(rows, out.parent)
        results.append(result)
        ratio = result["peak_MB"] / results[0]["peak_MB"]
        print(
            f"{rows} rows: peak {result['peak_MB']:.1f} MB, {ratio:.3f} of the first; "
            f"results {result['results_MB']:.1f} MB; {result['seconds']:.0f} s",
            flush=True,
        )
    out.write_text(json.dumps(results, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main(Path(sys.argv[1]), sorted(int(rows) for rows in sys.argv[2:]))
