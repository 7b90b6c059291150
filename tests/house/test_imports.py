"""What import-linter cannot see: modules that are named in a string."""

import ast
from pathlib import Path

import pytest

from tests.house.tree import parsed, place, python_files

BY_NAME = {"import_module", "get_model", "__import__", "get_app_config", "get_apps", "import_string"}
HEAVY = {"scipy", "vl_convert", "typst", "playwright", "granian"}


def reaches_by_name(node: ast.AST) -> bool:
    """A call that takes a module's name as text, or the import of what offers such calls."""
    if isinstance(node, ast.Name):
        return node.id in BY_NAME
    if isinstance(node, ast.Attribute):
        return node.attr in BY_NAME
    if isinstance(node, ast.ImportFrom):
        names = {alias.name for alias in node.names}
        return bool(BY_NAME & names) or (node.module == "importlib" and names != {"resources"})
    # importlib.resources reads files that lie beside the code, and is welcome
    return isinstance(node, ast.Import) and any(alias.name == "importlib" for alias in node.names)


def named(path: Path) -> list[str]:
    """Where a file reaches for a module by a string."""
    return [place(path, node) for node in ast.walk(parsed(path)) if reaches_by_name(node)]


@pytest.mark.parametrize(
    "room", ["mechanics", "pages", "command", "demo", "judgement", "bench", "sheets", "papers"]
)
def test_no_room_reaches_another_by_a_name_in_a_string(room: str) -> None:
    found = [where for path in python_files(f"src/spoolwright/{room}") for where in named(path)]
    assert not found, f"Say the import plainly, so that the contracts can see it: {found}"


def test_what_is_slow_to_import_is_imported_where_it_is_used() -> None:
    found = [
        place(path, node)
        for path in python_files("src")
        for node in parsed(path).body
        if isinstance(node, ast.Import | ast.ImportFrom)
        for name in (
            [node.module or ""] if isinstance(node, ast.ImportFrom) else [a.name for a in node.names]
        )
        if name.split(".")[0] in HEAVY
    ]
    assert not found, f"Import these inside the function that needs them: {found}"
