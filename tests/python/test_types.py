"""The types of the package: its sources, its stub, and what a user's checker sees."""

import importlib.util
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import gibbsteel
import pytest

pytestmark = pytest.mark.skipif(
    importlib.util.find_spec("mypy") is None,
    reason="mypy is not installed (Debian: mypy); tests/run.sh installs it",
)

ROOT = Path(__file__).parents[2]
SOURCES = ROOT / "bindings" / "gibbsteel"
CONFIGURATION = ROOT / "pyproject.toml"

MISUSE = """\
import gibbsteel as gs

state = gs.Steel({"C": 0.55}).soak(celsius=1120)
good: float = state.matrix.weight_percent["C"] + state["MC"].volume_percent
state.kelvin = 1400.0
state.hardness_of_the_shop
gs.State()
gs.Steel({"C": 0.55}, nmae="punch heat 7")
"""


def run(folder, module, *arguments, sources=SOURCES):
    """Runs a module of mypy in `folder`; exit code and output."""
    environment = dict(os.environ)
    environment["MYPYPATH"] = str(sources.parent)
    built = str(Path(gibbsteel.__file__).parents[1])
    environment["PYTHONPATH"] = os.pathsep.join(
        [built, *filter(None, [environment.get("PYTHONPATH")])]
    )
    done = subprocess.run(
        [sys.executable, "-m", module, *map(str, arguments)],
        cwd=folder,
        env=environment,
        capture_output=True,
        text=True,
        timeout=300,
    )
    return done.returncode, done.stdout + done.stderr


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    """Where mypy works; its cache serves all tests of this file."""
    return tmp_path_factory.mktemp("types")


def check(folder, *files):
    return run(folder, "mypy", "--strict", "--config-file", CONFIGURATION, *files)


def stubtest(folder, sources=SOURCES):
    return run(
        folder,
        "mypy.stubtest",
        "--concise",
        "--mypy-config-file",
        CONFIGURATION,
        "gibbsteel._core",
        sources=sources,
    )


def test_sources_and_example_are_strictly_typed(folder):
    code, output = check(folder, SOURCES, ROOT / "examples" / "main_job.py")
    assert code == 0, output
    assert re.fullmatch(r"Success: no issues found in \d+ source files\n", output)


def test_misuse_is_found_by_the_checker_of_a_user(folder):
    program = folder / "misuse.py"
    program.write_text(MISUSE)
    code, output = check(folder, program.name)
    assert code == 1
    assert output.splitlines() == [
        'misuse.py:5: error: Property "kelvin" defined in "State" is read-only  [misc]',
        'misuse.py:6: error: "State" has no attribute "hardness_of_the_shop"  '
        "[attr-defined]",
        'misuse.py:7: error: Too few arguments for "State"  [call-arg]',
        'misuse.py:8: error: Argument "nmae" to "Steel" has incompatible type "str"; '
        'expected "float"  [arg-type]',
        "Found 4 errors in 1 file (checked 1 source file)",
    ]


def test_stub_matches_the_built_module(folder):
    code, output = stubtest(folder)
    assert code == 0, output


LAGGING = {
    "sweep.pyi": (
        "    @property\n    def failures(self) -> int:\n"
        '        """Number of states that are not usable."""\n',
        "    def success(self) -> int: ...\n",
    ),
    "search_options.pyi": ("tolerance: float = 0.01", "tolerance: float = 0.1"),
    "quantity.pyi": ("def value(self, state: State)", "def value(self, soak: State)"),
}


def test_a_stub_that_lags_behind_is_found(tmp_path):
    """Without this, a comparison that looks at nothing would go unnoticed."""
    package = tmp_path / "lagging" / "gibbsteel"
    shutil.copytree(SOURCES, package, ignore=shutil.ignore_patterns("__pycache__"))
    for name, (lines, lagging) in LAGGING.items():
        stub = package / "_stubs" / name
        text = stub.read_text()
        assert lines in text
        stub.write_text(text.replace(lines, lagging))
    code, output = stubtest(tmp_path, package)
    assert code == 1
    assert output.splitlines() == [
        'gibbsteel._core.Quantity.value is inconsistent, stub argument "soak" differs '
        'from runtime argument "state"',
        "gibbsteel._core.SearchOptions.__init__ is inconsistent, runtime argument "
        '"tolerance" has a default value of 0.01, which is different from stub '
        "argument default 0.1",
        "gibbsteel._core.Sweep.failures is not present in stub",
        "gibbsteel._core.Sweep.success is not present at runtime",
    ]
