"""What was found, as lines that lead somewhere, with the words that were looked for marked."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from spoolwright.pages import doors
from spoolwright.shop.questions import by_number, customers, reel_sheets
from spoolwright.shop.questions.find import Found, folded

WORDS_BEFORE, WORDS_AFTER = 8, 22
KINDS = {"customer": "customer", "reel": "reel", "visit": "visit", "entry": "written", "sheet": "reel sheet"}


@dataclass(frozen=True)
class Piece:
    """A stretch of text; `hit` where it is what was looked for."""

    text: str
    hit: bool


@dataclass(frozen=True)
class Line:
    """One thing found: what it is, where it leads, and the words around the hit."""

    kind: str
    address: str
    title: Sequence[Piece]
    words: Sequence[Piece]
    reels: Sequence[tuple[str, str]] = ()


def lines(text: str, found: Iterable[Found]) -> list[Line]:
    asked = folded(text).split()
    things = list(found)
    tags = tags_of({thing.visit_id for thing in things if thing.visit_id})
    slugs = slugs_by_number() if any(thing.kind == "sheet" for thing in things) else {}
    return [line(thing, asked, tags, slugs) for thing in things]


def line(thing: Found, asked: Sequence[str], tags: dict[int, int], slugs: dict[int, str]) -> Line:
    return Line(
        kind=KINDS[thing.kind],
        address=address(thing, tags, slugs),
        title=marked(thing.title, asked),
        words=marked(around(thing.words, asked), asked),
        reels=reels_of(thing.ref) if thing.kind == "customer" else (),
    )


def address(thing: Found, tags: dict[int, int], slugs: dict[int, str]) -> str:
    """Where this lies."""
    if thing.kind == "customer":
        return doors.way_to("customer:customer", thing.ref)
    if thing.kind == "reel":
        return doors.way_to("passport:passport", thing.ref)
    if thing.kind == "sheet":
        return doors.way_to("reel_sheet:sheet", slugs[thing.ref])
    if thing.visit_id is None:
        return ""
    diary = doors.way_to("diary:diary", tags[thing.visit_id])
    return f"{diary}#entry-{thing.ref}" if diary and thing.kind == "entry" else diary


def tags_of(visits: set[int]) -> dict[int, int]:
    found = {number: by_number.visit(number) for number in visits}
    return {number: visit.tag for number, visit in found.items() if visit}


def slugs_by_number() -> dict[int, str]:
    return {known.sheet.pk: known.sheet.slug for known in reel_sheets.all_sheets()}


def reels_of(customer: int) -> list[tuple[str, str]]:
    return [
        (reel.described, doors.way_to("passport:passport", reel.pk)) for reel in customers.reels_of(customer)
    ]


def around(words: str, asked: Sequence[str]) -> str:
    """The words near the first hit; the beginning where the hit is in the title alone."""
    parts = words.split()
    first = next((n for n, part in enumerate(parts) if is_hit(part, asked)), 0)
    start = max(first - WORDS_BEFORE, 0)
    end = first + WORDS_AFTER
    return f"{'… ' if start else ''}{' '.join(parts[start:end])}{' …' if end < len(parts) else ''}"


def marked(text: str, asked: Sequence[str]) -> list[Piece]:
    pieces = [part for part in re.split(r"(\w+)", text) if part]
    return [Piece(part, is_hit(part, asked)) for part in pieces]


def is_hit(part: str, asked: Sequence[str]) -> bool:
    return any(word.startswith(each) for word in folded(part).split() for each in asked)
