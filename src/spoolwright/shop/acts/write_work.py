"""Write work in ink: what was done, the parts fitted, the lubricants, the minutes, what was left over."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, dataclass

from django.db import transaction

from spoolwright.shop.acts.open_diary import Attached, Written, open_diary
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


@transaction.atomic
def write_work(
    *,
    hand: Person,
    visit: Visit,
    done: Sequence[Done],
    minutes: int,
    parts: Sequence[Fitted] = (),
    lubricants: Sequence[Lubricated] = (),
    left_over: str = "",
    words: str = "",
    moved_to: str = "",
    attached: Sequence[Attached] = (),
    seen: int | None = None,
) -> Written:
    """Refused before the customer said yes to anything; a return under our own warranty needs no yes."""
    if not done:
        raise NothingWasDone
    for part in parts:
        if part.source == "own-made" and not part.made_from.strip():
            raise OwnMadePartWasNotDescribed(part.what)
    diary = open_diary(hand, visit, seen)
    if diary.visit.return_of_id is None and not agreed(visit.pk).is_anything:
        raise NothingWasAgreed("Work")
    said = [*(d.title for d in done), *(f"{p.what} {p.made_from}" for p in parts), left_over]
    written = diary.write(
        "work",
        words=words,
        moved_to=moved_to,
        attached=attached,
        said=[*said, *(f"{used.lubricant} {used.lot}" for used in lubricants)],
    )
    work = put(Work(entry=written.entry, minutes=minutes, left_over=left_over))
    for table, rows in ((WorkDone, done), (PartFitted, parts), (LubricantUsed, lubricants)):
        put_all(table(work=work, position=i, **asdict(row)) for i, row in enumerate(rows))
    return written
