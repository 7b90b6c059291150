"""What is known of visits, as plain facts from which judgement says what comes next."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import datetime

from django.utils import timezone

from spoolwright.judgement.what_next import EntryFact, Facts
from spoolwright.shop.questions.agreed import Agreed, weigh
from spoolwright.shop.records.answer import Answer
from spoolwright.shop.records.arrival import Arrival
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.proof import ProofRow
from spoolwright.shop.records.quote import QuoteOption
from spoolwright.shop.records.shop_settings import standing
from spoolwright.shop.records.visit import Visit
from spoolwright.shop.records.work import WorkDone


def facts_of(visits: Sequence[Visit], now: datetime | None = None) -> dict[int, Facts]:
    """The facts of each visit; give visits with their parcel already read."""
    ids = [visit.pk for visit in visits]
    entries: dict[int, list[EntryFact]] = defaultdict(list)
    quoted, proved = _quoted(ids), _proved(ids)
    rows = Entry.objects.filter(visit__in=ids).select_related("strike", "answer").order_by("visit_id", "seq")
    for entry in rows:
        entries[entry.visit_id].append(_fact(entry, quoted, proved))
    held, done, arrivals, this = _held(ids), _done(ids), _arrivals(ids), now or timezone.now()
    found = {visit.pk: _facts(visit, entries[visit.pk], held[visit.pk], done[visit.pk]) for visit in visits}
    found = {visit: _with_arrival(facts, arrivals.get(visit), this) for visit, facts in found.items()}
    silence = tuple(standing().reminder_days)
    return {visit: replace(facts, now=this, silence_days=silence) for visit, facts in found.items()}


def facts_for_next(visit: Visit, now: datetime | None = None) -> Facts:
    return facts_of([visit], now)[visit.pk]


def _facts(visit: Visit, entries: list[EntryFact], held: Agreed, done: set[str]) -> Facts:
    left = [work for work in held.works if work not in done]
    return Facts(
        entries=tuple(entries),
        place=visit.place,
        works_left=len(left) if held.works else None,
        work_minutes=held.minutes or None,
        quick=visit.while_you_wait,
        free=visit.return_of_id is not None and not held.answers,
        posted=visit.parcel is not None and visit.parcel.came_by == "post",
    )


def _with_arrival(facts: Facts, arrival: Arrival | None, now: datetime) -> Facts:
    """What was said at the counter, and whether the reel is still too wet to be turned."""
    if arrival is None:
        return facts
    begun = any(entry.kind == "work" and not entry.struck for entry in facts.entries)
    dunked = arrival.must_not_be_turned(now) and not begun
    return replace(facts, dunked=dunked, beforehand=arrival.up_to_minor is not None)


def _fact(entry: Entry, quoted: dict[int, int], proved: dict[int, str]) -> EntryFact:
    says, amount = proved.get(entry.pk, ""), quoted.get(entry.pk)
    if entry.kind == "answer":
        says, amount = ("yes" if entry.answer.is_yes else "no"), entry.answer.cap_minor
    if entry.kind == "word" and entry.words.strip():
        says = "said"
    return EntryFact(entry.kind, hasattr(entry, "strike"), says, amount, entry.written_at)


def _quoted(ids: Iterable[int]) -> dict[int, int]:
    dearest: dict[int, int] = {}
    rows = QuoteOption.objects.filter(quote__entry__visit__in=ids)
    for quote, whole in rows.values_list("quote_id", "whole_minor"):
        dearest[quote] = max(whole, dearest.get(quote, 0))
    return dearest


def _proved(ids: Iterable[int]) -> dict[int, str]:
    """The worst decision of each proof: one failed row makes it a failed proof."""
    order = ("shown", "not shown", "failed")
    worst: dict[int, str] = {}
    rows = ProofRow.objects.filter(proof__entry__visit__in=ids)
    for proof, decision in rows.values_list("proof_id", "decision"):
        worst[proof] = max(decision, worst.get(proof, "shown"), key=order.index)
    return worst


def _held(ids: Iterable[int]) -> dict[int, Agreed]:
    by_visit: dict[int, list[Answer]] = defaultdict(list)
    answers = Answer.objects.filter(entry__visit__in=ids, entry__strike=None, quote__entry__strike=None)
    rows = answers.select_related("entry", "quote", "option").prefetch_related("option__works")
    for answer in rows.order_by("entry__visit", "entry__seq"):
        by_visit[answer.entry.visit_id].append(answer)
    return defaultdict(Agreed, {visit: weigh(found) for visit, found in by_visit.items()})


def _done(ids: Iterable[int]) -> dict[int, set[str]]:
    done: dict[int, set[str]] = defaultdict(set)
    rows = WorkDone.objects.filter(work__entry__visit__in=ids, work__entry__strike=None)
    for visit, key in rows.values_list("work__entry__visit", "key"):
        done[visit].add(key)
    return done


def _arrivals(ids: Iterable[int]) -> dict[int, Arrival]:
    """The arrival that stands in each visit."""
    rows = Arrival.objects.filter(entry__visit__in=ids, entry__strike=None).select_related("entry")
    return {arrival.entry.visit_id: arrival for arrival in rows.order_by("entry__seq")}
