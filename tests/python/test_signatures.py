"""What can be passed: help and `inspect.signature` of the compiled names say it.

pybind11 itself prints the arguments that were bound, with their types, when a call fits
none of them; the signatures are held against that.
"""

import inspect
import pydoc
import re
from types import WrapperDescriptorType

import gibbsteel as gs
import pytest

NAMED = {name: getattr(gs, name) for name in gs.__all__}
CALLED = {name: value for name, value in NAMED.items() if inspect.isroutine(value)}
CLASSES = {
    name: value
    for name, value in NAMED.items()
    if inspect.isclass(value) and not issubclass(value, Exception)
}
RESULTS = {  # only the package makes them
    name: kind
    for name, kind in CLASSES.items()
    if isinstance(vars(kind)["__init__"], WrapperDescriptorType)
}
METHODS = {
    f"{name}.{member}": value
    for name, kind in CLASSES.items()
    for member, value in inspect.getmembers(kind, inspect.isroutine)
    if not member.startswith("_")
}
ALL = {**CALLED, **CLASSES, **METHODS}
for result in RESULTS:
    del ALL[result]


def is_compiled(thing):
    made_by = thing.__init__ if inspect.isclass(thing) else thing
    return not inspect.isfunction(made_by)


COMPILED = [name for name, thing in ALL.items() if is_compiled(thing)]


def arguments(text):
    """Splits at the commas outside of brackets."""
    parts, depth = [""], 0
    for letter in text:
        depth += (letter in "[{(") - (letter in "]})")
        if letter == "," and depth == 0:
            parts.append("")
        else:
            parts[-1] += letter
    return [part.strip() for part in parts]


def without_type(argument):
    name, _, rest = argument.partition(": ")
    default = rest.partition(" = ")[2]
    return f"{name}={default}" if default else name


def as_bound(thing):
    with pytest.raises(TypeError) as refused:
        thing(**{"no such argument": 0})
    bound = re.findall(r"^ +\d+\. [\w.]*\((.*)\)(?: -> .*)?$", str(refused.value), re.M)
    assert len(bound) == 1, str(refused.value)
    return "(" + ", ".join(map(without_type, arguments(bound[0]))) + ")"


def test_the_lists_are_not_empty():
    assert {"State", "ScreenTable", "Comparison"} <= set(RESULTS)
    assert {"SearchOptions", "Quantity", "MakeableSteps.none"} <= set(COMPILED)
    assert {"Quantity.value", "SoakGrid.to_xarray", "State.element_shares"} <= set(
        COMPILED
    )


@pytest.mark.parametrize("name", ALL)
def test_every_callable_has_a_signature(name):
    assert isinstance(inspect.signature(ALL[name]), inspect.Signature)


@pytest.mark.parametrize("name", COMPILED)
def test_signatures_are_those_that_were_bound(name):
    assert str(inspect.signature(ALL[name])) == as_bound(ALL[name])


@pytest.mark.parametrize("name", COMPILED)
def test_docstrings_hold_the_text_alone(name):
    assert "--\n" not in ALL[name].__doc__


@pytest.mark.parametrize("name", RESULTS)
def test_results_cannot_be_made(name):
    with pytest.raises(TypeError) as refused:
        RESULTS[name]()
    assert str(refused.value) == f"gibbsteel._core.{name}: No constructor defined!"


def test_a_bound_method_takes_no_self():
    assert str(inspect.signature(gs.quantities.carbon_activity().value)) == "(state)"


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        (
            "SearchOptions",
            "class SearchOptions(pybind11_builtins.pybind11_object)\n"
            " |  SearchOptions(*, node_spacing=5.0, tolerance=0.01, "
            "most_soaks=20000)\n"
            " |  \n"
            " |  Settings of a search for temperatures.\n",
        ),
        (
            "PropertyInput",
            "class PropertyInput(pybind11_builtins.pybind11_object)\n"
            " |  PropertyInput(weight_percent, *, martensite_start=nan, "
            "coldest_celsius=20.0, cooling_rate=36000.0, particle_diameter=nan, "
            "carbide_fraction=0.0)\n"
            " |  \n"
            " |  What an equation may read.\n",
        ),
        (
            "SoakGrid.to_frame",
            "to_frame(self, *, wide=True)\n"
            "    Table (pandas), one row per cell, or per cell and phase when not "
            "`wide`;",
        ),
    ],
)
def test_help(name, shown):
    assert shown in pydoc.render_doc(ALL[name], renderer=pydoc.plaintext)
