"""Where the functions of a C++ file begin and how long they are.

No compiler: literals and comments are blanked out, then braces are matched, and the
text in front of each brace tells what it opens.
"""

import re

BLANKED = re.compile(
    r'R"(?P<tag>[^(\s]*)\(.*?\)(?P=tag)"'  # raw string
    r'|"(?:\\.|[^"\\\n])*"'
    r"|(?<![0-9A-Fa-f])'(?:\\.|[^'\\\n])+'"  # a character, not the mark in 1'000
    r"|//[^\n]*|/\*.*?\*/"
    r"|^[ \t]*#(?:\\\n|[^\n])*",
    re.DOTALL | re.MULTILINE,
)
TEMPLATE = re.compile(r"template\s*<[^<>]*(?:<[^<>]*>[^<>]*)*>")
TYPE_OR_NAMESPACE = re.compile(r"(inline\s+)?(namespace|class|struct|enum|union)\b")
ASSIGNMENT = re.compile(r"(?<!operator)(?<![=!<>])=(?!=)")
MEMBER_INITIALIZERS = re.compile(r"\)[^;{}()]*(?<!:):(?!:)")
ACCESS = re.compile(r"\b(public|private|protected)\s*:$")


def what_opens(header: str) -> str:
    """What a brace after `header` opens: a function, a value, or another block."""
    header = TEMPLATE.sub("", header).strip()
    if header.count("(") > header.count(")"):
        return "value"  # a default argument
    if MEMBER_INITIALIZERS.search(header) and re.search(r"[\w>]$", header):
        return "value"  # a member of a constructor
    if TYPE_OR_NAMESPACE.match(header) or ")" not in header:
        return "block"
    if ASSIGNMENT.search(header.split("(")[0]):
        return "function" if "[" in header else "block"  # a lambda or a table
    return "function"


def cpp_functions(text: str) -> list[tuple[int, int]]:
    """First line and number of lines of every function that is not inside another."""
    blanked = BLANKED.sub(lambda m: re.sub(r"[^\n]", " ", m.group()), text)
    functions = []
    open_braces: list[tuple[str, int]] = []  # what it opened, where its header began
    header, header_line, line = "", 0, 1
    for char in blanked:
        ends_header = char == ";"
        if char == "{":
            in_function = any(what == "function" for what, _ in open_braces)
            what = "block" if in_function else what_opens(header)
            open_braces.append((what, header_line or line))
            ends_header = what != "value"
        elif char == "}" and open_braces:
            what, start = open_braces.pop()
            ends_header = what != "value"
            if what == "function":
                functions.append((start, line - start + 1))
        if ends_header or ACCESS.search(header + char):
            header, header_line = "", 0
        elif header or not char.isspace():
            header += char
            header_line = header_line or line
        line += char == "\n"
    return functions
