"""Optional packages hidden one by one: the library works, and says what is missing."""

import subprocess
import sys

import pytest

# Runs in an interpreter of its own, where nothing was imported before.
HIDE = """
import importlib.abc, sys

hidden = sys.argv[1]

class Blocker(importlib.abc.MetaPathFinder):
    def find_spec(self, name, path=None, target=None):
        if name == hidden or name.startswith(hidden + "."):
            raise ModuleNotFoundError(f"No module named {name!r}", name=name)
        return None

sys.meta_path.insert(0, Blocker())
import gibbsteel as gs

steel = gs.Steel({"C": 0.8, "Cr": 1.0}, name="trial bar")
state = steel.soak(celsius=750)
sweep = steel.sweep(celsius=[700, 750])
assert state.usable and sweep.failures == 0
assert state._repr_html_() and sweep._repr_html_() and state.report().text
assert sweep.array("carbide_volume_percent").shape == (2,)
assert hidden not in sys.modules
"""

FEATURES = {
    "pandas": [
        (
            "sweep.to_frame()",
            "to_frame() needs the package pandas (Debian: python3-pandas)",
        ),
        (
            "state.to_frame(wide=True)",
            "to_frame() needs the package pandas (Debian: python3-pandas)",
        ),
        (
            "steel.sensitivities(celsius=750).to_frame()",
            "to_frame() needs the package pandas (Debian: python3-pandas)",
        ),
    ],
    "tqdm": [
        (
            "steel.sweep(celsius=[700], progress=True)",
            "progress=True needs the package tqdm (Debian: python3-tqdm)",
        )
    ],
    "xarray": [
        (
            "sweep.to_xarray()",
            "to_xarray() needs the package xarray (Debian: python3-xarray)",
        )
    ],
    # Nothing here needs these; gs.plot is tested with its own package.
    "matplotlib": [],
    "pint": [],
    "IPython": [],
    "joblib": [],
    "dask": [],
}


@pytest.mark.parametrize("package", FEATURES)
def test_without(package):
    program = HIDE
    for call, message in FEATURES[package]:
        program += f"""
try:
    {call}
except ImportError as error:
    assert str(error) == {message!r}, str(error)
else:
    raise AssertionError("no ImportError")
"""
    program += "print('done')\n"
    done = subprocess.run(
        [sys.executable, "-c", program, package],
        capture_output=True,
        text=True,
        timeout=120,
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout == "done\n"


def test_the_import_itself_brings_no_optional_package():
    program = "import sys, gibbsteel; print(sorted(set(sys.modules) & {names!r}))"
    done = subprocess.run(
        [sys.executable, "-c", program.format(names=set(FEATURES))],
        capture_output=True,
        text=True,
        timeout=120,
    )
    assert (done.stdout, done.stderr) == ("[]\n", "")
