"""Write work in ink: what was done, the parts fitted, the lubricants, the minutes, what was left over."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, dataclass

from django.db import transaction

from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written, open_diary
from spoolwright.shop.acts.put import put, put_all
from spoolwright.shop.acts.refused import NothingWasAgreed, Refused
from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit
from spoolwright.shop.records.work import LubricantUsed, PartFitted, Work, WorkDone


class NothingWasDone(Refused):
    def __init__(self) -> None:
        super().__init__("Write at least one piece of work that was done, or write a plain word.", "done")


class OwnMadePartWasNotDescribed(Refused):
    def __init__(self, what: str) -> None:
        super().__init__(
            f"{what} was made here: write from what, such as the wire and its size.", "made_from"
        )


@dataclass(frozen=True)
class Done:
    """A piece of work; `key` is the work's id in the list of works, or a word of your own."""

    key: str
    title: str


@dataclass(frozen=True)
class Fitted:
    """A part that went in: `source` is new, used or own-made."""

    what: str
    count: int = 1
    source: str = "new"
    made_from: str = ""


@dataclass(frozen=True)
class Lubricated:
    """A lubricant at its point, with the amount as it was given and the lot it came from."""

    point: str
    lubricant: str
    amount: str = ""
    lot: str = ""


@dataclass(frozen=True)
class Labour:
    """What was done in so many minutes, what went in, and what lay on the mat at the end (empty: nothing)."""

    done: Sequence[Done]
    minutes: int
    parts: Sequence[Fitted] = ()
    lubricants: Sequence[Lubricated] = ()
    left_over: str = ""


@transaction.atomic
def write_work(*, hand: Person, visit: Visit, labour: Labour, beside: Beside = NOTHING_BESIDE) -> Written:
    """Refused before the customer said yes to anything; a return under our own warranty needs no yes."""
    if not labour.done:
        raise NothingWasDone
    for part in labour.parts:
        if part.source == "own-made" and not part.made_from.strip():
            raise OwnMadePartWasNotDescribed(part.what)
    diary = open_diary(hand, visit)
    if diary.visit.return_of_id is None and not agreed(visit.pk).is_anything:
        raise NothingWasAgreed("Work")
    written = diary.write("work", beside, _said(labour))
    work = put(Work(entry=written.entry, minutes=labour.minutes, left_over=labour.left_over))
    rows = ((WorkDone, labour.done), (PartFitted, labour.parts), (LubricantUsed, labour.lubricants))
    for table, lines in rows:
        put_all(table(work=work, position=i, **asdict(line)) for i, line in enumerate(lines))
    return written


def _said(labour: Labour) -> list[str]:
    return [
        *(piece.title for piece in labour.done),
        *(f"{part.what} {part.made_from}" for part in labour.parts),
        *(f"{used.lubricant} {used.lot}" for used in labour.lubricants),
        labour.left_over,
    ]
