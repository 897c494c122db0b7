"""bind_build_info.cpp; see ../_core.pyi."""

from typing import TypedDict

class _BuildInfo(TypedDict):
    """How the module was built."""

    version: str
    compiler: str
    flags: str
    cxx_standard: int
    assertions: bool
    pybind11: str
    parameters: str
    parameters_hash: str

version: str

def build_info() -> _BuildInfo:
    """Version, compiler, flags and parameter file of this build."""
