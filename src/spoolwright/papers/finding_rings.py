"""Which part of the drawing is a finding on? The part that was touched, else the nearest by its words."""

from __future__ import annotations

import re
from collections.abc import Iterable

from spoolwright.papers.section_drawing import PartName, Ringed, parts
from spoolwright.sheets.reel_sheet import ReelSheet

WORD = re.compile(r"[a-z]+")
EMPTY_WORDS = {"the", "of", "on", "at", "in", "a", "an", "and", "one", "side", "end", "its", "with"}


def rings(sheet: ReelSheet, findings: Iterable[tuple[str, str, str]]) -> tuple[Ringed, ...]:
    """Rings for findings given as (key that was touched, part in the bench's words, what is wrong).

    A finding that no part of the drawing answers to gets no ring: a wrong ring would be worse than none.
    """
    known = parts(sheet)
    keys = {part.key for part in known}
    found = []
    for touched, part, words in findings:
        key = touched if touched in keys else nearest(part, known)
        if key:
            found.append(Ringed(key, words))
    return tuple(found)


def nearest(words: str, known: Iterable[PartName]) -> str:
    """The key of the part that shares most words with these; empty where none shares any."""
    wanted = _stems(words)
    scored = [(len(wanted & _stems(part.title)), part.key) for part in known]
    best = max((score for score, _ in scored), default=0)
    return next((key for score, key in scored if score == best), "") if best else ""


def _stems(words: str) -> set[str]:
    """Words without their plural, so that "cog" finds "cogs"."""
    found = set(WORD.findall(words.casefold())) - EMPTY_WORDS
    return {word[:-1] if word.endswith("s") and len(word) > 3 else word for word in found}
