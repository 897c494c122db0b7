"""150 heats, screened whole and into a folder: what tests of folders share."""

import gibbsteel as gs
import numpy as np
import pytest

ELEMENTS = ["C", "Cr"]
REMEDY = "take a new or an empty folder"


@pytest.fixture(scope="module")
def heats():
    i = np.arange(150)
    return np.column_stack([0.4 + 0.004 * i, 1.0 + 0.04 * i])


@pytest.fixture(scope="module")
def whole(heats):
    return gs.screen(heats, ELEMENTS, celsius=950)


def into(folder, heats, **settings):
    settings = {"celsius": 950, "chunk_rows": 64, "threads": 1, **settings}
    return gs.screen_to_folder(folder, heats, ELEMENTS, **settings)
