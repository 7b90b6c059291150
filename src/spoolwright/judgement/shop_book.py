"""The shop book: every coefficient that the shop learns, from all its proofs, those set aside left out."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from spoolwright.judgement.book_chapter import Chapter, read
from spoolwright.judgement.book_evidence import Learnt
from spoolwright.judgement.book_fit import Seen
from spoolwright.judgement.book_gauges import Leaning, leanings
from spoolwright.judgement.book_kinds import Family, Kind
from spoolwright.judgement.book_lessons import Lessons, lessons
from spoolwright.judgement.book_rates import Rate

CHAPTERS: tuple[Family, ...] = ("friction", "bearing", "start-up", "minutes")


@dataclass(frozen=True)
class Aside:
    """Set aside by a hand: an entry, from one coefficient or (empty) from all, and why."""

    entry: int
    coefficient: str
    reason: str

    def covers(self, entry: int, keys: Iterable[str]) -> bool:
        """Whether a proof from this entry that speaks of these coefficients is left out by it."""
        return self.entry == entry and (not self.coefficient or self.coefficient in set(keys))


@dataclass(frozen=True)
class ShopBook:
    """All chapters, the rates of faults, what is set aside, and which entries taught nothing and why."""

    chapters: Mapping[Family, Chapter]
    rates: tuple[Rate, ...]
    aside: tuple[tuple[Seen, Aside], ...]
    silent: tuple[tuple[int, str], ...]

    def kind(self, key: str) -> tuple[Chapter, Kind] | None:
        """A coefficient with its chapter, or None."""
        for chapter in self.chapters.values():
            if kind := chapter.kind(key):
                return chapter, kind
        return None

    def rate(self, key: str) -> Rate | None:
        """The rate of that key, or None."""
        return next((rate for rate in self.rates if rate.key == key), None)

    def aside_of(self, key: str) -> tuple[tuple[Seen, Aside], ...]:
        """What is set aside of the proofs of a coefficient."""
        return tuple((seen, why) for seen, why in self.aside if key in dict(seen.shares))

    @cached_property
    def lessons(self) -> Lessons:
        """What predictions take from it."""
        return lessons(tuple(self.chapters.values()))

    @cached_property
    def leanings(self) -> tuple[Leaning, ...]:
        """How far the shop's instruments lean, those that are named first."""
        found = [one for family in GAUGED for one in leanings(self.chapters[family])]
        return tuple(sorted(found, key=lambda one: (not one.named, one.chance)))

    @property
    def proofs(self) -> int:
        """How many proofs it has read."""
        return sum(len(chapter.weighed) for chapter in self.chapters.values())


GAUGED: tuple[Family, ...] = ("friction", "bearing")
"""Where an instrument that reads a share too much shows: a ratio of two readings of one gauge hides it."""


def bind(
    learnt: Sequence[Learnt],
    aside: Sequence[Aside] = (),
    rates: Sequence[Rate] = (),
    known: Iterable[Kind] = (),
) -> ShopBook:
    """Put the book together.

    Parameters
    ----------
    learnt : sequence of Learnt
        What each proof teaches, oldest first **[-]**.
    aside : sequence of Aside
        What hands have set aside **[-]**.
    rates : sequence of Rate
        Rates of faults **[-]**.
    known : iterable of Kind
        Coefficients to be kept though nothing may speak of them yet **[-]**.

    Returns
    -------
    ShopBook
        With all chapters **[-]**, those without proofs too.

    Source
    ------
    book_fit, book_chapter.

    Examples
    --------
    >>> bind(()).proofs
    0
    """
    kinds: dict[Family, dict[str, Kind]] = {family: {} for family in CHAPTERS}
    for kind in (*known, *(kind for one in learnt for kind in one.kinds)):
        kinds[kind.family].setdefault(kind.key, kind)
    counted: dict[Family, list[Seen]] = {family: [] for family in CHAPTERS}
    left: list[tuple[Seen, Aside]] = []
    silent: list[tuple[int, str]] = []
    for one in learnt:
        if one.seen is None:
            silent.append((one.entry, one.why_not))
            continue
        keys = [key for key, _ in one.seen.shares]
        why = next((row for row in aside if row.covers(one.seen.entry, keys)), None)
        if why is not None:
            left.append((one.seen, why))
        else:
            counted[one.kinds[0].family].append(one.seen)
    chapters = {family: read(tuple(kinds[family].values()), counted[family]) for family in CHAPTERS}
    return ShopBook(chapters, tuple(rates), tuple(left), tuple(dict.fromkeys(silent)))
