"""Compare a text with a stored file; see golden/README.md."""

import os
from pathlib import Path

import gibbsteel as gs
import pytest

FOLDER = Path(__file__).with_name("golden")


def masked(text):
    """Without what changes from release to release."""
    parameters = gs.default_parameters()
    text = text.replace(parameters.content_hash, "HASH")
    text = text.replace(parameters.title, "PARAMETERS")
    return text.replace(f"gibbsteel {gs.__version__}", "gibbsteel VERSION")


def lines_of(html):
    """One element a line, so that a difference can be read."""
    for end in ("</div>", "</tr>", "</thead>", "<tbody>", "</table>", "</p>", "</li>"):
        html = html.replace(end, end + "\n")
    return html


def compare(name, html):
    """Fails when the file differs, and when it was stored just now."""
    file = FOLDER / name
    text = lines_of(masked(html))
    if os.environ.get("GIBBSTEEL_STORE_GOLDEN"):
        file.write_text(text, encoding="utf-8")
        pytest.fail(f"stored {file.name}; run again without GIBBSTEEL_STORE_GOLDEN")
    assert text == file.read_text(encoding="utf-8"), f"see {FOLDER / 'README.md'}"
