"""Draws what is said and what is found from the table of words."""

from __future__ import annotations

from collections.abc import Sequence
from random import Random
from typing import Any

from spoolwright.demo.cast import table

ROUND_UP = 50_00
"""Caps are named in round sums."""


def findings(chance: Random) -> list[tuple[str, str, str]]:
    """One to three things that are wrong with a multiplier."""
    rows = chance.sample(table("words.toml")["findings"], chance.choice((1, 1, 2, 2, 3)))
    return [(row["part"], row["fault"], row["evidence"]) for row in rows]


def complaint(chance: Random) -> str:
    return str(chance.choice(table("words.toml")["complaints"]))


def last_opened(chance: Random) -> str:
    return str(chance.choice(table("words.toml")["last_opened"]))


def yes(chance: Random, key: str, total_minor: int, with_cap: bool) -> tuple[str, str, int | None]:
    """A yes to an option in somebody's own words, by which way, and the cap where one is named."""
    rows = [row for row in table("words.toml")["yes"] if "middle" not in row[0] or key == "improve"]
    words, channel = chance.choice([row for row in rows if "{cap}" in row[0]] if with_cap else rows)
    cap = -(-int(total_minor * chance.uniform(1.09, 1.16)) // ROUND_UP) * ROUND_UP
    said = words.format(sum=_kroner(total_minor), cap=_kroner(cap))
    return said, channel, cap if "{cap}" in words else None


def no(chance: Random) -> tuple[str, str]:
    words, channel = chance.choice(table("words.toml")["no"])
    return words, channel


def aside(chance: Random) -> str:
    """Now and then somebody adds a word to the work."""
    return str(chance.choice(table("words.toml")["asides"])) if chance.random() < 0.45 else ""


def extra(chance: Random, works: Sequence[str]) -> dict[str, Any]:
    """Something found when the reel was open, that is not in the agreed works already."""
    rows = [row for row in table("words.toml")["extras"] if row["work"] not in works]
    return dict(chance.choice(rows))


def small_job(chance: Random) -> dict[str, Any]:
    return dict(chance.choice(table("words.toml")["quick"]))


def new_line(chance: Random) -> dict[str, Any]:
    return dict(chance.choice(table("words.toml")["lines"]))


def _kroner(minor: int) -> str:
    return f"{minor // 100:,}"
