"""Which letters a paper can set: what the type lacks is replaced by something a reader can still read.

A tagged paper refuses a letter without a glyph, and a customer may be called anything. So the letters are
looked at before the paper is set: a sign is named in brackets, a letter becomes an empty square.
"""

from __future__ import annotations

import re
import tomllib
import unicodedata
from functools import cache
from pathlib import Path

LACKING_LETTER = "□"
"""Stands for a letter that the type does not have."""

LONGEST_WORD = 24
"""A longer word may be broken anywhere, so that it stays on its paper."""

ZERO_WIDTH_SPACE = "\u200b"


@cache
def _covered() -> frozenset[int]:
    text = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))["cover"]
    letters: set[int] = set()
    for span in text.split():
        first, _, last = span.partition("-")
        letters.update(range(int(first, 16), int(last or first, 16) + 1))
    return frozenset(letters)


def covers(letter: str) -> bool:
    """Whether the type has this letter (a new line counts as one)."""
    return letter == "\n" or ord(letter) in _covered()


def _instead(letter: str) -> str:
    kind = unicodedata.category(letter)
    if kind[0] in "Z" or letter == "\t":
        return " "
    if kind[0] in "MC":
        return ""
    if kind[0] == "S":
        return f"[{unicodedata.name(letter, 'sign').lower()}]"
    return LACKING_LETTER


def settable(text: str) -> str:
    """The text with every letter that cannot be set replaced; text that can be set comes back unchanged."""
    whole = unicodedata.normalize("NFC", text)
    return "".join(letter if covers(letter) else _instead(letter) for letter in whole)


def breakable(text: str) -> str:
    """The text with places to break inside words that are too long for a column."""
    return re.sub(rf"\S{{{LONGEST_WORD + 1},}}", lambda word: ZERO_WIDTH_SPACE.join(word[0]), text)
