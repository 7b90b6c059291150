"""The list of coefficients in plain words: what the sheets say, what is believed now, what stands behind."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from spoolwright.judgement.book_chapter import before, now
from spoolwright.judgement.book_kinds import FAMILIES
from spoolwright.judgement.book_rates import Rate, beta_interval
from spoolwright.judgement.book_words import ABOUT, proofs_said, span_said, value_said
from spoolwright.judgement.shop_book import CHAPTERS, ShopBook
from spoolwright.pages import doors
from spoolwright.shop.questions import book as questions

FAULTS_ABOUT = (
    "Reels on which a fault was found, of all that were looked into. The prior is worth ten reels; another "
    "kind of reel with the same row lends a quarter of its weight."
)


@dataclass(frozen=True)
class Line:
    """One coefficient in the list."""

    title: str
    address: str
    sheet: str
    now: str
    span: str
    proofs: str
    odd: int = 0


@dataclass(frozen=True)
class Part:
    """A chapter of the book as it is read."""

    title: str
    about: str
    lines: tuple[Line, ...]
    proofs: int


def parts(book: ShopBook) -> tuple[Part, ...]:
    """The chapters in their order; of the faults only those that were found."""
    found = []
    for family in CHAPTERS:
        chapter = book.chapters[family]
        lines = []
        for kind in sorted(chapter.kinds, key=lambda kind: (-len(chapter.of(kind.key)), kind.title)):
            held, own = now(chapter, kind), chapter.of(kind.key)
            lines.append(
                Line(
                    kind.title,
                    doors.way_to("book:coefficient", kind.key),
                    span_said(kind, before(kind)),
                    value_said(kind, held.middle),
                    span_said(kind, held),
                    proofs_said(len(own)),
                    sum(one.is_outlier for one in own),
                )
            )
        found.append(Part(FAMILIES[family], ABOUT[family], tuple(lines), len(chapter.weighed)))
    return (*found, _faults(book))


def _faults(book: ShopBook) -> Part:
    told = sorted((rate for rate in book.rates if rate.found), key=lambda rate: (-rate.mean, rate.key))
    lines = tuple(rate_line(rate) for rate in told)
    return Part(FAMILIES["faults"], FAULTS_ABOUT, lines, sum(rate.found for rate in told))


@dataclass(frozen=True)
class Silent:
    """An entry that taught nothing, and why."""

    entry: Any
    diary: str
    why: str


def silent(book: ShopBook) -> tuple[Silent, ...]:
    """What the book has read and learned nothing from, latest first."""
    found = questions.entries(number for number, _ in book.silent)
    rows = [(found[number], why) for number, why in book.silent if number in found]
    return tuple(
        Silent(entry, f"{doors.way_to('diary:diary', entry.visit.tag)}#entry-{entry.pk}", why)
        for entry, why in sorted(rows, key=lambda row: -row[0].pk)
    )


def rate_line(rate: Rate) -> Line:
    low, high = beta_interval(rate.after)
    first, last = beta_interval(rate.prior)
    return Line(
        rate.title,
        doors.way_to("book:coefficient", rate.key),
        f"{100 * first:.0f} to {100 * last:.0f} of 100 reels",
        f"{100 * rate.mean:.0f} of 100 reels",
        f"{100 * low:.0f} to {100 * high:.0f} of 100",
        f"found on {rate.found} of {rate.reels}",
    )
