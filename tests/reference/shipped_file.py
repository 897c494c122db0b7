"""Files of thermo_data/ that a script writes, and tests hold to what it writes."""

import argparse


def main(arguments, title, path, text, summary):
    """Writes `text`, or with --check says whether `path` holds it; the exit code."""
    parser = argparse.ArgumentParser(description=title)
    parser.add_argument("--check", action="store_true", help="compare, write nothing")
    if parser.parse_args(arguments).check:
        same = path.exists() and path.read_text("utf-8") == text
        print(f"{path.name} is {'' if same else 'not '}what would be written")
        return 0 if same else 1
    path.write_text(text, encoding="utf-8")
    print(f"{path.name}: {summary}, {len(text)} bytes")
    return 0
