"""What is to be watched: what was left undone, what the last proof did not show, what the limits say."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from spoolwright.judgement import findings
from spoolwright.pages.passport.histories import in_two
from spoolwright.pages.words import promised, when
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.passport import Passport, ReadingInPassport

VERDICTS = {"look": "wants a look", "act": "is to be acted on"}


@dataclass(frozen=True)
class Watch:
    """One thing in words, and where it is known from."""

    words: str
    known_from: str


def watched(found: Passport, sheet: ReelSheet | None, system: str) -> list[Watch]:
    """Each thing once, what the customer was told first."""
    every = [*left_undone(found), *not_shown(found), *outside_limits(found, sheet, system)]
    return list({watch.words: watch for watch in every}.values())


def left_undone(found: Passport) -> Iterator[Watch]:
    """What the option that was last agreed leaves as it is, and what it warns of."""
    answers = [(tag, block.part) for tag, block in standing(found, "answer") if block.part.is_yes]
    if answers:
        tag, answer = answers[-1]
        for words in [*answer.option.left_undone, *answer.option.warnings]:
            yield Watch(str(words), f"told with the quote of number {tag}")


def not_shown(found: Passport) -> Iterator[Watch]:
    proofs = list(standing(found, "proof"))
    if proofs:
        tag, block = proofs[-1]
        for row in block.part.rows.all():
            if row.decision != "shown":
                yield Watch(f"{promised.title(row.promise)}: {row.words}", f"proof of number {tag}")


def outside_limits(found: Passport, sheet: ReelSheet | None, system: str) -> Iterator[Watch]:
    tags = findings.tags(sheet) if sheet else ()
    for reading in latest(found.readings):
        kind = reading_kinds.kind(reading.kind)
        verdict = VERDICTS.get(kind.band(reading.value.value_si, *tags))
        limits = kind.limits_for(*tags)
        if verdict and limits:
            value, _ = in_two(reading, system)
            told = f"number {reading.tag}, {when.dated(reading.written_at)} ({limits.mark})"
            yield Watch(f"{kind.title} {value} {verdict}", told)


def latest(readings: Iterable[ReadingInPassport]) -> list[ReadingInPassport]:
    return list({reading.kind: reading for reading in readings}.values())


def standing(found: Passport, kind: str) -> Iterator[tuple[int, Block]]:
    """The entries of this kind that are not struck, oldest first, each with the number of its visit."""
    for stay in found.visits:
        for block in stay.blocks:
            if block.kind == kind and not block.is_struck:
                yield stay.visit.tag, block
