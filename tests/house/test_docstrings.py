"""The documentation of the three rooms that calculate is complete, and this file reads it to see."""

import ast
import doctest
import importlib
import re
from pathlib import Path

import pytest

from tests.house.tree import SOURCE, Function, parsed, place, python_files

# The guards of mechanics/arguments.py take any quantity, so there is no unit to state and no source to give.
EXEMPT = {"arguments.py", "__init__.py"}
ROOMS = ("mechanics", "bench", "judgement")
HEADING = re.compile(r"(?m)^(\w[\w ]*)\n-{3,}$")
UNIT = re.compile(r"\[[^\]\n]+\]")
NUMBERS = re.compile(r"\b(float|int|Number|NDArray|Measured)\b")


def public_functions(room: str) -> list[tuple[Path, ast.FunctionDef]]:
    return [
        (path, node)
        for path in python_files(f"src/spoolwright/{room}")
        if path.name not in EXEMPT and not path.name.startswith("_")
        for node in parsed(path).body
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_")
    ]


def sections(text: str) -> dict[str, str]:
    """The docstring's parts by heading; what stands before the first is the summary."""
    parts = HEADING.split(text)
    return {
        "Summary": parts[0].strip(),
        **dict(zip(parts[1::2], [p.strip("\n") for p in parts[2::2]], strict=True)),
    }


def described(parameters: str) -> dict[str, str]:
    """What is said of each name in a Parameters section."""
    found: dict[str, str] = {}
    names: list[str] = []
    for line in parameters.splitlines():
        if line[:1].strip():
            told, colon, kind = line.partition(" : ")
            names = [name.strip().lstrip("*") for name in told.split(",")] if colon and kind.strip() else []
            found.update(dict.fromkeys(names, ""))
        else:
            found.update({name: f"{found[name]} {line.strip()}" for name in names})
    return found


def names_of(function: Function) -> list[str]:
    told = function.args
    stars = [star for star in (told.vararg, told.kwarg) if star]
    return [a.arg for a in (*told.posonlyargs, *told.args, *told.kwonlyargs, *stars)]


def refuses(function: Function) -> bool:
    """Whether the function raises, itself or through the guards of mechanics.arguments."""
    for node in ast.walk(function):
        if isinstance(node, ast.Raise):
            return True
        if (
            isinstance(node, ast.Attribute)
            and isinstance(node.value, ast.Name)
            and node.value.id == "arguments"
        ):
            return True
    return False


def gaps(function: Function, room: str) -> list[str]:
    """Everything that the docstring of one function leaves unsaid."""
    told = sections(ast.get_docstring(function) or "")
    spoken = described(told.get("Parameters", ""))
    found = [] if told["Summary"] else ["no summary"]
    for name in names_of(function):
        if name not in spoken:
            found.append(f"{name} is not described")
        elif not UNIT.search(spoken[name]):
            found.append(f"{name} has no [unit]")
    found += [f"{name} is described and does not exist" for name in set(spoken) - set(names_of(function))]
    returns = ast.unparse(function.returns) if function.returns else ""
    if returns != "None" and not told.get("Returns", "").strip():
        found.append("no Returns")
    elif NUMBERS.search(returns) and not UNIT.search(told["Returns"]):
        found.append("Returns has no [unit]")
    if refuses(function) and not told.get("Raises", "").strip():
        found.append("it raises and has no Raises")
    wanted = ("Source", "Notes", "Examples") if room == "mechanics" else ("Source",)
    return found + [f"no {heading}" for heading in wanted if not told.get(heading, "").strip()]


@pytest.mark.parametrize("room", ROOMS)
def test_every_public_function_says_unit_shape_errors_and_source(room: str) -> None:
    found = {
        f"{place(path, function)} {function.name}": missing
        for path, function in public_functions(room)
        if (missing := gaps(function, room))
    }
    lines = [f"{where}: {'; '.join(missing)}" for where, missing in found.items()]
    assert not lines, f"{len(lines)} docstrings leave something unsaid:\n" + "\n".join(lines)
    assert public_functions(room), f"{room} has no public function, so this test has looked at nothing"


def test_this_test_sees_what_is_missing() -> None:
    docstring = '"""Sum.\n\n    Parameters\n    ----------\n    a : float\n        One.\n    """'
    text = f"def f(a: float, b: float) -> float:\n    {docstring}\n    raise ValueError\n"
    function = ast.parse(text).body[0]
    assert isinstance(function, ast.FunctionDef)
    assert gaps(function, "bench") == [
        "a has no [unit]",
        "b is not described",
        "no Returns",
        "it raises and has no Raises",
        "no Source",
    ]


@pytest.mark.parametrize("room", [*ROOMS, "quantities", "sheets", "papers"])
def test_the_examples_in_the_docstrings_are_true(room: str) -> None:
    for path in python_files(f"src/spoolwright/{room}"):
        name = ".".join(path.relative_to(SOURCE.parent).with_suffix("").parts).removesuffix(".__init__")
        result = doctest.testmod(importlib.import_module(name))
        assert not result.failed, f"{name}: {result.failed} of {result.attempted} examples are not true"
