"""The checkers of the tree must see what they are there for."""

from pathlib import Path

import pytest
from check_budgets import overruns
from check_developers import (
    equation_complaints,
    labels_in,
    package_complaints,
    room_complaints,
)
from check_tree import complaints
from cpp_functions import cpp_functions
from tree import files_on_disk

LONG_BODY = "  x += 1;\n" * 45


@pytest.mark.parametrize(
    "header",
    [
        "double f(double x) {",
        "template <typename T = int>\nT f(std::vector<T> x) {",
        "static const auto f = [](double x) {",
        'TEST_CASE("a { brace in a name") {',
        "State Steel::soak(Temperature t,\n    const Options& o = {}) const {",
        "Steel::Steel(int a) : a_{a}, b_(1), c_{1, 2} {",
        "class A {\n public:\n  bool operator==(const A&) const {",
        "namespace a::b {\nvoid f() noexcept // { not a brace\n{",
        "bool operator()(int x) const {",
    ],
)
def test_long_function_is_seen(header):
    text = header + "\n" + LONG_BODY + "}\n" * (1 + header.count("class A"))
    assert [length for _, length in cpp_functions(text)] == [
        45 + 2 + header.split("public:\n")[-1].split("b {\n")[-1].count("\n")
    ]


@pytest.mark.parametrize(
    "header",
    [
        "constexpr std::array kTable = {",
        "class A {",
        "enum class B : int {",
        "namespace {",
    ],
)
def test_table_or_type_is_no_function(header):
    assert cpp_functions(header + "\n" + LONG_BODY + "};\n") == []


def test_apostrophe_in_number_and_raw_string_do_not_confuse():
    text = 'int f() {\n  return 1\'000;\n}\nint g() {\n  return n(R"({{)");\n}\n'
    assert cpp_functions(text) == [(1, 3), (4, 3)]


def test_python_docstring_is_not_counted():
    function = 'def f():\n    """Say.\n' + "\n" * 50 + '    """\n    return 1\n'
    assert overruns(Path("bindings/gibbsteel/a.py"), function) == []
    too_long = "def f():\n" + "    x = 1\n" * 40
    assert overruns(Path("bindings/gibbsteel/a.py"), too_long) == [
        "bindings/gibbsteel/a.py:1: function of 41 lines, budget 40"
    ]


@pytest.mark.parametrize(
    ("name", "budget"),
    [
        ("include/gibbsteel/a.hpp", 250),
        ("bindings/bind_a.cpp", 250),
        ("src/a.cpp", 300),
        ("tests/unit/a_test.cpp", 600),
    ],
)
def test_file_budget(name, budget):
    assert overruns(Path(name), "int x;\n" * budget) == []
    assert overruns(Path(name), "int x;\n" * (budget + 1)) == [
        f"{name}: {budget + 1} lines, budget {budget}"
    ]


def test_wide_line_is_seen():
    assert overruns(Path("src/a.cpp"), "/" * 89 + "\n") == [
        "src/a.cpp:1: 89 columns, budget 88"
    ]


@pytest.mark.parametrize(
    "line",
    [
        "cd /ho" "me/someone",
        "see (/wo" "rk/x)",
        "deb http" "://deb." "debian.org/debian",
        "pip install from py" "pi.org",
        "http" "s://example.com/a",
    ],
)
def test_pointer_out_of_the_tree_is_seen(line):
    assert complaints(Path("README.md"), line) != []


@pytest.mark.parametrize(
    "line",
    ["https://doi.org/10.1000/1", "src/work/x", "${build}/tmp/x", "/usr/bin/python3"],
)
def test_ordinary_text_passes(line):
    assert complaints(Path("README.md"), line) == []


def test_labels_are_found_however_they_are_written():
    text = "g = 1   Eq. (G1)\n(effective, Eq. G5); Eq. (P1), Eq. (G2) to (G4)"
    assert labels_in(text) == {"G1", "G5", "P1", "G2", "G4"}


def test_label_on_one_side_only_is_seen():
    assert equation_complaints({"G1", "G2"}, "| G1 | x |\n| N1 | y |\n") == [
        "Eq. (G2) is used, not in the table",
        "Eq. (N1) is in the table, not used",
    ]


def test_package_without_a_reason_is_seen():
    script = "run_packages=(\n  g++ cmake\n)\n"
    assert package_complaints(script, "`g++` compiles") == ["cmake: not explained"]
    assert package_complaints("", "") != []


def test_room_on_one_side_only_is_seen():
    files = ["src/a/b.cpp", "src/c/d/e.cpp", "src/f.cpp", "x/y/z"]
    page = "| `src/a/` | x |\n| `src/g/` | y |\n| `x/y/` | z |"
    assert room_complaints([Path(name) for name in files], page) == [
        "src/c/: not in the table of rooms",
        "src/g/: no such folder",
    ]


def test_copy_without_git_lists_sources_but_not_what_was_built(tmp_path):
    for name in ("src/a.cpp", "build/b.cpp", "tests/__pycache__/c.pyc", "x.egg-info/d"):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).touch()
    assert files_on_disk(tmp_path) == ["src/a.cpp"]
