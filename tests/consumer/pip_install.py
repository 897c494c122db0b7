"""Install the Python package with pip, without network, and use it from elsewhere.

python3 pip_install.py SOURCE_DIR WORK_DIR VERSION
"""

import json
import os
import re
import shlex
import shutil
import subprocess
import sys
import venv
from pathlib import Path

USE = """
import importlib.metadata, importlib.resources, pathlib, sys
import gibbsteel as gs
assert pathlib.Path(gs.__file__).is_relative_to(sys.prefix), gs.__file__
wanted = sys.argv[1]
assert importlib.metadata.version("gibbsteel") == wanted
assert gs.__version__ == wanted, gs.__version__
data = importlib.resources.files("gibbsteel") / "thermo_data" / "tool_steel.json"
files = gs.parameter_files()
assert all(f.is_file() and f.is_relative_to(sys.prefix) for f in files.values())
old = gs.load_parameters(files["editions/2026-11-25.json"])
assert old.content_hash == "5f1d64709daa53ac", old.content_hash
layered = gs.load_parameters(files["layers/carbides.json"], on_top_of=old)
assert len(layered.phases) == len(old.phases)
file = files["tool_steel.json"]
assert str(file) == str(data) and file.is_relative_to(sys.prefix), file
assert gs.load_parameters(file) == gs.default_parameters()
assert gs.build_info()["parameters_hash"] == gs.default_parameters().content_hash
assert gs.build_info()["version"] == wanted
state = gs.Steel({"C": 1.0, "Cr": 5.0, "Mo": 1.0}).soak(celsius=950)
assert state.solve_report.usable, state.solve_report
print("gibbsteel", gs.__version__, "works from", gs.__file__)
"""


PAGES = ("README.md", "examples/screening.md")


def program_of(page: Path) -> str:
    """The Python examples of a page, in their order, as one program."""
    text = page.read_text(encoding="utf-8")
    blocks = re.findall(r"^```python\n(.*?)^```$", text, re.MULTILINE | re.DOTALL)
    assert blocks, f"{page} has no Python example"
    return "\n".join(blocks)


def settings_of_dev(source: Path) -> str:
    """The compiler settings of the preset `dev`, so that ccache has seen the files."""
    text = (source / "CMakePresets.json").read_text(encoding="utf-8")
    presets = {p["name"]: p for p in json.loads(text)["configurePresets"]}
    variables = presets["base"]["cacheVariables"] | presets["dev"]["cacheVariables"]
    names = [name for name in variables if name.startswith("CMAKE_CXX_FLAGS")]
    names += ["CMAKE_BUILD_TYPE", "GIBBSTEEL_WARNINGS_AS_ERRORS"]
    return shlex.join(f"-D{name}={variables[name]}" for name in names)


def main(source: Path, work: Path, version: str) -> None:
    """Build and install in `work`, leaving the source tree as it was."""
    shutil.rmtree(work, ignore_errors=True)
    work.mkdir(parents=True)
    # setuptools reads extra settings from this file: by default it would write into the
    # source tree.
    settings = work / "places.cfg"
    settings.write_text(
        f"[build]\nbuild_base = {work / 'build'}\n[egg_info]\negg_base = {work}\n"
    )
    environment = {k: v for k, v in os.environ.items() if k != "PYTHONPATH"}
    environment["DIST_EXTRA_CONFIG"] = str(settings)
    environment["MPLBACKEND"] = "Agg"
    # What is tested is the package: files that were compiled before need not be again.
    environment["CMAKE_ARGS"] = settings_of_dev(source)
    environment["CCACHE_NOHASHDIR"] = "1"

    venv.create(work / "venv", system_site_packages=True, with_pip=True)
    python = work / "venv" / "bin" / "python"
    install = "-m pip install --no-index --no-build-isolation --no-deps".split()
    subprocess.run([python, *install, source], check=True, env=environment, cwd=work)
    programs = [[USE, version], *([program_of(source / page)] for page in PAGES)]
    for program in programs:
        subprocess.run([python, "-c", *program], check=True, env=environment, cwd=work)


if __name__ == "__main__":
    main(Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve(), sys.argv[3])
