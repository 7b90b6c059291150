"""Which reel this is: a new one, one that we know, or one that comes back on account of our own work."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from spoolwright.pages.words import places, when
from spoolwright.shop.questions import customers

NEW, KNOWN, BACK = "new", "reel", "back"


@dataclass(frozen=True)
class Choice:
    """One answer: its value in the form, what is said of it, and what it means."""

    value: str
    words: str
    says: str
    reel: Any
    return_of: Any = None


@dataclass(frozen=True)
class KnownReels:
    """What a customer has with us: the reels that can come in, and those that are here already."""

    choices: tuple[Choice, ...] = ()
    here: tuple[str, ...] = ()

    def chosen(self, value: str) -> Choice | None:
        return next((choice for choice in self.choices if choice.value == value), None)


NOTHING_KNOWN = KnownReels()


def known_reels(customer: Any) -> KnownReels:
    if customer is None:
        return NOTHING_KNOWN
    choices: list[Choice] = []
    here: list[str] = []
    for reel in customers.reels_of(customer.pk):
        visits = sorted(reel.visits.all(), key=lambda visit: visit.arrived_at)
        if visits and visits[-1].is_open:
            here.append(f"{reel.described}, number {visits[-1].tag}, {places.there(visits[-1].place)}")
        else:
            choices += choices_of(reel, visits)
    return KnownReels(tuple(choices), tuple(here))


def choices_of(reel: Any, visits: list[Any]) -> list[Choice]:
    marks = "; ".join(mark.words for mark in reel.marks.all())
    if not visits:
        return [Choice(f"{KNOWN}-{reel.pk}", reel.described, marks, reel)]
    last = visits[-1]
    went = f"went home {when.plain_day(when.local_day(last.sent_home_at))} as number {last.tag}"
    return [
        Choice(f"{KNOWN}-{reel.pk}", reel.described, f"{marks}; {went}".strip("; "), reel),
        Choice(
            f"{BACK}-{last.pk}",
            f"{reel.described}, back on account of number {last.tag}",
            "something that we did is not right: looked at free of charge",
            reel,
            last,
        ),
    ]
