"""Where is each reel, what does it wait for, what comes next, how long does that take, promised when?"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from django.utils import timezone

from spoolwright.judgement.waiting import waits
from spoolwright.judgement.what_next import Facts, Next, what_next
from spoolwright.shop.questions.facts_for_next import facts_of
from spoolwright.shop.records.reading import Reading
from spoolwright.shop.records.visit import PLACES, Visit


@dataclass(frozen=True)
class OnTheBench:
    """One reel in the house. `trace_entry` is the entry of its latest pull trace, for its small picture."""

    visit_id: int
    tag: int
    reel_id: int
    reel: str
    customer: str
    place: str
    place_since: datetime
    arrived_at: datetime
    waits_for: str
    waits_words: str
    since: datetime | None
    days: int
    next: Next
    needed_by: date | None
    promised_p50: date | None
    promised_p90: date | None
    must_not_be_turned: bool
    is_return: bool
    while_you_wait: bool
    trace_entry: int | None


@dataclass(frozen=True)
class AtPlace:
    """A place and the reels that lie there; empty places are shown too."""

    name: str
    reels: tuple[OnTheBench, ...]


def on_the_bench(now: datetime | None = None) -> tuple[AtPlace, ...]:
    """Every place in the order of the bench; in each, the reel promised first comes first."""
    now = now or timezone.now()
    here = list(
        Visit.objects.filter(sent_home_at=None).select_related("reel__customer", "parcel").order_by("tag")
    )
    facts, traces = facts_of(here, now), _traces(here)
    rows = [_row(v, facts[v.pk], now, traces.get(v.pk)) for v in here]
    rows.sort(key=lambda row: (not row.must_not_be_turned, row.promised_p90 or date.max, row.arrived_at))
    return tuple(AtPlace(place, tuple(r for r in rows if r.place == place)) for place in PLACES)


def _row(visit: Visit, facts: Facts, now: datetime, trace: int | None) -> OnTheBench:
    waiting = waits(facts, now)
    return OnTheBench(
        visit_id=visit.pk,
        tag=visit.tag,
        reel_id=visit.reel_id,
        reel=visit.reel.described,
        customer=visit.reel.customer.name,
        place=visit.place,
        place_since=visit.place_since,
        arrived_at=visit.arrived_at,
        waits_for=waiting.waits_for,
        waits_words=waiting.words,
        since=waiting.since,
        days=waiting.days,
        next=what_next(facts),
        needed_by=visit.needed_by,
        promised_p50=visit.promised_p50,
        promised_p90=visit.promised_p90,
        must_not_be_turned=facts.dunked,
        is_return=visit.return_of_id is not None,
        while_you_wait=visit.while_you_wait,
        trace_entry=trace,
    )


def _traces(visits: list[Visit]) -> dict[int, int]:
    rows = Reading.objects.filter(entry__visit__in=visits, entry__strike=None, way="pull trace")
    return dict(rows.order_by("entry__seq").values_list("entry__visit", "entry_id"))
