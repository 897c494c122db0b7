"""Compositions of a screen, each near the one before, as somebody orders them."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt


def heats(
    count: int, others: dict[str, float]
) -> tuple[npt.NDArray[np.float64], list[str]]:
    """Weight percent and elements: carbon up and down, chromium slowly up.

    Carbon goes from 0.6 to 1.1 and back in 400 heats, chromium from 3.5 to 4.5 in all;
    the other elements stay.
    """
    elements = ["C", "Cr", *others]
    table = np.empty((count, len(elements)))
    table[:, 0] = 0.6 + 0.5 * np.abs((np.arange(count) / 200 + 1.0) % 2.0 - 1.0)
    table[:, 1] = np.linspace(3.5, 4.5, count)
    table[:, 2:] = list(others.values())
    return table, elements
