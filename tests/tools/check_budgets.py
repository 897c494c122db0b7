"""Check the size budgets of every source file of the tree.

python3 check_budgets.py ROOT

A budget is a reason to split, not to write denser: see DEVELOPERS.md. A C++ function
is counted from its first line to its closing brace, a Python function without its
docstring.
"""

import ast
import sys
from pathlib import Path

from cpp_functions import cpp_functions
from tree import tracked_files

COLUMNS = 88
FUNCTION_LINES = 40


def file_budget(path: Path) -> int:
    """Most lines allowed in the file at `path` (relative to the root)."""
    if path.parts[0] in ("tests", "benchmarks"):
        return 600
    if path.suffix == ".hpp" or (path.parts[0] == "bindings" and path.suffix == ".cpp"):
        return 250
    return 300


def python_functions(text: str) -> list[tuple[int, int]]:
    """First line and number of lines of every function, docstrings left out."""
    functions = []
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef)):
            length = node.end_lineno - node.lineno + 1
            if ast.get_docstring(node) is not None:
                doc = node.body[0]
                length -= doc.end_lineno - doc.lineno + 1
            functions.append((node.lineno, length))
    return functions


def overruns(path: Path, text: str) -> list[str]:
    """One line for every budget that the file breaks."""
    lines = text.splitlines()
    found = []
    if len(lines) > file_budget(path):
        found.append(f"{path}: {len(lines)} lines, budget {file_budget(path)}")
    for number, line in enumerate(lines, start=1):
        if len(line) > COLUMNS:
            found.append(f"{path}:{number}: {len(line)} columns, budget {COLUMNS}")
    is_python = path.suffix in (".py", ".pyi")
    for start, length in python_functions(text) if is_python else cpp_functions(text):
        if length > FUNCTION_LINES:
            found.append(
                f"{path}:{start}: function of {length} lines, budget {FUNCTION_LINES}"
            )
    return found


def main(root: Path) -> int:
    """Print every overrun; 0 when there is none."""
    sources = [
        path
        for path in tracked_files(root)
        if path.suffix in (".hpp", ".cpp", ".py", ".pyi")
    ]
    found = []
    for path in sources:
        found += overruns(path, (root / path).read_text(encoding="utf-8"))
    print(*found, sep="\n")
    print(f"budgets: {len(sources)} source files, {len(found)} overruns")
    return 1 if found or not sources else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
