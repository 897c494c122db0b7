"""The example on the page of a layer, and what stands there as printed."""

import contextlib
import io
import os
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]


def run(page):
    """(what the example prints now, what the page says that it prints)"""
    code, printed = re.findall(
        r"```(?:python)?\n(.*?)```", page.read_text("utf-8"), re.DOTALL
    )
    before, out = os.getcwd(), io.StringIO()
    os.chdir(ROOT)
    try:
        with contextlib.redirect_stdout(out):
            exec(compile(code, "page", "exec"), {})
    finally:
        os.chdir(before)
    return out.getvalue(), printed
