"""Write the kept set of this version: files, pickles and exports that later ones read.

PYTHONPATH=build/dev/python /usr/bin/python3 tests/kept/keep.py [--replace]

The folder is named like the version of the package. A set that was released is never
written again: `--replace` is for the time before.
"""

from __future__ import annotations

import json
import pickle
import shutil
import sys
from pathlib import Path
from typing import Any

import gibbsteel as gs
from fields import fields
from values import (
    PUNCH,
    band_values,
    error_values,
    fitted_values,
    quantity_values,
    search_values,
    section_values,
    small_values,
    values_with_parameters,
)

HERE = Path(__file__).parent
PROTOCOL = 4

# Files by name, lowest layer first, and soaks of the set: composition and temperature.
SETS: dict[str, dict[str, Any]] = {
    "shipped": {
        "files": ["tool_steel.json"],
        "soaks": [
            [PUNCH, 1120.0],
            [{"C": 1.55, "Cr": 11.8, "Mo": 0.8, "V": 0.8}, 1020.0],
        ],
    },
    "calibrated layer that ships": {
        "files": ["2026-11-25.json", "carbides.json"],
        "soaks": [[PUNCH, 1120.0]],
    },
    "layer over the shipped file": {
        "files": ["tool_steel.json", "less_vanadium.json"],
        "soaks": [[{"C": 2.0, "Cr": 20.0, "V": 4.0}, 1100.0]],
    },
    "own file": {
        "files": ["uncertain.json"],
        "soaks": [[{"C": 0.9, "Cr": 1.0}, 950.0]],
    },
    "layer over an own file": {
        "files": ["small.json", "titanium.json"],
        "soaks": [[{"C": 0.9, "Cr": 1.0, "Ti": 0.1}, 950.0]],
    },
}

# The layer that thermo_data/README.md explains.
LESS_VANADIUM = {
    "format": {"name": "gibbsteel parameter file", "version": 1},
    "title": "Trial: less vanadium in M7C3",
    "edition": "2026-11-25",
    "licence": "CC0-1.0",
    "sources": {"trial": {"citation": "own trial, invented for the kept set"}},
    "phases": {
        "M7C3": {
            "energy": [
                {
                    "on": ["V", "C"],
                    "curves": {
                        "vanadium, body-centred": 7,
                        "carbon, graphite": 3,
                    },
                    "terms": {"1": -340000},
                    "source": "trial",
                    "kind": "estimated",
                    "confidence": "low",
                }
            ]
        }
    },
}


def loaded(folder: Path, files: list[str]) -> gs.ParameterSet:
    """The files as layers."""
    parameters = None
    for name in files:
        parameters = gs.load_parameters(folder / name, on_top_of=parameters)
    assert parameters is not None
    return parameters


def numbers_of(state: gs.State) -> dict[str, Any]:
    """What a soak must give again."""
    return {
        "usable": state.usable,
        "gibbs_energy": state.gibbs_energy,
        "chemical_potential": state.chemical_potential,
        "mole_percent": {o.name: o.mole_percent for o in state.occurrences},
        "matrix_weight_percent": state.matrix.weight_percent,
    }


def keep_files(folder: Path) -> None:
    """Parameter files, and what they hold."""
    folder.mkdir(parents=True)
    tests = HERE.parent / "parameter_file"
    for source in (
        gs.parameter_files()["tool_steel.json"],
        gs.parameter_files()["editions/2026-11-25.json"],
        gs.parameter_files()["layers/carbides.json"],
        tests / "good" / "small.json",
        tests / "good" / "uncertain.json",
        tests / "layers" / "titanium.json",
    ):
        shutil.copyfile(source, folder / source.name)
    layer = json.dumps(LESS_VANADIUM, indent=1) + "\n"
    (folder / "less_vanadium.json").write_text(layer, encoding="utf-8")
    told = {}
    for name, kept in SETS.items():
        parameters = loaded(folder, kept["files"])
        soaks = [
            {
                "composition": composition,
                "celsius": celsius,
                "numbers": numbers_of(
                    gs.Steel(composition, parameters=parameters).soak(celsius=celsius)
                ),
            }
            for composition, celsius in kept["soaks"]
        ]
        told[name] = {
            "files": kept["files"],
            "content_hash": parameters.content_hash,
            "soaks": soaks,
        }
    write_json(folder / "expected.json", told)


def keep_pickles(folder: Path, values: dict[str, Any]) -> None:
    """Pickles, and the fields of the values."""
    folder.mkdir()
    for name, value in values.items():
        data = pickle.dumps(value, protocol=PROTOCOL)
        (folder / f"{name}.pickle").write_bytes(data)
        write_json(folder / f"{name}.json", fields(value))


def keep_exports(folder: Path, values: dict[str, Any]) -> None:
    """Tables of kept values as files."""
    folder.mkdir()
    for name in ("state", "sweep"):
        values[name].to_json(folder / f"{name}.json")
        values[name].to_csv(folder / f"{name}.csv")


def write_json(path: Path, told: Any) -> None:
    """One line for each number, so that a difference can be read."""
    text = json.dumps(told, indent=0, ensure_ascii=False, allow_nan=False) + "\n"
    path.write_text(text, encoding="utf-8")


def all_values(own_file: Path) -> dict[str, Any]:
    """Every value of values.py."""
    steel = gs.Steel(PUNCH, name="punch heat 7")
    own = gs.Steel(
        {"C": 0.9, "Cr": 1.0}, name="bar 9", parameters=gs.load_parameters(own_file)
    )
    return {
        **small_values(steel),
        **quantity_values(),
        **search_values(steel),
        **section_values(),
        **band_values(steel, own),
        **fitted_values(),
        **values_with_parameters(own),
        **error_values(),
    }


def main(replace: bool) -> int:
    """Write the set; 1 when it is there already."""
    folder = HERE / gs.__version__
    if folder.exists() and not replace:
        print(f"{folder.name} is kept already; it stays as it is", file=sys.stderr)
        return 1
    shutil.rmtree(folder, ignore_errors=True)
    keep_files(folder / "parameters")
    values = all_values(folder / "parameters" / "uncertain.json")
    keep_pickles(folder / "pickles", values)
    keep_exports(folder / "exports", values)
    size = sum(file.stat().st_size for file in folder.rglob("*.*") if file.is_file())
    print(f"kept {len(values)} values of version {folder.name}, {size} bytes")
    return 0


if __name__ == "__main__":
    sys.exit(main("--replace" in sys.argv[1:]))
