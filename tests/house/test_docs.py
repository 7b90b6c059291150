"""The documentation says what the program does: compared with the code, page by page and word by word."""

import argparse
import ast
import re
import shlex
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from django.urls import URLPattern, URLResolver, get_resolver

from spoolwright.command.__main__ import VERBS, build_parser, main
from spoolwright.demo import sample_files
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.sheets import reading_kinds, sourced
from spoolwright.shop.questions.choices import ENTRY_KINDS, PLACES
from tests.house.tree import ROOT, SOURCE, python_files, tracked

README = ROOT / "README.md"
DOCS = [path for path in tracked() if path.suffix == ".md"]
LINK = re.compile(r"\[[^\]]*\]\(([^)\s]+)\)")
NAMED = re.compile(r"`([A-Za-z_.][\w.\-]*(?:/[\w.\-]*)+)`")
ENDINGS = (".py", ".toml", ".md", ".html", ".css", ".js", ".csv", "/")
SETTING = re.compile(r"SPOOLWRIGHT_[A-Z_]*[A-Z]")
WAITING = (88, 89, 90)
# Set by run.py for pytest's summary; nobody sets it by hand.
INSIDE = {"SPOOLWRIGHT_FAILED_CHECKS"}


def text_of(path: Path) -> str:
    return path.read_text(encoding="utf-8")


def section(title: str, path: Path = README) -> str:
    """What stands under a heading, down to the next of the same level or above."""
    found = re.search(rf"(?m)^(#+) {re.escape(title)}$", text_of(path))
    assert found, f"{path.name} has no heading “{title}”"
    rest = text_of(path)[found.end() :]
    end = re.search(rf"(?m)^#{{1,{len(found[1])}}} ", rest)
    return rest[: end.start()] if end else rest


def rows(text: str) -> list[list[str]]:
    """The cells of the tables in a text, without their heads."""
    lines = [line for line in text.splitlines() if line.startswith("|")]
    cells = [[cell.strip() for cell in line.strip("|").split("|")] for line in lines]
    rules = [number for number, row in enumerate(cells) if set("".join(row)) <= set("- ")]
    return [row for number, row in enumerate(cells) if number not in rules and number + 1 not in rules]


# ---- links and names of files ----


def anchors(path: Path) -> set[str]:
    """What a link may point at within a page, as forges make it from a heading."""
    heads = re.findall(r"(?m)^#+ (.+)$", text_of(path))
    return {re.sub(r"[^\w\- ]", "", head.lower()).replace(" ", "-") for head in heads}


def broken(page: Path) -> Iterator[str]:
    for target in LINK.findall(text_of(page)):
        where, _, anchor = target.partition("#")
        file = (page.parent / where).resolve() if where else page
        if not file.exists():
            yield f"{target}: no such file"
        elif anchor and anchor not in anchors(file):
            yield f"{target}: no such heading"


@pytest.mark.parametrize("page", DOCS, ids=lambda page: page.relative_to(ROOT).as_posix())
def test_links_lead_somewhere(page: Path) -> None:
    assert list(broken(page)) == []


def test_this_test_sees_a_broken_link(tmp_path: Path) -> None:
    page = tmp_path / "page.md"
    page.write_text("# One\n[a](#one) [b](#two) [c](gone.md) [d](page.md#one)\n")
    assert [told.split(":")[0] for told in broken(page)] == ["#two", "gone.md"]


def stands_for_another(name: str) -> bool:
    """The file that adding.md invents in order to show how one is added."""
    return Path(name).name in ("wash.py", "write_wash.py", "_wash.html", "test_write_wash.py", "test_wash.py")


@pytest.mark.parametrize("page", DOCS, ids=lambda page: page.relative_to(ROOT).as_posix())
def test_files_that_are_named_are_there(page: Path) -> None:
    made = ("shop-data/", ".venv/", "before/", "after/")  # by a first start
    named = {n for n in NAMED.findall(text_of(page)) if n.endswith(ENDINGS) and not n.startswith(made)}
    missing = [n for n in sorted(named) if not stands_for_another(n) and not is_there(n)]
    assert not missing, missing


def is_there(name: str) -> bool:
    return any((base / name).exists() for base in (ROOT, SOURCE))


# ---- the command line ----


def parsers(parser: argparse.ArgumentParser) -> Iterator[tuple[tuple[str, ...], argparse.ArgumentParser]]:
    """Every act below a parser, with the words that lead to it."""
    yield (), parser
    for action in parser._actions:
        if isinstance(action, argparse._SubParsersAction):
            for word, below in action.choices.items():
                for words, found in parsers(below):
                    yield (word, *words), found


def verb_section(verb: str) -> str:
    found = re.search(rf"(?m)^### `spoolwright {verb}\b.*$", text_of(README))
    assert found, f"README.md has no heading for `spoolwright {verb}`"
    return section(found[0].removeprefix("### "))


@pytest.mark.parametrize("verb", VERBS)
def test_every_verb_has_its_heading_with_its_acts_and_options(verb: str) -> None:
    told = verb_section(verb)
    for words, parser in parsers(build_parser([verb])):
        assert all(word in told for word in words[1:]), words
        options = {o for action in parser._actions for o in action.option_strings if o.startswith("--")}
        missing = sorted(option for option in options - {"--help"} if f"`{option}" not in told)
        assert not missing, f"{verb}: {missing}"


def examples() -> list[tuple[str, str]]:
    """Each command of a console block in the README, and what the README says that it prints."""
    found = []
    for block in re.findall(r"(?ms)^```console\n(.*?)^```$", text_of(README)):
        for part in re.split(r"(?m)^\$ ", block)[1:]:
            command, _, output = part.partition("\n")
            found.append((command, output))
    return found


@pytest.fixture(scope="module")
def beside_run_py(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder in which the sample files of the demo workshop lie as a first start lays them."""
    folder = tmp_path_factory.mktemp("checkout")
    for name, data in sample_files.files(WAITING, starting_rates()).items():
        path = folder / "shop-data" / sample_files.FOLDER / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)
    return folder


def matches(told: str, printed: str) -> bool:
    """Whether the output is the one told; a line of dots stands for any number of lines."""
    pieces = [re.escape(piece.strip("\n")) for piece in re.split(r"(?m)^\.\.\.$", told)]
    return re.fullmatch(r"(?s)\s*" + ".*".join(pieces) + r"\s*", printed) is not None


@pytest.mark.parametrize(("command", "output"), examples(), ids=[command for command, _ in examples()])
def test_an_example_prints_what_the_readme_says(
    command: str, output: str, beside_run_py: Path, capsys: Any, monkeypatch: Any
) -> None:
    monkeypatch.chdir(beside_run_py)
    name, *words = shlex.split(command)
    assert name == "spoolwright"
    main(words)
    told = capsys.readouterr()
    assert matches(output, told.out + told.err), told.out + told.err


def test_there_are_examples_of_the_verbs_that_print() -> None:
    assert {command.split()[1] for command, _ in examples()} >= {"sheet", "drag", "pull", "spin"}


# ---- the first ten minutes ----


def walk_words(pattern: str) -> list[str]:
    return [re.sub(r"\s+", " ", word) for word in re.findall(pattern, section("The first ten minutes"))]


def test_what_the_walk_says_to_give_stands_on_the_slip_beside_the_files(beside_run_py: Path) -> None:
    files = beside_run_py / "shop-data" / "demo-files" / "reel-88"
    slips = "".join((files / when / "calipers.txt").read_text("utf-8") for when in ("before", "after"))
    quantities = [word for word in walk_words(r"`([\d.]+ (?:g|kg|mm|s|°C))`") if word != "18 °C"]
    assert len(quantities) >= 12
    assert not [word for word in quantities if word not in slips]
    named = walk_words(r"`((?:before|after)/[\w.-]+)`")
    assert named
    assert not [name for name in named if not (files / name).is_file()]


def test_the_words_that_the_walk_follows_stand_on_the_pages() -> None:
    pages = [
        path for path in tracked() if SOURCE / "pages" in path.parents and path.suffix in (".py", ".html")
    ]
    said = "".join(text_of(path) for path in pages) + text_of(SOURCE / "sheets" / "reading_kinds.toml")
    words = [word for word in walk_words(r"\*\*([^*]+)\*\*") if not re.match(r"\d", word)]
    assert len(words) >= 20
    assert not [word for word in words if word.lower() not in said.lower()]


# ---- run.py ----


def test_every_option_of_run_py_is_told() -> None:
    options = set(re.findall(r'"(--[a-z-]+)", ?(?:\n\s*)?(?:metavar|type|action)', text_of(ROOT / "run.py")))
    assert {"--data", "--empty"} <= options
    told = section("Starting it")
    assert not [option for option in sorted(options) if f"`{option}" not in told]


def words_of(node: ast.AST) -> str:
    """The text in an expression; what is put into it only when it is said stands as %s."""
    if isinstance(node, ast.Constant):
        return node.value if isinstance(node.value, str) else ""
    if isinstance(node, ast.FormattedValue):
        return "%s"
    return "".join(words_of(below) for below in ast.iter_child_nodes(node))


def called(tree: ast.Module, name: str) -> list[ast.Call]:
    return [n for n in ast.walk(tree) if isinstance(n, ast.Call) and ast.unparse(n.func) == name]


def constants(tree: ast.Module, *names: str) -> list[ast.AST]:
    return [n for n in tree.body if isinstance(n, ast.Assign) and ast.unparse(n.targets[0]) in names]


def lines_of_a_failure() -> Iterator[ast.AST]:
    """Where in the program the one line is written with which a start fails."""
    run, listening, serve, settings = (
        ast.parse(text_of(path))
        for path in (
            ROOT / "run.py",
            SOURCE / "command" / "listening.py",
            SOURCE / "command" / "serve.py",
            SOURCE / "settings.py",
        )
    )
    for tree in (run, listening, settings):
        yield from (n for n in ast.walk(tree) if isinstance(n, ast.Raise))
    functions = {n.name: n for n in ast.walk(run) if isinstance(n, ast.FunctionDef)}
    for name in ("too_old", "why"):
        yield from (n for n in ast.walk(functions[name]) if isinstance(n, ast.Return))
    yield from (call.args[1] for call in called(run, "watch"))
    yield from constants(run, "FULL_DISK")
    yield from constants(serve, "FULL_DISK", "NO_DATABASE")
    yield from (call.args[0] for call in called(serve, "print") if "stderr" in ast.unparse(call))


def failures() -> Iterator[str]:
    """The beginning of each such line, as a pattern."""
    for node in lines_of_a_failure():
        words = re.split(r"[:(;]|\.(?:\s|$)", words_of(node).strip())[0].split()
        if len(words) > 2:
            yield r"\s+".join(r"\S+" if "%" in word else re.escape(word) for word in words[:4])


def test_every_way_a_start_can_fail_is_told() -> None:
    found = list(failures())
    assert len(found) >= 15, found
    told = section("When it does not start")
    assert not [pattern for pattern in found if not re.search(pattern, told)]


# ---- pages and settings ----


def first_words(patterns: list[Any], before: str = "/") -> Iterator[str]:
    """Where each page begins: the address up to its first changing part."""
    for pattern in patterns:
        address = before + re.split("<", str(pattern.pattern))[0]
        if isinstance(pattern, URLResolver):
            yield from first_words(pattern.url_patterns, address)
        elif isinstance(pattern, URLPattern):
            yield "/" + address.strip("/").split("/")[0]


def test_every_page_has_its_row_with_its_address() -> None:
    addresses = [found for row in rows(section("The pages")) for found in re.findall(r"`(/[^`]*)`", row[1])]
    told = {"/" + address.strip("/").split("/")[0] for address in addresses}
    there = set(first_words(get_resolver().url_patterns))
    assert told == there, f"told and not there: {told - there}; there and not told: {there - told}"


def test_every_setting_of_the_environment_has_its_row_and_no_other_has() -> None:
    files = [*python_files("src", "tests/browser"), ROOT / "run.py", ROOT / "tests" / "postgres.py"]
    used = {name for path in files if path.is_file() for name in SETTING.findall(text_of(path))} - INSIDE
    told = {name for row in rows(section("Settings")) for name in SETTING.findall(row[0])}
    assert told == used


# ---- words of the bench ----


def test_every_kind_of_reading_has_its_row_and_no_other_has() -> None:
    told = {row[0]: row for row in rows(text_of(ROOT / "docs" / "readings.md"))}
    kinds = {kind.title: kind for kind in reading_kinds.kinds().values()}
    assert set(told) == set(kinds)
    assert not [title for title, kind in kinds.items() if told[title][2] != kind.tool]
    without = [title for title, kind in kinds.items() if told[title][3] == "nothing more" and kind.conditions]
    assert not without


def test_every_kind_of_entry_and_every_place_is_named() -> None:
    told = section("What it does")
    told = re.sub(r"\s+", " ", told)
    missing = [word for word in (*ENTRY_KINDS, *PLACES) if not re.search(rf"\b{word}\b", told)]
    assert not missing


def test_every_mark_of_a_figure_is_explained() -> None:
    told = text_of(ROOT / "docs" / "figures.md")
    assert not [mark for mark in sourced.HOW if not re.search(rf"(?m)^\|[^|]*{mark}", told)]


def test_cautions_name_what_can_hurt_and_defer() -> None:
    told = text_of(ROOT / "docs" / "cautions.md").lower()
    for word in ("solvent", "spring", "line under load", "dust", "asbestos", "rotating"):
        assert word in told, word
    for word in ("local code", "safety data sheet", "licensed"):
        assert word in told, word
        assert word in section("Cautions").lower(), word
