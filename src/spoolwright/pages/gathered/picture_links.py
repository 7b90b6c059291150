"""The row of links between the pictures of a reel. A picture whose folder is not there is left out."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.pages import doors

PICTURES = (
    ("carries", "what it carries"),
    ("long_run", "a long run"),
    ("casts", "how it casts"),
    ("wears", "what wears"),
)
"""The folder of each picture below pages/, and the words that lead to it. A new picture is one line here."""


@dataclass(frozen=True)
class PictureLink:
    address: str
    words: str
    is_here: bool


def picture_links(door: str, key: str | int, here: str = "", kept: str = "") -> list[PictureLink]:
    """The ways to every picture of one sheet, reel or visit; `kept` goes along behind the question mark."""
    ways = [(doors.way_to(f"{name}:{door}", key), words, name == here) for name, words in PICTURES]
    return [
        PictureLink(f"{way}?{kept}" if kept else way, words, is_here) for way, words, is_here in ways if way
    ]
