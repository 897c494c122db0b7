"""Figures of results; needs matplotlib, which is imported on use.

Each function takes a result, draws on ``ax=`` or on a new figure, and returns the Axes.
Nothing is shown or saved, and no setting of matplotlib is changed. One function per
file; what they share is in ``axes.py``, looks in ``phase_styles.py`` and
``element_styles.py``.
"""

from .plot_carbides import carbides
from .plot_compare import compare
from .plot_curves import curves
from .plot_element_shares import carbon_shares, element_shares
from .plot_map import map
from .plot_maps import maps
from .plot_matrix import matrix
from .plot_section import section
from .plot_soak_limits import soak_limits
from .plot_soak_time import soak_time

__all__ = [
    "carbides",
    "carbon_shares",
    "compare",
    "curves",
    "element_shares",
    "map",
    "maps",
    "matrix",
    "section",
    "soak_limits",
    "soak_time",
]
