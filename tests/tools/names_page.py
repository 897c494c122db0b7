"""Writes examples/NAMES.md: every public name of the Python package, in one line each.

python3 names_page.py ROOT

gibbsteel must be importable: the build tree's `python` folder on PYTHONPATH.
"""

import inspect
import re
import sys
from pathlib import Path

import gibbsteel as gs

PAGE = Path("examples") / "NAMES.md"
HEAD = """\
# Every public name

Written by `python3 tests/tools/names_page.py .` from the docstrings; do not edit. More
about a name: `help(gs.design)`, `help(gs.Steel.soak)`. Arguments behind `*` go by name
only. C++ has the same names, in `include/gibbsteel/`.
"""
WHOLE_CLASSES = ("Steel", "State", "Sweep", "ShortSoak")
# Whose arguments stand under the same names in many others.
EXPLAINED = (
    "Steel.soak",
    "State.hardening",
    "State.short_soak_limit",
    "State.timed_soak",
)
SETTINGS = ("MakeableSteps", "SearchOptions", "SectionOptions", "SolveOptions")


def says(thing):
    """The first paragraph of the docstring, as a cell of a table."""
    first = (inspect.getdoc(thing) or "").split("\n\n", 1)[0]
    return " ".join(first.split()).replace("``", "`").replace("|", "\\|")


def arguments(function):
    """Their names in the order of the call, `*` before those that go by name only."""
    names, by_name = [], False
    for p in inspect.signature(function).parameters.values():
        if p.name in ("self", "without_unit"):  # the latter refuses bare temperatures
            continue
        if p.kind is p.KEYWORD_ONLY and not by_name:
            names.append("*")
        by_name = by_name or p.kind in (p.KEYWORD_ONLY, p.VAR_POSITIONAL)
        stars = {p.VAR_POSITIONAL: "*", p.VAR_KEYWORD: "**"}.get(p.kind, "")
        names.append(stars + p.name)
    return ", ".join(names)


def row(prefix, name, thing):
    called = inspect.isroutine(thing)
    taken = arguments(thing) if called else ""
    cell = f"`{taken}`" if taken else ""
    return f"| `{prefix}{name}{'()' if called else ''}` | {says(thing)} | {cell} |"


def table(rows):
    head = ["| name | what it is | arguments |", "| --- | --- | --- |"]
    return "\n".join([*head, *rows])


def explained_arguments(function):
    """Rows of the section "Parameters" of the docstring."""
    told = inspect.getdoc(function).split("\nParameters\n----------\n", 1)[1]
    told = re.split(r"\n\n\w+\n-{3,}\n", told, 1)[0]
    entries = re.findall(r"^(\S.*?) : (.*)\n((?:    .*\n?|\n)*)", told, re.MULTILINE)
    for names, kind, words in entries:
        written = ", ".join(f"`{name}`" for name in names.split(", "))
        text = f"{' '.join(words.split())} ({kind})".replace("``", "`")
        yield f"| {written} | {text} |"


def members(kind):
    """Public names of a class with what stands behind them, sorted."""
    return [(n, v) for n, v in inspect.getmembers(kind) if not n.startswith("_")]


def plain_table(first, rows):
    return "\n".join([f"| {first} | what it is |", "| --- | --- |", *rows])


def module_section(title, module):
    rows = [row("", name, getattr(module, name)) for name in sorted(module.__all__)]
    return f"## {title}\n\n{says(module)}\n\n{table(rows)}"


def sections():
    """The parts of the page, from what one begins with to what one gets back."""
    named = {name: getattr(gs, name) for name in sorted(gs.__all__)}
    functions = [row("gs.", n, v) for n, v in named.items() if inspect.isroutine(v)]
    yield "## Functions\n\n" + table(functions)
    for name in WHOLE_CLASSES:
        rows = [row(".", *member) for member in members(named[name])]
        made = f"({arguments(gs.Steel)})" if name == "Steel" else ""
        head = f"## `gs.{name}{made}`"
        yield f"{head}\n\n{says(named[name])}\n\n{table(rows)}"
    for name in EXPLAINED:
        kind, method = name.split(".")
        rows = explained_arguments(getattr(named[kind], method))
        yield f"## Arguments of `{name}`\n\n" + plain_table("name", rows)
    yield module_section("`gs.quantities`", gs.quantities)
    yield module_section("`gs.plot`", gs.plot)
    families = [f"| `{f.key}` | {f.name} |" for f in gs.hardening_families()]
    yield "## Families of steels, for `family=`\n\n" + plain_table("key", families)
    for name in SETTINGS:
        rows = [f"| `{n}` | {says(v)} |" for n, v in members(named[name])]
        head = f"## Settings: `gs.{name}`\n\n{says(named[name])}"
        yield f"{head}\n\n{plain_table('name', rows)}"
    shown = {*WHOLE_CLASSES, *SETTINGS}
    classes = {n: v for n, v in named.items() if inspect.isclass(v) and n not in shown}
    rows = [f"| `gs.{n}` | {says(v)} |" for n, v in classes.items()]
    yield "## Other classes: parts of results, errors\n\n" + plain_table("name", rows)
    yield (
        f"`gs.SCREEN_BLOCK_ROWS` is {gs.SCREEN_BLOCK_ROWS}: pieces of a screen that "
        "are multiples of it have\nthe bits of the whole."
    )


def text():
    return "\n\n".join([HEAD.strip(), *sections()]) + "\n"


if __name__ == "__main__":
    (Path(sys.argv[1]) / PAGE).write_text(text(), encoding="utf-8")
