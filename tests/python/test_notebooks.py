"""The notebooks run from top to bottom, draw, and give the numbers that they promise.

The last code cell of a notebook prints a JSON object
``{label: [value, expected, tolerance]}``. A label says where the expected number comes
from: "published" with its source, or "own result, guards against change".
"""

import base64
import json
import math
import os
from pathlib import Path

import gibbsteel as gs
import pytest

nbformat = pytest.importorskip("nbformat")
nbclient = pytest.importorskip("nbclient")

FOLDER = Path(__file__).resolve().parents[2] / "examples" / "notebooks"
NOTEBOOKS = sorted(FOLDER.glob("*.ipynb"))
PNG_SIGNATURE = b"\x89PNG\r\n\x1a\n"
PROVENANCE = ("published", "own result, guards against change")

every_notebook = pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)


def read(path):
    return nbformat.read(path, as_version=4)


def code_cells(notebook):
    return [cell for cell in notebook.cells if cell.cell_type == "code"]


def kernel_environment():
    """The package under test, and the figures of the notebook itself.

    A backend of the calling shell would keep the kernel from showing figures.
    """
    environment = {k: v for k, v in os.environ.items() if k != "MPLBACKEND"}
    # Not resolved: in a build tree the Python files are links beside the compiled one.
    environment["PYTHONPATH"] = str(Path(gs.__file__).absolute().parents[1])
    environment["PYDEVD_DISABLE_FILE_VALIDATION"] = "1"  # a remark on every start
    return environment


@pytest.fixture(scope="module")
def executed():
    """Runs a notebook once; the file itself stays as it is."""
    done = {}

    def run(path):
        if path not in done:
            notebook = read(path)
            client = nbclient.NotebookClient(
                notebook, timeout=60, kernel_name="python3"
            )
            client.execute(cwd=str(path.parent), env=kernel_environment())
            done[path] = notebook
        return done[path]

    return run


def figures(notebook):
    """The PNG figures among the outputs."""
    data = [
        output.data["image/png"]
        for cell in code_cells(notebook)
        for output in cell.outputs
        if "image/png" in output.get("data", {})
    ]
    return [base64.b64decode(text) for text in data]


def printed(cell):
    return "".join(o.text for o in cell.outputs if o.get("name") == "stdout")


def test_there_are_notebooks():
    assert NOTEBOOKS


@every_notebook
def test_is_stored_without_outputs(path):
    notebook = read(path)
    nbformat.validate(notebook)
    assert code_cells(notebook)
    for cell in code_cells(notebook):
        assert cell.outputs == []
        assert cell.execution_count is None


@every_notebook
@pytest.mark.filterwarnings("ignore::DeprecationWarning")
def test_runs_from_top_to_bottom(path, executed):
    notebook = executed(path)
    assert all(cell.execution_count for cell in code_cells(notebook))
    assert not [
        o for cell in code_cells(notebook) for o in cell.outputs if "ename" in o
    ]


@every_notebook
@pytest.mark.filterwarnings("ignore::DeprecationWarning")
def test_numbers_are_those_expected(path, executed):
    checked = json.loads(printed(code_cells(executed(path))[-1]))
    assert checked
    wrong = {}
    for label, (value, expected, tolerance) in checked.items():
        assert any(word in label for word in PROVENANCE), label
        assert math.isfinite(expected) and 0.0 < tolerance < math.inf, label
        if not abs(value - expected) <= tolerance:
            wrong[label] = (value, expected, tolerance)
    assert wrong == {}


@every_notebook
@pytest.mark.filterwarnings("ignore::DeprecationWarning")
def test_draws_figures(path, executed, tmp_path):
    drawn = figures(executed(path))
    assert drawn
    for i, png in enumerate(drawn):
        file = tmp_path / f"{path.stem}_{i + 1}.png"
        file.write_bytes(png)
        assert png.startswith(PNG_SIGNATURE)
        assert len(png) > 5000, f"{file.name} is too small for a figure"
