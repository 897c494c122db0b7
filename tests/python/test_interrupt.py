"""A keyboard interrupt at any moment: the process goes on, with the same bits."""

import os
import subprocess
import sys

import pytest

pytestmark = pytest.mark.skipif(
    os.environ.get("LD_PRELOAD") is not None, reason="slow when traced"
)

# A timer raises SIGINT after a random while, in work that takes longer than that or a
# little less; seeded, but what it hits differs from run to run. It must end the work or
# let it end, within the time of a soak or two.
SCRIPT = """
import random, signal, sys, time
import gibbsteel as gs
from bits import bits_of

steel = gs.Steel({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0})
WORKS = {
    "sweep": lambda: steel.sweep(celsius=range(800, 1200)),
    "grid": lambda: steel.grid(C=[0.5, 0.55, 0.6], celsius=range(900, 1200, 3)),
    "changes": lambda: steel.phase_changes(celsius=(700, 1200)),
    "target": lambda: steel.temperature_for(
        gs.quantities.matrix("C"), 0.5, celsius=(900, 1200)),
    "composition": lambda: steel.composition_for(
        "C", matrix_carbon=0.5, percent=(0.1, 1.5), celsius=1120, steps=2000),
    "design": lambda: gs.design(
        steel, vary={"C": (0.3, 1.0), "Mo": (1.0, 5.0), "V": (0.5, 3.0)},
        targets=gs.matrix_targets(steel.changed(C=0.7, Mo=4.0, V=2.0).soak(
            celsius=1120)), starts=50, candidates=2000),
    "map": lambda: steel.section_map(C=(0.2, 1.2), celsius=(800, 1100)),
    "band": lambda: steel.tolerance_band(
        celsius=1120, ranges={"C": (0.5, 0.6)}, samples=4096, corners=False),
    "soaks": lambda: [steel.soak(celsius=1000 + k, certify="proof") for k in range(99)],
}

def soak():
    return bits_of(steel.soak(celsius=1120))

signal.signal(signal.SIGALRM, lambda *_: signal.raise_signal(signal.SIGINT))
random.seed(int(sys.argv[1]))
expected = soak()
raised = partial = 0
slowest = 0.0
for turn in range(4 * len(WORKS)):
    work = list(WORKS.values())[turn % len(WORKS)]
    delay = random.uniform(0.001, 0.15)
    begin = time.monotonic()
    try:
        signal.setitimer(signal.ITIMER_REAL, delay)
        work()
        partial += 1
        while signal.getitimer(signal.ITIMER_REAL)[0] > 0:
            time.sleep(0.001)
        time.sleep(0.001)
    except KeyboardInterrupt:
        raised += 1
    slowest = max(slowest, time.monotonic() - begin - delay)
    assert soak() == expected, list(WORKS)[turn % len(WORKS)]
print(raised, "raised,", partial, "returned with the part that was done")
print("slowest to stop:", round(slowest, 2), "s")
assert raised > 0 and partial > 0
assert slowest < 5.0
print("usable to the end")
"""


@pytest.mark.parametrize("seed", [1, 2])
def test_interrupts_at_random_times(seed):
    here = os.path.dirname(__file__)
    path = os.pathsep.join([here, os.environ.get("PYTHONPATH", "")])
    done = subprocess.run(
        [sys.executable, "-c", SCRIPT, str(seed)],
        capture_output=True,
        text=True,
        timeout=300,
        env=os.environ | {"PYTHONPATH": path},
    )
    assert done.returncode == 0, done.stdout + done.stderr
    assert done.stdout.endswith("usable to the end\n")
    print(done.stdout)
