"""What all compiled classes have."""

from typing import Never

import numpy as np
import numpy.typing as npt

_Array = npt.NDArray[np.float64]

class _CompiledType(type):
    """The metaclass of pybind11."""

class _Compiled(metaclass=_CompiledType):
    """The base class of pybind11; a class without its own constructor has none."""

    def __init__(self, no_constructor: Never, /, *args: Never, **kwargs: Never) -> None:
        """Raises TypeError: results come from functions, not from their class."""
