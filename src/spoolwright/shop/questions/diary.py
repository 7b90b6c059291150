"""The diary of one visit, in the order things happened; its last block is what comes next."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from django.utils import timezone

from spoolwright.judgement.waiting import Waiting, waits
from spoolwright.judgement.what_next import Next, what_next
from spoolwright.shop.questions.agreed import Agreed, agreed
from spoolwright.shop.questions.blocks import Block, blocks_of
from spoolwright.shop.questions.facts_for_next import facts_for_next
from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.reel import Reel
from spoolwright.shop.records.visit import Visit


@dataclass(frozen=True)
class Diary:
    """Everything on the page of one visit; `last_seq` is what a form sends back as `seen`."""

    visit: Visit
    reel: Reel
    customer: Customer
    blocks: tuple[Block, ...]
    next: Next
    waiting: Waiting
    agreed: Agreed
    must_not_be_turned: bool

    @property
    def last_seq(self) -> int:
        return self.visit.last_seq

    def of_kind(self, kind: str) -> tuple[Block, ...]:
        """The blocks of one kind that are not struck."""
        return tuple(b for b in self.blocks if b.kind == kind and not b.is_struck)


def diary(visit_id: int, now: datetime | None = None) -> Diary | None:
    """The diary, or None when there is no such visit."""
    now = now or timezone.now()
    read = Visit.objects.select_related("reel__customer", "reel__sheet_version__sheet", "parcel", "return_of")
    visit = read.filter(pk=visit_id).first()
    if visit is None:
        return None
    blocks = blocks_of([visit.pk])[visit.pk]
    facts = facts_for_next(visit, now)
    return Diary(
        visit=visit,
        reel=visit.reel,
        customer=visit.reel.customer,
        blocks=blocks,
        next=what_next(facts),
        waiting=waits(facts, now),
        agreed=agreed(visit.pk),
        must_not_be_turned=facts.dunked,
    )
