"""The numbers that an envelope's reels were given, and what is to be done with each at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.judgement.what_next import Next, what_next
from spoolwright.pages import doors
from spoolwright.shop.acts.receive_parcel import Received
from spoolwright.shop.questions.facts_for_next import facts_of


@dataclass(frozen=True)
class GivenNumber:
    """One reel with its number, and the ways from here."""

    visit: Any
    must_not_be_turned: bool
    next: Next
    diary: str
    passport: str
    tag_paper: str


def given(visits: Sequence[Any]) -> list[GivenNumber]:
    facts = facts_of(visits)
    return [
        GivenNumber(
            visit=visit,
            must_not_be_turned=facts[visit.pk].dunked,
            next=what_next(facts[visit.pk]),
            diary=doors.way_to("diary:diary", visit.tag),
            passport=doors.way_to("passport:passport", visit.reel_id),
            tag_paper=doors.way_to("paper:bag_tag", visit.tag),
        )
        for visit in visits
    ]


def said(received: Received) -> str:
    """ "Number 420 is written." or "Numbers 420, 421 and 422 are written."."""
    tags = [str(written.entry.visit.tag) for written in received.written]
    if len(tags) == 1:
        return f"Number {tags[0]} is written."
    return f"Numbers {', '.join(tags[:-1])} and {tags[-1]} are written, in envelope {received.parcel.number}."
