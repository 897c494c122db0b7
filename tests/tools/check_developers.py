"""Check that DEVELOPERS.md agrees with the tree.

python3 check_developers.py ROOT

Equation labels used in the sources and those in the table "Equations" are the same set;
every Debian package that is installed is explained; every folder of src has its row in
the table "Rooms", and every row its folder.
"""

import re
import sys
from pathlib import Path

from tree import tracked_files

LABEL = re.compile(r"\bEqs?\. ?\(?([A-Z]\d+)\)?(?:(?: to |, | and )\(?([A-Z]\d+)\)?)*")
TABLE_ROW = re.compile(r"^\| ([A-Z]\d+) \|", re.MULTILINE)
PACKAGE_LIST = re.compile(r"^\w+_packages=\((.*?)^\)", re.MULTILINE | re.DOTALL)
SOURCES = {".hpp", ".cpp", ".py"}
ROOM = re.compile(r"^\| `(src/\w+)/` \|", re.MULTILINE)


def labels_in(text: str) -> set[str]:
    """Equation labels that the text uses: Eq. (G1), Eq. (G2) to (G4), Eq. G5."""
    return {
        label for match in LABEL.finditer(text) for label in match.groups() if label
    }


def equation_complaints(used: set[str], page: str) -> list[str]:
    """Labels that are on one side only."""
    listed = set(TABLE_ROW.findall(page))
    unlisted, unused = sorted(used - listed), sorted(listed - used)
    found = [f"Eq. ({label}) is used, not in the table" for label in unlisted]
    return found + [f"Eq. ({label}) is in the table, not used" for label in unused]


def package_complaints(script: str, page: str) -> list[str]:
    """Packages that the script installs and the page does not explain."""
    packages = " ".join(PACKAGE_LIST.findall(script)).split()
    if not packages:
        return ["no package list found in tests/install_packages.sh"]
    return [f"{name}: not explained" for name in packages if f"`{name}`" not in page]


def room_complaints(files: list[Path], page: str) -> list[str]:
    """Folders of src that are on one side only."""
    inside = [path.parts for path in files if path.parts[0] == "src"]
    folders = {f"src/{parts[1]}" for parts in inside if len(parts) > 2}
    listed = set(ROOM.findall(page))
    found = [f"{name}/: not in the table of rooms" for name in sorted(folders - listed)]
    return found + [f"{name}/: no such folder" for name in sorted(listed - folders)]


def main(root: Path) -> int:
    """Print every disagreement; 0 when there is none."""
    page = (root / "DEVELOPERS.md").read_text(encoding="utf-8")
    used: set[str] = set()
    files = tracked_files(root)
    for path in files:
        if path.suffix in SOURCES and path.parts[:2] != ("tests", "tools"):
            used |= labels_in((root / path).read_text(encoding="utf-8"))
    script = (root / "tests/install_packages.sh").read_text(encoding="utf-8")
    found = equation_complaints(used, page) + package_complaints(script, page)
    found += room_complaints(files, page)
    print(*found, sep="\n")
    print(f"DEVELOPERS.md: {len(used)} equation labels, {len(found)} complaints")
    return 1 if found or not used else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
