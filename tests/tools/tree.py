"""The files of the project: those git tracks, and new ones it would track."""

import subprocess
from pathlib import Path


def tracked_files(root: Path) -> list[Path]:
    """Paths relative to `root`, sorted. Fails outside a git work tree."""
    listing = subprocess.run(
        ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        cwd=root,
        check=True,
        capture_output=True,
        text=True,
    ).stdout
    names = {name for name in listing.split("\0") if name}
    return sorted(Path(name) for name in names if (root / name).is_file())
