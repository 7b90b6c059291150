"""Tests that say where their numbers come from and do not step aside without a word."""

import ast
import csv
import re
from pathlib import Path

import pytest

from tests.house.tree import ROOT, functions, parsed, place, python_files, short, tracked

REFERENCE = python_files("tests/reference")
SAYS_WHERE = re.compile(
    r"source|opened|from memory|recalled|common practice|published|invented sums|rival"
    r"|any [a-z ]*text\b|by definition|\(definition\)|kinematics|arithmetic on",
    re.IGNORECASE,
)
STEP_ASIDE = {"skip", "skipif", "xfail", "importorskip"}


def gives_reason(call: ast.Call, name: str) -> bool:
    """Whether a call that lets a test step aside says why."""
    told = [word.value for word in call.keywords if word.arg in ("reason", "msg")]
    if name == "skip":
        told += call.args[:1]
    return any(not (isinstance(value, ast.Constant) and not value.value) for value in told)


def silent_steps(path: Path) -> list[str]:
    tree = parsed(path)
    called = {node.func: node for node in ast.walk(tree) if isinstance(node, ast.Call)}
    return [
        place(path, node)
        for node in ast.walk(tree)
        if isinstance(node, ast.Attribute)
        and node.attr in STEP_ASIDE
        and ast.unparse(node.value) in ("pytest", "pytest.mark", "mark", "unittest")
        and not (node in called and gives_reason(called[node], node.attr))
    ]


def test_no_test_steps_aside_without_a_reason() -> None:
    found = [where for path in python_files("tests") for where in silent_steps(path)]
    assert not found, f"Say why: {found}"


def test_this_test_sees_a_silent_step(tmp_path: Path) -> None:
    written = tmp_path / "t.py"
    written.write_text("import pytest\n@pytest.mark.skip\ndef test_a(): ...\n")
    tree = ast.parse(written.read_text())
    marks = [n for n in ast.walk(tree) if isinstance(n, ast.Attribute) and n.attr == "skip"]
    assert len(marks) == 1
    assert not gives_reason(ast.parse("pytest.skip()", mode="eval").body, "skip")  # type: ignore[arg-type]
    assert gives_reason(ast.parse("pytest.skip('no')", mode="eval").body, "skip")  # type: ignore[arg-type]


def tables(path: Path) -> dict[str, str]:
    """The text of everything that a file defines at its top, by name: tests take their rows from there."""
    text = path.read_text(encoding="utf-8")
    found = {}
    for node in parsed(path).body:
        names = [node.name] if isinstance(node, ast.FunctionDef | ast.ClassDef) else []
        names += [n.id for n in ast.walk(node) if isinstance(n, ast.Name) and isinstance(n.ctx, ast.Store)]
        found.update(dict.fromkeys(names, ast.get_source_segment(text, node) or ""))
    return found


def states_a_number(function: ast.FunctionDef | ast.AsyncFunctionDef) -> bool:
    """Whether a test compares with a number at all; those that ask for a sign or a slope need no source."""
    for node in ast.walk(function):
        if isinstance(node, ast.Call) and "approx" in ast.unparse(node.func):
            return True
        if isinstance(node, ast.Compare) and any(isinstance(op, ast.Eq) for op in node.ops):
            sides = [node.left, *node.comparators]
            if any(isinstance(side, ast.Constant) and isinstance(side.value, int | float) for side in sides):
                return True
    return False


def has_source(function: ast.FunctionDef | ast.AsyncFunctionDef, path: Path) -> bool:
    """Whether a test, or a table that it uses, says where its numbers come from and how they were got."""
    lines = path.read_text(encoding="utf-8").splitlines()
    first = min([function.lineno, *[d.lineno for d in function.decorator_list]])
    own = "\n".join(lines[first - 1 : function.end_lineno])
    used = {node.id for node in ast.walk(function) if isinstance(node, ast.Name)}
    told = [own, *[text for name, text in tables(path).items() if name in used and name != function.name]]
    return any(SAYS_WHERE.search(text) for text in told)


@pytest.mark.parametrize("path", REFERENCE, ids=short)
def test_every_reference_check_names_its_source(path: Path) -> None:
    tests = [f for f in functions(path) if f.name.startswith("test_")]
    without = [f"{place(path, f)} {f.name}" for f in tests if states_a_number(f) and not has_source(f, path)]
    assert not without, f"Where do the numbers come from? {without}"


def test_every_row_of_the_reference_tables_names_its_source() -> None:
    tables = [
        path for path in tracked() if path.suffix == ".csv" and ROOT / "tests" / "reference" in path.parents
    ]
    assert tables, "tests/reference holds no table, so this test has looked at nothing"
    for path in tables:
        with path.open(encoding="utf-8", newline="") as file:
            rows = list(csv.DictReader(file))
        assert rows, short(path)
        assert not [number for number, row in enumerate(rows, 2) if not (row.get("source") or "").strip()], (
            short(path)
        )
