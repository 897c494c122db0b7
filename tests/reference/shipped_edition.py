#!/usr/bin/env python3
"""Writes thermo_data/tool_steel.json: an older edition with the calibrated layer on it.

    python3 shipped_edition.py            writes the file that ships
    python3 shipped_edition.py --check    says whether it is what would be written

Edition 2026-11-26.3 is thermo_data/editions/2026-11-25.json with
thermo_data/layers/carbides.json laid on it; the numbers are not touched here.
gibbsteel must be importable (PYTHONPATH of the build tree, or installed).
"""

import json
import sys
from pathlib import Path

import gibbsteel as gs
import shipped_file
from gibbsteel import _core

THERMO_DATA = Path(__file__).resolve().parents[2] / "thermo_data"
SHIPPED = THERMO_DATA / "tool_steel.json"
BELOW = THERMO_DATA / "editions" / "2026-11-25.json"
LAYER = THERMO_DATA / "layers" / "carbides.json"
EDITION = "2026-11-26.3"


def older():
    """The edition below, that the layer was calibrated on."""
    return gs.load_parameters(BELOW)


def layered():
    """The edition below with the layer on it."""
    return gs.load_parameters(LAYER, on_top_of=older())


def text():
    """The layered set as one file of its own, in canonical form."""
    whole = json.loads(gs.write_parameters(layered()))
    whole["title"] = older().title.rpartition(" (edition ")[0]
    whole["edition"] = EDITION
    merged = json.dumps(whole, ensure_ascii=False)
    return gs.write_parameters(_core.parse_parameters(merged, SHIPPED.name))


def main(arguments=None):
    summary = f"edition {EDITION}"
    return shipped_file.main(
        arguments, __doc__.splitlines()[0], SHIPPED, text(), summary
    )


if __name__ == "__main__":
    sys.exit(main())
