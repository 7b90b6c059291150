"""One stay as it is planned: whose reel, when it comes, how far it gets, and what is unusual about it."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import Any

from spoolwright.demo import pace
from spoolwright.shop.acts.add_customer import NewCustomer

LAST_STEP = {
    "mat": "find",
    "asked shelf": "ask",
    "shelf": "answer",
    "waits for a part": "order",
    "bath": "bath",
    "drying rack": "rack",
    "jig": "work",
    "line winder": "wind",
    "post table": "bill",
}
"""Which step leaves a reel at which place."""


@dataclass(frozen=True)
class ReelPlanned:
    """A reel; `slug` names its sheet, or `described` says what stands on it where there is none yet."""

    key: str
    owner: str
    slug: str = ""
    described: str = ""
    kind: str = "round multiplier"
    winding_hand: str = "right"
    serial: str = ""


@dataclass(frozen=True)
class Planned:
    """`at_last` is the place where it lies today, or "home". `turns` are the things that go unusually:
    "no", "extra", "struck", "not shown", "failed", "unpaid", "silent", "part", "dunked" and so on.
    """

    reel: ReelPlanned
    came: date
    job: str = "tune"
    at_last: str = "home"
    turns: frozenset[str] = frozenset()
    posted: bool = True

    @property
    def name(self) -> str:
        """What its chances hang on: a reel that is here now is here whatever day it came."""
        return f"{self.reel.key} {self.came if self.at_last == 'home' else self.at_last}"

    @property
    def steps(self) -> pace.Steps:
        return {"tune": pace.LONG, "counter": pace.SHORT, "line": pace.WINDING}[self.job]

    @property
    def last_step(self) -> str:
        """The step after which nothing more happens."""
        if self.at_last == "home":
            return "pay"
        if "dunked" in self.turns:
            return "arrival"
        return "prove" if "failed" in self.turns else LAST_STEP[self.at_last]


@dataclass
class Book:
    """Who and what the shop knows already: customers not yet written down, records of those that are."""

    people: dict[str, NewCustomer | Any] = field(default_factory=dict)
    reels: dict[str, Any] = field(default_factory=dict)
