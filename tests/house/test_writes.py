"""Only an act writes a record: pages, the demonstration and the command line go through the same door."""

import ast
from pathlib import Path

from tests.house.tree import SOURCE, parsed, place, python_files

WRITES = {
    "save",
    "create",
    "bulk_create",
    "get_or_create",
    "update_or_create",
    "bulk_update",
    "acreate",
    "asave",
}
# The acts are where writing is done; records say how a row of theirs is written at all.
ALLOWED = (SOURCE / "shop" / "acts", SOURCE / "shop" / "records")


def writes(path: Path) -> list[str]:
    return [
        f"{place(path, node)} .{node.func.attr}("
        for node in ast.walk(parsed(path))
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr in WRITES
        if not (node.func.attr == "save" and node.args)  # a picture is saved *to* something, a record is not
    ]


def test_nothing_but_an_act_writes_a_record() -> None:
    rooms = [f"src/spoolwright/{room}" for room in ("shop", "pages", "demo", "command")]
    elsewhere = [
        path for path in python_files(*rooms) if not any(folder in path.parents for folder in ALLOWED)
    ]
    found = [where for path in elsewhere for where in writes(path)]
    assert not found, f"Let an act do this: {found}"
