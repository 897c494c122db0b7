"""Check that no file points out of the tree, and that the version agrees everywhere.

python3 check_tree.py ROOT VERSION

Looks for folders of a developer's machine, for hosts that packages are fetched from
(they differ from place to place and belong to the machine's settings), for links to
hosts that are not on the list below, and for stray top-level files.
"""

import re
import sys
from pathlib import Path

from tree import tracked_files

# Folders of one machine. Written in pieces so that this file passes its own check.
MACHINE_FOLDER = re.compile(
    r"(?<![\w./$}-])/(wo" r"rk|ro" r"ot|ho" r"me|fa" r"rm|t" r"mp)/\w"
)
REGISTRY = re.compile(
    r"\b((deb|security|ftp|archive|snapshot)\.(debian|ubuntu)"
    r"|(files\.)?py(pi|thonhosted)|registry\.npmjs|conda\.anaconda|proxy\.golang)\.\w+"
)
LINK = re.compile(r"https?://([\w.-]+)")
LINK_HOSTS = {
    "doi.org",  # literature
    "json-schema.org",  # names the dialect of a schema
}
TOP_LEVEL = re.compile(
    r"(CMakeLists\.txt|CMakePresets\.json|pyproject\.toml|setup\.py|README\.md"
    r"|DEVELOPERS\.md|SECURITY\.md|LICENSE|CHANGELOG\.md|CITATION\.cff|\..+"
    r"|include|src|bindings"
    r"|thermo_data|tests|examples|benchmarks)"
)


def complaints(path: Path, text: str) -> list[str]:
    """One line for everything in the file that should not be there."""
    found = []
    for number, line in enumerate(text.splitlines(), start=1):
        place = f"{path}:{number}"
        if match := MACHINE_FOLDER.search(line):
            found.append(f"{place}: folder of one machine: {match.group()}")
        if match := REGISTRY.search(line):
            found.append(f"{place}: package registry: {match.group()}")
        for host in LINK.findall(line):
            if host not in LINK_HOSTS:
                found.append(f"{place}: link to a host that is not listed: {host}")
    return found


def version_complaints(root: Path, version: str) -> list[str]:
    """Places that state another version than project(VERSION)."""
    stated = {
        "CITATION.cff": r"^version: (.+)$",
        "CHANGELOG.md": r"^## (\S+)",
    }
    found = []
    for name, pattern in stated.items():
        match = re.search(pattern, (root / name).read_text("utf-8"), re.MULTILINE)
        if match is None or match.group(1) != version:
            found.append(f"{name}: does not state version {version} first")
    return found


def main(root: Path, version: str) -> int:
    """Print every complaint; 0 when there is none."""
    files = tracked_files(root)
    found = version_complaints(root, version)
    for path in files:
        if not TOP_LEVEL.fullmatch(path.parts[0]):
            found.append(f"{path}: not one of the top-level files and folders")
        try:
            text = (root / path).read_text(encoding="utf-8")
        except UnicodeDecodeError:
            continue  # a picture, or a deliberately broken parameter file
        found += complaints(path, text)
    print(*found, sep="\n")
    print(f"tree: {len(files)} files, {len(found)} complaints")
    return 1 if found or not files else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]), sys.argv[2]))
