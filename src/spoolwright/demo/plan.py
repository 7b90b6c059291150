"""Which reels come when, and how far each has got by today: the stays that are no story of their own."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from random import Random

from spoolwright.demo.cast import Cast
from spoolwright.demo.pace import latest_coming
from spoolwright.demo.planned import Book, Planned, ReelPlanned
from spoolwright.demo.shop_hours import open_day
from spoolwright.demo.workshop import Workshop

MONTH_INDEX = (95, 120, 150, 155, 130, 100, 80, 85, 75, 75, 70, 65)
"""How busy each month is in a northern harbour, mean 100: judgement prior."""

CUSTOMERS = 20
SLUGS = ("tarvak-58r", "tarvak-52", "tarvak-54c", "pellmar-70", "tarvak-54c", "tarvak-52", "tarvak-58r")
SECOND_SLUGS = {
    "tarvak-58r": "tarvak-54c",
    "tarvak-52": "pellmar-70",
    "tarvak-54c": "tarvak-58r",
    "pellmar-70": "tarvak-52",
}
"""Two reels of one customer are not twins here."""

TWO_REELS = 8
EARLIEST, LATEST = 238, 24
PEACE = 24
"""Days that a reel is at least at home before it comes again."""


@dataclass(frozen=True)
class Lies:
    """Where a reel lies today, the job it is here for, and what is unusual about it."""

    at: str
    job: str = "tune"
    turns: frozenset[str] = frozenset()
    back: int = 0
    posted: bool = True


OPEN: Sequence[Lies] = (
    Lies("mat"),
    Lies("mat", back=1),
    Lies("asked shelf", turns=frozenset({"silent"}), back=9),
    Lies("asked shelf"),
    Lies("asked shelf", back=2, posted=False),
    Lies("shelf"),
    Lies("shelf", back=1),
    Lies("bath"),
    Lies("bath", posted=False),
    Lies("drying rack"),
    Lies("waits for a part", turns=frozenset({"part"}), back=3),
    Lies("waits for a part", turns=frozenset({"part"}), back=6),
    Lies("jig"),
    Lies("jig", turns=frozenset({"failed"})),
    Lies("line winder", "line"),
    Lies("line winder", turns=frozenset({"respool"})),
    Lies("post table", posted=False),
    Lies("mat", turns=frozenset({"dunked"}), posted=False),
)
"""The reels in the house today, besides those of the stories."""

UNUSUAL = (
    *("", "extra", "struck", "not shown", "failed", "no", "", "part", "struck bill", "unpaid", "extra"),
    *("not shown", "respool", "", "struck", "failed", "unpaid", "no", "", "extra", "not shown"),
)
"""What goes unusually in tunes that are over, one after the other."""

LATER_JOBS = ("line", "counter", "tune", "line", "counter", "line", "tune", "counter")
"""What a reel comes back for within months."""


def planned(shop: Workshop, book: Book, cast: Cast, until: datetime) -> list[Planned]:
    """Every usual stay; the customers are put into the book."""
    reels, chance = list(_reels(book, cast)), shop.chance("days")
    counts = [3, 3] + [2] * (len(reels) - 6) + [1] * 4
    found: list[Planned] = []
    for number, (reel, count) in enumerate(zip(reels, counts, strict=True)):
        lies = OPEN[number] if number < len(OPEN) else None
        days = _days(until.date(), count - (lies is not None), lies is not None, chance)
        for turn, came in enumerate(days):
            job = LATER_JOBS[len(found) % len(LATER_JOBS)] if turn else "tune"
            tunes = sum(plan.job == "tune" and plan.at_last == "home" for plan in found)
            found.append(_over(reel, came, job, tunes if job == "tune" else len(found)))
        if lies:
            found.append(_open(shop, reel, lies, until))
    return found


def _reels(book: Book, cast: Cast) -> Iterator[ReelPlanned]:
    for number in range(CUSTOMERS):
        owner = f"usual {number}"
        book.people[owner] = cast.customer()
        slug = SLUGS[number % len(SLUGS)]
        yield _reel(owner, slug, number)
        if number < TWO_REELS:
            yield _reel(owner, SECOND_SLUGS[slug], 100 + number)


def _reel(owner: str, slug: str, number: int) -> ReelPlanned:
    hand = "left" if number % 5 == 3 else "right"
    serial = f"{slug[-3:].upper()}-{10337 + 731 * number}" if number % 3 else ""
    return ReelPlanned(f"{owner} {slug}", owner, slug, winding_hand=hand, serial=serial)


def _days(today: date, count: int, here_now: bool, chance: Random) -> list[date]:
    """Days on which a reel came, busier months first, each stay well apart from the next."""
    if not count:
        return []
    latest = 75 if here_now else LATEST
    part = (EARLIEST - latest) / count
    days = []
    for number in range(count):
        far = EARLIEST - number * part
        near = far - part + (PEACE if number < count - 1 else 0)
        options = [open_day(today - timedelta(days=back)) for back in range(int(near), int(far))]
        weights = [MONTH_INDEX[day.month - 1] for day in options]
        days.append(chance.choices(options, weights)[0])
    return days


def _over(reel: ReelPlanned, came: date, job: str, number: int) -> Planned:
    unusual = {UNUSUAL[number % len(UNUSUAL)]} - {""}
    turns = unusual if job == "tune" else unusual & {"unpaid"}
    return Planned(reel, came, job, turns=frozenset(turns), posted=job != "counter" and number % 3 != 1)


def _open(shop: Workshop, reel: ReelPlanned, lies: Lies, until: datetime) -> Planned:
    plan = Planned(reel, until.date(), lies.job, lies.at, lies.turns, lies.posted)
    if "dunked" in lies.turns:
        return plan
    by = until - timedelta(days=lies.back)
    came = latest_coming(plan.steps, plan.last_step, by, lambda: shop.chance(plan.name))
    return replace(plan, came=came)
