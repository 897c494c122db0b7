#!/usr/bin/env python3
"""How long a calibration of ten numbers on forty measurements takes here.

    python3 calibration_time.py             prints sizes, misses and seconds
    python3 calibration_time.py --repeat 5  the least of five runs

Measurements and numbers are from those that the layer carbides.json is made with, on
the edition of the shipped file that it lies on; leaving out one steel at a time is part
of what is timed. gibbsteel must be importable (PYTHONPATH of the build tree, or
installed).
"""

import argparse
import sys
import time

import gibbsteel as gs
from carbide_layer import data, numbers
from shipped_edition import older

MEASUREMENTS, NUMBERS = 40, 10
AIM = 60.0  # [s], issue 6


def measurements():
    """Forty of the training set of the layer, evenly spread over its steels.

    Without those of ferrite: no number of M6C moves it, and the edition below lacks the
    coefficient of Fe-V that does.
    """
    without = {name for _, name, _ in data.AUSTENITE}
    train = [
        m for m in data.measurements() if not m.held_back and m.steel not in without
    ]
    return [train[i * len(train) // MEASUREMENTS] for i in range(MEASUREMENTS)]


def places():
    """The first ten of the layer's numbers, those of M6C first."""
    by_phase = sorted(numbers.places().items(), key=lambda item: "M6C" not in item[0])
    return dict(by_phase[:NUMBERS])


def run():
    """(calibration, seconds)."""
    given, moving, on = measurements(), places(), older()
    begin = time.perf_counter()
    fit = gs.calibrate(given, moving, on=on)
    return fit, time.perf_counter() - begin


def line(fit, seconds):
    counted = sum(not m.held_back for m in fit.measurements)
    seen = sum(n.seen for n in fit.numbers)
    return (
        f"{len(fit.numbers)} numbers on {counted} measurements of {len(fit.steels)} "
        f"steels: {fit.status}, {fit.evaluations} evaluations and "
        f"{len(fit.steels)} steels left out in turn; rms miss {fit.rms_before():.2f} "
        f"before, {fit.rms_after():.2f} after; {seen} numbers seen; {seconds:.1f} s, "
        f"{seconds / AIM:.3f} of the aim of {AIM:g} s"
    )


def main(arguments=None):
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--repeat", type=int, default=1, help="runs; least is printed")
    repeat = parser.parse_args(arguments).repeat
    runs = [run() for _ in range(repeat)]
    print(line(*min(runs, key=lambda one: one[1])))
    return 0


if __name__ == "__main__":
    sys.exit(main())
