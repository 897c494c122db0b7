"""The files of the project: those git tracks, and new ones it would track."""

import os
import subprocess
from pathlib import Path

# What .gitignore leaves out, for a copy of the tree without git.
TOP_LEVEL_LEFT_OUT = {".git", "build", "dist"}
LEFT_OUT_ANYWHERE = {"__pycache__", ".hypothesis", ".cache", ".ipynb_checkpoints"}
LEFT_OUT_ENDINGS = (".egg-info", "_cache")


def files_known_to_git(root: Path) -> list[str] | None:
    """Names from git, or None where `root` is no work tree."""
    if not (root / ".git").exists():
        return None
    listing = subprocess.run(
        ["git", "-c", f"safe.directory={root.resolve()}", "ls-files", "-z"]
        + ["--cached", "--others", "--exclude-standard"],
        cwd=root,
        check=True,
        capture_output=True,
        text=True,
    ).stdout
    return [name for name in listing.split("\0") if name]


def files_on_disk(root: Path) -> list[str]:
    """All files but those in folders that a build or a tool made."""
    found = []
    for folder, folders, files in os.walk(root):
        here = Path(folder).relative_to(root)
        left_out = LEFT_OUT_ANYWHERE | (TOP_LEVEL_LEFT_OUT if here == Path() else set())
        folders[:] = [
            name
            for name in folders
            if name not in left_out and not name.endswith(LEFT_OUT_ENDINGS)
        ]
        found += [str(here / name) for name in files]
    return found


def tracked_files(root: Path) -> list[Path]:
    """Paths relative to `root`, sorted."""
    names = files_known_to_git(root)
    if names is None:
        names = files_on_disk(root)
    return sorted(Path(name) for name in set(names) if (root / name).is_file())
