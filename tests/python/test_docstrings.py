"""Help of every public name: what it does, units, arguments, an example that runs."""

import inspect
import re

import gibbsteel as gs
import pytest

CLASSES = [name for name in gs.__all__ if inspect.isclass(getattr(gs, name))]
FUNCTIONS = {
    name: getattr(gs, name)
    for name in gs.__all__
    if inspect.isroutine(getattr(gs, name))
}
# Methods written in Python: those of Steel, and those that display.py adds.
METHODS = {
    f"{kind}.{name}": member
    for kind in CLASSES
    for name, member in inspect.getmembers(getattr(gs, kind), inspect.isfunction)
    if not name.startswith("_")
}


def section(text, title):
    return re.search(rf"^{title}\n-{{{len(title)}}}$", text, re.MULTILINE)


def test_the_lists_are_not_empty():
    assert {"minimize", "build_info", "load_parameters"} <= set(FUNCTIONS)
    assert {"Steel.soak", "State.report", "Sweep.array", "Report.save"} <= set(METHODS)


@pytest.mark.parametrize("name", [*FUNCTIONS, *METHODS])
def test_functions(name):
    function = {**FUNCTIONS, **METHODS}[name]
    text = inspect.getdoc(function)
    assert text, name
    signature = inspect.signature(function)
    arguments = [argument for argument in signature.parameters if argument != "self"]
    told = section(text, "Parameters")
    if arguments:
        assert told, "no section Parameters"
    if signature.return_annotation not in ("None", None):
        assert section(text, "Returns"), "no section Returns"
    if name != "Report.save":  # test_report.py does it
        assert section(text, "Examples"), "no example"
        assert ">>> " in text
    elsewhere = re.search(r"parameters\s+are\s+those\s+of\s+`|[Aa]s\s+for\s+`", text)
    hidden = {"without_unit", "elements"}  # refused with a message; **elements
    for argument in arguments:
        if argument not in hidden and not elsewhere:
            assert re.search(
                rf"^(.*, )?{argument}\b.* : ", text, re.MULTILINE
            ), argument


@pytest.mark.parametrize("name", CLASSES)
def test_classes_and_their_members(name):
    kind = getattr(gs, name)
    assert inspect.getdoc(kind)
    missing = [
        member
        for member, value in vars(kind).items()
        if not member.startswith("_") and not inspect.getdoc(value)
    ]
    assert missing == []


def test_help_shows_no_address():
    for name in gs.__all__:
        assert "object at 0x" not in (inspect.getdoc(getattr(gs, name)) or "")
