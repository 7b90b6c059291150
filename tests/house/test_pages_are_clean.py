"""Templates and scripts that a strict Content-Security-Policy lets through, and that ask nobody outside."""

import re
from pathlib import Path

import pytest

from tests.house.tree import SOURCE, short, tracked

TEMPLATES = [path for path in tracked() if SOURCE in path.parents and path.suffix == ".html"]
SCRIPTS = [p for p in tracked() if SOURCE in p.parents and p.suffix == ".js" and "vendor" not in p.parts]
SHEETS = [path for path in tracked() if SOURCE in path.parents and path.suffix == ".css"]

INLINE = {
    "a script in the page": re.compile(r"<script(?![^>]*\bsrc\s*=)(?![^>]*type=\"application/json\")", re.I),
    "a style in the page": re.compile(r"<style\b", re.I),
    "a style attribute": re.compile(r"<[^>]*\sstyle\s*=", re.I),
    "an on... attribute": re.compile(r"<[^>]*\s(hx-)?on[a-z:-]+\s*=", re.I),
    "a javascript: address": re.compile(r"javascript:", re.I),
    "values worked out by htmx": re.compile(r"hx-(vals|headers)\s*=\s*['\"]js:", re.I),
    "something fetched from elsewhere": re.compile(r"(src|href|action)\s*=\s*['\"](https?:)?//", re.I),
}
RUN_TEXT = re.compile(r"\beval\s*\(|new\s+Function\b|document\.write|set(Timeout|Interval)\s*\(\s*['\"]")
ELSEWHERE = re.compile(r"@import|url\(\s*['\"]?(https?:)?//", re.I)


def breaches(path: Path) -> list[str]:
    text = re.sub(r"{#.*?#}", "", path.read_text(encoding="utf-8"))
    return [f"{short(path)}: {what}" for what, pattern in INLINE.items() if pattern.search(text)]


def test_templates_hold_no_script_and_no_style() -> None:
    found = [breach for path in TEMPLATES for breach in breaches(path)]
    assert not found, "\n".join(found)


@pytest.mark.parametrize(
    "text",
    [
        "<script>alert(1)</script>",
        "<p style='color: red'>",
        "<body onload=x()>",
        "<a href='javascript:x()'>",
        "<button hx-on:click='x()'>",
        "<style>p {}</style>",
        "<script src='//elsewhere.example/x.js'>",
    ],
)
def test_this_test_sees_what_is_not_clean(text: str) -> None:
    assert any(pattern.search(text) for pattern in INLINE.values())


def test_scripts_run_no_text() -> None:
    found = [short(path) for path in SCRIPTS if RUN_TEXT.search(path.read_text(encoding="utf-8"))]
    assert not found, f"These turn text into a program: {found}"


def test_style_sheets_fetch_nothing_from_elsewhere() -> None:
    found = [short(path) for path in SHEETS if ELSEWHERE.search(path.read_text(encoding="utf-8"))]
    assert not found, f"These ask another server: {found}"
