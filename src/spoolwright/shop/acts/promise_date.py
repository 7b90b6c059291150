"""Promise a date as a spread: likely by one day, almost surely by another. It goes into the diary too."""

from __future__ import annotations

from datetime import date

from django.db import transaction

from spoolwright.shop.acts.open_diary import Beside, Written, open_diary
from spoolwright.shop.acts.refused import Refused, SomeoneElseWroteFirst
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


class DatesWereOutOfOrder(Refused):
    def __init__(self) -> None:
        super().__init__(
            "The second date (nine times in ten) may not be before the first (one time in two).", "p90"
        )


@transaction.atomic
def promise_date(
    *,
    hand: Person,
    visit: Visit,
    p50: date,
    p90: date,
    version: int,
    words: str = "",
    seen: int | None = None,
) -> Written:
    """`p50` is kept one time in two, `p90` nine times in ten."""
    if p90 < p50:
        raise DatesWereOutOfOrder
    diary = open_diary(hand, visit)
    if diary.visit.version != version:
        raise SomeoneElseWroteFirst(f"Reel {diary.visit.tag}")
    diary.visit.promised_p50, diary.visit.promised_p90 = p50, p90
    diary.visit.version += 1
    diary.visit.save(update_fields=["promised_p50", "promised_p90", "version"])
    said = f"Promised: likely by {_day(p50)}, almost surely by {_day(p90)}."
    return diary.write("word", Beside(f"{said} {words}".strip(), seen=seen))


def _day(day: date) -> str:
    return f"{day.day} {day:%B %Y}"
