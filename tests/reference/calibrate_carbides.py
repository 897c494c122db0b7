#!/usr/bin/env python3
"""Writes thermo_data/layers/carbides.json and the page about it; takes some minutes.

The layer lies on edition 2026-11-25 of the shipped file; shipped_edition.py makes the
present edition from the two.

    python3 calibrate_carbides.py              calibrates, then writes layer and page
    python3 calibrate_carbides.py --folder X   into another folder
    python3 calibrate_carbides.py --wider      with 15 more numbers; prints only

gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

import argparse
import sys
from pathlib import Path

import gibbsteel as gs
from carbide_layer import data, fit, text
from evaluate import library, record_file
from evaluate.verdict import judge
from shipped_edition import older

FOLDER = Path(__file__).resolve().parents[2] / "thermo_data" / "layers"
INTRODUCTION = (Path(__file__).parent / "carbide_layer" / "about.md").read_text("utf-8")


def outcomes(parameters):
    """Every record, judged with a parameter set."""
    library.use(parameters)
    judged = [judge(record) for record in record_file.records()]
    library.use(None)
    return judged


def fitted_ids():
    return {m.record for m in data.measurements() if not m.held_back and m.record}


def records_part(parameters):
    return text.records_section(outcomes(older()), outcomes(parameters), fitted_ids())


def main(arguments=None):
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--folder", type=Path, default=FOLDER, help="where to write")
    parser.add_argument("--wider", action="store_true", help="more numbers; print only")
    options = parser.parse_args(arguments)
    folder = options.folder
    calibrated = fit.calibrated(text.HEAD, options.wider)
    print(calibrated)
    if options.wider:
        held_back = calibrated.rms_before(True), calibrated.rms_after(True)
        print(f"rms of those held back: {held_back}")
        return 0
    folder.mkdir(parents=True, exist_ok=True)
    (folder / fit.FILE).write_text(text.layer(calibrated), encoding="utf-8")
    layered = gs.load_parameters(folder / fit.FILE, on_top_of=older())
    parts = [INTRODUCTION.strip(), text.misses_section(calibrated)]
    parts += [records_part(layered)]
    parts += [text.steels_section(calibrated), text.numbers_section(calibrated)]
    (folder / "carbides.md").write_text("\n\n".join(parts) + "\n", encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
