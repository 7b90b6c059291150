"""One short line for each reel: what stands in it, where it leads, and its pull trace as a small mark."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime

from django.utils.safestring import SafeString, mark_safe

from spoolwright.pages import doors
from spoolwright.pages.words import places
from spoolwright.papers.charts import trace_mark
from spoolwright.shop.questions.on_the_bench import AtPlace, OnTheBench
from spoolwright.shop.questions.signals import KeptPull

# A deed that only somebody outside the shop can move on is never the first thing to do.
OUT_OF_OUR_HANDS = ("the customer's answer", "a part", "drying")
WAITS_AT_ITS_PLACE = ("a part", "the bath", "drying")


@dataclass(frozen=True)
class Line:
    """A reel as it stands in the list; `deed` leads straight to the form of what comes next."""

    reel: OnTheBench
    diary: str
    deed: str
    mark: SafeString | str

    @property
    def there(self) -> str:
        return places.there(self.reel.place)

    @property
    def since(self) -> datetime | None:
        """Since when it waits: what waits at a place has waited since it was put there."""
        reel = self.reel
        return reel.place_since if reel.waits_for in WAITS_AT_ITS_PLACE else reel.since

    @property
    def may_come_too_late(self) -> bool:
        """Whether the safe end of the promise lies after the day on which the customer needs it."""
        reel = self.reel
        return bool(reel.needed_by and reel.promised_p90 and reel.promised_p90 > reel.needed_by)


@dataclass(frozen=True)
class Place:
    """A place with the lines of its reels, or the words that say it is empty."""

    name: str
    lines: Sequence[Line]

    @property
    def empty(self) -> str:
        return places.empty(self.name)


def laid_out(bench: Iterable[AtPlace], marks: Mapping[int, KeptPull]) -> list[Place]:
    return [Place(place.name, [line(reel, marks) for reel in place.reels]) for place in bench]


def line(reel: OnTheBench, marks: Mapping[int, KeptPull]) -> Line:
    diary = doors.way_to("diary:diary", reel.tag)
    return Line(reel, diary, deed(reel, diary), mark(reel, marks.get(reel.trace_entry or 0)))


def deed(reel: OnTheBench, diary: str) -> str:
    """Where the next entry is written; the open end of the diary where an entry has no form of its own."""
    return doors.way_to("diary:write", reel.tag, reel.next.act) or (f"{diary}#next" if diary else "")


def mark(reel: OnTheBench, pull: KeptPull | None) -> SafeString | str:
    """The trace as one small line. The drawing escapes the words in it."""
    if pull is None or len(pull.times) < 2:
        return ""
    return mark_safe(trace_mark(pull.times, pull.forces, f"Latest pull trace of number {reel.tag}"))


def not_to_be_turned(laid: Iterable[Place]) -> list[Line]:
    return [line for place in laid for line in place.lines if line.reel.must_not_be_turned]


def first_of(laid: Iterable[Place]) -> Line | None:
    """What a free hand takes up: a dunked reel, then who waits at the counter, then the nearest promise."""
    every = [line for place in laid for line in place.lines]
    ours = [line for line in every if line.reel.waits_for not in OUT_OF_OUR_HANDS]
    return min(ours, key=lambda line: urgency(line.reel), default=None)


def urgency(reel: OnTheBench) -> tuple[bool, bool, str, str]:
    promised = reel.promised_p90.isoformat() if reel.promised_p90 else "no day"
    return not reel.must_not_be_turned, not reel.while_you_wait, promised, reel.arrived_at.isoformat()
