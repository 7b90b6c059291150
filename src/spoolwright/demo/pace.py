"""How fast a stay goes: when each of its steps was taken, from the day the reel came in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date, datetime, timedelta
from random import Random

from spoolwright.demo.shop_hours import at, onwards, open_day

Steps = Sequence[tuple[str, tuple[int, int]]]

LONG: Steps = (
    ("arrival", (0, 0)),
    ("read", (20, 70)),
    ("find", (8, 30)),
    ("ask", (20, 120)),
    ("answer", (0, 0)),
    ("order", (5, 20)),
    ("bath", (150, 900)),
    ("rack", (60, 160)),
    ("mat", (300, 470)),
    ("work", (60, 160)),
    ("try", (15, 40)),
    ("prove", (10, 25)),
    ("mend", (60, 400)),
    ("wind", (10, 40)),
    ("bill", (20, 200)),
    ("send", (60, 400)),
    ("pay", (1500, 5500)),
)
"""A stay with everything in it; steps that a reel does not need are left out. Minutes of open shop."""

SHORT: Steps = (
    ("arrival", (0, 0)),
    ("find", (3, 8)),
    ("ask", (1, 4)),
    ("answer", (1, 5)),
    ("work", (10, 25)),
    ("bill", (1, 4)),
    ("send", (1, 3)),
)
"""A small job over the counter, the customer waiting."""

WINDING: Steps = (
    ("arrival", (0, 0)),
    ("ask", (10, 40)),
    ("answer", (0, 0)),
    ("wind", (60, 600)),
    ("work", (18, 40)),
    ("try", (3, 8)),
    ("prove", (2, 5)),
    ("bill", (5, 60)),
    ("send", (30, 300)),
    ("pay", (1500, 5500)),
)
"""New line, and nothing else."""

REMINDER = timedelta(days=7)


def moments(steps: Steps, came: date, chance: Random) -> dict[str, datetime]:
    """When each step is taken; seven answers of ten come within a day, one in eight after three."""
    moment = at(came, f"{chance.randrange(9, 12):02d}:{chance.randrange(5, 55):02d}")
    found = {}
    for name, (least, most) in steps:
        minutes = _answer_minutes(chance) if name == "answer" and most == 0 else chance.randint(least, most)
        moment = onwards(moment, minutes) if minutes else moment
        found[name] = moment
    return found


def _answer_minutes(chance: Random) -> int:
    drawn = chance.random()
    if drawn < 0.70:
        return chance.randint(30, 450)
    return chance.randint(500, 1300) if drawn < 0.88 else chance.randint(1500, 2600)


def latest_coming(steps: Steps, last: str, by: datetime, chance: Callable[[], Random]) -> date:
    """The latest working day on which a reel can have come in whose step `last` is taken by then.

    `chance` gives the stay's own generator, from its start.
    """
    day = open_day(by.date(), back=True)
    while moments(steps, day, chance())[last] > by:
        day = open_day(day - timedelta(days=1), back=True)
    return day
