"""The package as it is found: version, build, shipped files, from any folder."""

import json
import re
import subprocess
import sys
from pathlib import Path

import gibbsteel as gs
import pytest
from gibbsteel import _core
from gibbsteel.parameters import laid

ROOT = Path(__file__).parents[2]


def test_version_is_written_in_one_place():
    text = (ROOT / "CMakeLists.txt").read_text(encoding="utf-8")
    (version,) = re.findall(r"^  VERSION (\d+\.\d+\.\d+)$", text, re.MULTILINE)
    # tests/consumer/pip_install.py compares with importlib.metadata.version.
    assert gs.__version__ == gs.build_info()["version"] == version


def test_build_info():
    info = gs.build_info()
    assert set(info) == {
        "version",
        "compiler",
        "flags",
        "cxx_standard",
        "assertions",
        "pybind11",
        "parameters",
        "parameters_hash",
    }
    assert re.match(r"(g\+\+|clang) \d+\.", info["compiler"])
    assert "-ffp-contract=off" in info["flags"] and "/" not in info["flags"]
    assert info["cxx_standard"] >= 202002
    assert info["parameters"] == gs.default_parameters().title
    assert json.loads(json.dumps(info)) == info


def test_shipped_files_are_found():
    files = gs.parameter_files()
    assert list(files) == [
        "editions/2026-11-25.json",
        "editions/2026-11-26.2.json",
        "editions/2026-11-26.json",
        "layers/carbides.json",
        "layers/iron_as_measured.json",
        "layers/iron_as_measured_liquid.json",
        "layers/liquid.json",
        "layers/niobium_titanium_nitrogen.json",
        "tool_steel.json",
    ]
    for name, path in files.items():
        assert path.as_posix().endswith("/" + name) and path.is_file()
    assert gs.load_parameters(files["tool_steel.json"]) == gs.default_parameters()


def test_layers_that_ship_are_laid_by_name():
    files = gs.parameter_files()
    liquid, niobium = (
        files[f"layers/{name}.json"] for name in ("liquid", "niobium_titanium_nitrogen")
    )
    one = gs.load_parameters(liquid, on_top_of=gs.default_parameters())
    both = gs.load_parameters(niobium, on_top_of=one)
    assert gs.default_parameters("liquid") == one
    assert gs.default_parameters("liquid", "niobium_titanium_nitrogen") == both
    assert gs.default_parameters("liquid") is gs.default_parameters("liquid")


def test_iron_as_measured_brings_the_melt_that_goes_with_it():
    iron, melt = "iron_as_measured", "iron_as_measured_liquid"
    named = gs.default_parameters("liquid", iron, melt)
    assert gs.default_parameters("liquid", iron) == named
    assert gs.default_parameters(iron, "liquid") == gs.default_parameters(
        iron, "liquid", melt
    )
    top = gs.load_parameters(
        gs.parameter_files()[f"layers/{melt}.json"],
        on_top_of=gs.default_parameters("liquid"),
    )
    assert top != named and "liquid" not in gs.default_parameters(iron).phases
    eutectic = gs.Steel({"C": 4.3}, parameters=named).melting_range()
    assert eutectic.solidus_celsius == pytest.approx(1147, abs=2)  # Fe-C, metastable


def test_a_layer_that_does_not_ship_is_named():
    with pytest.raises(gs.InputError) as caught:
        gs.default_parameters("liquid", "melt")
    assert str(caught.value) == (
        "[gibbsteel.input.221] layers: 'melt' is no layer that ships; choose from "
        "carbides, iron_as_measured, liquid, niobium_titanium_nitrogen; for a file of "
        "your own load_parameters"
    )
    with pytest.raises(gs.InputError) as caught:
        gs.default_parameters("liquid", "liquid")
    assert str(caught.value) == (
        "[gibbsteel.input.221] layers: 'liquid' is given twice; give each layer once"
    )
    for layers in (["iron_as_measured_liquid"], ["liquid", "iron_as_measured_liquid"]):
        with pytest.raises(gs.InputError) as caught:
            gs.default_parameters(*layers)
        assert str(caught.value) == (
            "[gibbsteel.input.221] layers: 'iron_as_measured_liquid' belongs on top of "
            'liquid and iron_as_measured; take default_parameters("liquid", '
            '"iron_as_measured"): it is then laid by itself'
        )
    with pytest.raises(gs.InputError) as caught:
        gs.default_parameters(["liquid"])
    assert str(caught.value) == (
        "[gibbsteel.input.220] layers: is list, not str; give names, for instance "
        '"liquid"'
    )


def test_the_packaged_file_equals_the_one_compiled_in():
    compiled, packaged = _core.default_parameters(), gs.default_parameters()
    assert compiled == packaged
    assert compiled.content_hash == packaged.content_hash
    source = ROOT / "thermo_data" / "tool_steel.json"
    packaged_bytes = gs.parameter_files()["tool_steel.json"].read_bytes()
    assert packaged_bytes == source.read_bytes()


# Made with edition 2026-11-25 when it shipped: composition, Celsius, Gibbs energy.
FIRST_EDITION = [
    ({"C": 0.55, "Cr": 4.5, "Mo": 2.75, "W": 2.0, "V": 1.0}, 1120, -74717.99536060412),
    ({"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8}, 1020, -65746.70091439341),
]


def test_the_first_edition_gives_what_it_gave():
    old = gs.load_parameters(gs.parameter_files()["editions/2026-11-25.json"])
    assert old.content_hash == "5f1d64709daa53ac"
    assert old != gs.default_parameters()
    for composition, celsius, energy in FIRST_EDITION:
        state = gs.Steel(composition, parameters=old).soak(celsius=celsius)
        assert abs(state.gibbs_energy - energy) < 1e-9 * abs(energy)


def test_nothing_is_read_or_printed_on_import():
    program = (
        "import gibbsteel\n"
        "from gibbsteel.parameters import laid\n"
        "print(laid.cache_info().currsize)\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, timeout=120
    )
    assert (done.stdout, done.stderr) == ("0\n", "")


def test_default_parameters_work_from_any_folder(tmp_path, monkeypatch):
    laid.cache_clear()
    monkeypatch.chdir(tmp_path)
    try:
        assert gs.Steel(C=0.8).soak(celsius=700).usable
    finally:
        laid.cache_clear()
