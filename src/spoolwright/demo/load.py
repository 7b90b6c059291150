"""Fills an empty shop with the invented workshop: eight months of two people, up to yesterday evening."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from spoolwright.demo import newcomers, plan, timetable
from spoolwright.demo.cast import Cast
from spoolwright.demo.planned import Book, Planned
from spoolwright.demo.scenarios import (
    beach_caster,
    charter_fleet,
    club_evening,
    cold_slip,
    dunked,
    estate_reel,
    fly_reel,
    left_behind,
    pier_reel,
    while_you_wait,
)
from spoolwright.demo.shop_hours import at, open_day, working_days
from spoolwright.demo.small_jobs import NewLine, OverTheCounter
from spoolwright.demo.timetable import Story, Told
from spoolwright.demo.tune import Tune
from spoolwright.demo.usual_stay import Job, play
from spoolwright.demo.workshop import Workshop, open_workshop
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions import by_number

MONTHS = timedelta(days=243)
SEED = 1
JOBS: dict[str, type[Job]] = {"tune": Tune, "counter": OverTheCounter, "line": NewLine}


class ShopWasNotEmpty(Refused):
    """There are reels in this shop's books: an invented workshop on top of them would be past sorting out."""

    def __init__(self) -> None:
        super().__init__(
            "This shop has visits in its books already: the demonstration goes into an empty shop only. "
            "Give a folder of its own with --data."
        )


@dataclass(frozen=True)
class Loaded:
    """What came of it: how many visits, and the tags of the reels that wait for a newcomer."""

    visits: int
    waiting: tuple[int, ...]


def load(*, today: date, seed: int = SEED, told: Told | None = None) -> Loaded:
    """Same seed and same day: same records. `told` hears how far it has come."""
    if by_number.visit_tagged(1):
        raise ShopWasNotEmpty
    until = at(today - timedelta(days=1), "23:00")
    with clock.as_of(at(open_day(today - MONTHS), "08:00")):
        shop = open_workshop(seed)
    book, cast = Book(), Cast(shop.chance("cast"))
    timetable.play([*_stories(shop, cast, book, until)], until=until, told=told)
    waiting = [book.reels[newcomers.key(n)] for n in range(len(newcomers.NEWCOMERS))]
    return Loaded(_count(), tuple(visit.tag for reel in waiting for visit in reel.visits.all()))


def _count() -> int:
    tag = 0
    while by_number.visit_tagged(tag + 1):
        tag += 1
    return tag


def _stories(shop: Workshop, cast: Cast, book: Book, until: datetime) -> Iterator[Story]:
    today = until.date() + timedelta(days=1)
    club = _weekday(today - timedelta(days=74), 3)

    def back(days: int) -> date:
        return working_days(today, -days)

    yield pier_reel.story(shop, back(31))
    yield from charter_fleet.stories(shop, back(122))
    yield dunked.story(shop, _weekday(today - timedelta(days=33), 5))
    yield while_you_wait.story(shop, back(9))
    yield fly_reel.story(shop, back(4))
    yield from cold_slip.stories(shop, _weekday(back(88), 0), cast)
    yield club_evening.story(shop, club, cast, book)
    yield estate_reel.story(shop, back(6))
    yield left_behind.story(shop, open_day(today - timedelta(days=150)))
    yield beach_caster.story(shop, back(19))
    for one in [*club_evening.booked(club), *plan.planned(shop, book, cast, until)]:
        yield _usual(shop, book, one, until)
    yield newcomers.story(shop, until.date(), cast, book)


def _usual(shop: Workshop, book: Book, one: Planned, until: datetime) -> Story:
    return play(JOBS[one.job](shop, book, one), one, until)


def _weekday(day: date, weekday: int) -> date:
    """That day of the week, or the last one before it."""
    return day - timedelta(days=(day.weekday() - weekday) % 7)
