"""How large things may become before they have to be taken apart."""

import ast
import io
import statistics
import tokenize
from pathlib import Path

import pytest

from tests.house.tree import ROOT, Function, functions, place, python_files, short, tracked

OURS = [*python_files("src", "tests"), ROOT / "run.py"]
LONGEST_FILE = 400
LONGEST_BODY = 60
LONGEST_MEDIAN = 10
MOST_ARGUMENTS = 7
FORBIDDEN_NAMES = {
    "utils",
    "util",
    "helpers",
    "helper",
    "common",
    "core",
    "misc",
    "tools",
    "manager",
    "managers",
}


def body_lines(function: Function) -> int:
    """Lines from the first statement after the docstring to the last."""
    body = function.body[1:] if ast.get_docstring(function) is not None else function.body
    return (body[-1].end_lineno or 0) - body[0].lineno + 1 if body else 0


def argument_count(function: Function) -> int:
    told = function.args
    return len([a for a in (*told.posonlyargs, *told.args, *told.kwonlyargs) if a.arg not in ("self", "cls")])


@pytest.mark.parametrize("suffix", [".py", ".html", ".css", ".js", ".typ"])
def test_no_file_is_longer_than_the_ceiling(suffix: str) -> None:
    ours = [
        path for path in tracked() if path.suffix == suffix and not {"vendor", "migrations"} & set(path.parts)
    ]
    too_long = {
        short(path): lines
        for path in ours
        if (lines := len(path.read_text(encoding="utf-8").splitlines())) > LONGEST_FILE
    }
    assert not too_long, f"Take these apart at the noun (ceiling {LONGEST_FILE} lines): {too_long}"


def test_no_function_body_is_longer_than_the_ceiling() -> None:
    too_long = {
        place(path, f): body_lines(f)
        for path in OURS
        for f in functions(path)
        if body_lines(f) > LONGEST_BODY
    }
    assert not too_long, f"Longer than {LONGEST_BODY} lines: {too_long}"


def test_half_of_all_functions_fit_in_a_glance() -> None:
    lengths = [body_lines(function) for path in python_files("src") for function in functions(path)]
    assert statistics.median(lengths) <= LONGEST_MEDIAN


def test_no_function_takes_more_arguments_than_a_person_can_keep_apart() -> None:
    crowded = {
        f"{place(path, function)} {function.name}": argument_count(function)
        for path in python_files("src")
        if "mechanics" not in path.parts  # the physics has as many quantities as it has
        for function in functions(path)
        if argument_count(function) > MOST_ARGUMENTS
    }
    assert not crowded, f"More than {MOST_ARGUMENTS} arguments: {crowded}"


def test_nothing_is_called_by_a_name_that_says_nothing() -> None:
    def stems(path: Path) -> set[str]:
        parts = path.relative_to(ROOT).parts
        return {part.lower() for part in (*parts[:-1], path.stem.removeprefix("test_"))}

    nameless = [
        short(path) for path in tracked() if FORBIDDEN_NAMES & stems(path) and "vendor" not in path.parts
    ]
    assert not nameless, f"Name these after what they hold: {nameless}"


def test_every_function_says_what_it_gives_back() -> None:
    silent = [
        f"{place(path, function)} {function.name}"
        for path in python_files("src")
        for function in functions(path)
        if function.returns is None
    ]
    assert not silent, f"No return annotation: {silent}"


def test_comments_say_why_and_do_not_narrate() -> None:
    comments = lines = 0
    for path in python_files("src"):
        text = path.read_text(encoding="utf-8")
        lines += sum(1 for line in text.splitlines() if line.strip())
        tokens = tokenize.generate_tokens(io.StringIO(text).readline)
        comments += sum(1 for token in tokens if token.type == tokenize.COMMENT)
    assert comments <= 0.06 * lines, f"{comments} comments in {lines} lines"
