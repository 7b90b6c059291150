"""Work is written after a yes, with the parts, where they came from, the lubricants and the minutes."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Envelope, Told, receive_parcel
from spoolwright.shop.acts.refused import FieldWasRefused, NothingWasAgreed
from spoolwright.shop.acts.write_work import (
    Done,
    Fitted,
    Labour,
    Lubricated,
    NothingWasDone,
    OwnMadePartWasNotDescribed,
    write_work,
)
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_no_yes_no_work(hand: Any) -> None:
    visit = walk.arrived(hand)
    with pytest.raises(NothingWasAgreed, match="silence is not a yes"):
        walk.worked(hand, visit)
    walk.quoted(hand, visit)
    with pytest.raises(NothingWasAgreed):
        walk.worked(hand, visit)


def test_up_to_so_much_without_asking_is_a_yes_beforehand(hand: Any) -> None:
    visit = walk.arrived(hand, up_to_minor=400_00)
    assert walk.worked(hand, visit).entry.work.minutes == 74


def test_a_return_under_warranty_needs_no_yes(hand: Any) -> None:
    first = walk.agreed(hand)
    walk.gone(hand, first)
    first.refresh_from_db()
    back = [ArrivingReel(reel=first.reel, return_of=first)]
    visit = receive_parcel(hand=hand, customer=first.reel.customer, reels=back).written[0].entry.visit
    walk.worked(hand, visit)


def test_everything_is_kept(hand: Any) -> None:
    visit = walk.agreed(hand)
    work = walk.worked(
        hand,
        visit,
        parts=[Fitted("check spring", 2, "own-made", "0.8 mm wire"), Fitted("pawl", source="used")],
        lubricants=[Lubricated("roller clutch", "OC", "trace", "G2-07")],
        left_over="one thrust washer",
    ).entry.work
    assert [(p.what, p.count, p.source, p.made_from) for p in work.parts.all()] == [
        ("check spring", 2, "own-made", "0.8 mm wire"),
        ("pawl", 1, "used", ""),
    ]
    assert [d.key for d in work.done.all()] == ["service", "fit pawl"]
    assert work.lubricants.get().lot == "G2-07"
    assert (work.minutes, work.left_over) == (74, "one thrust washer")


def test_what_does_not_add_up_is_refused(hand: Any) -> None:
    visit = walk.agreed(hand)
    done = [Done("service", "Strip, wash, regrease")]
    with pytest.raises(NothingWasDone):
        write_work(hand=hand, visit=visit, labour=Labour([], 10))
    with pytest.raises(OwnMadePartWasNotDescribed, match="check spring"):
        walk.worked(hand, visit, parts=[Fitted("check spring", source="own-made")])
    with pytest.raises(FieldWasRefused) as told:
        write_work(hand=hand, visit=visit, labour=Labour(done, -1))
    assert told.value.field == "minutes"
    with pytest.raises(FieldWasRefused):
        walk.worked(hand, visit, parts=[Fitted("pawl", source="borrowed")])
    assert visit.entries.filter(kind="work").count() == 0


def test_walk_in_reels_too(hand: Any) -> None:
    from spoolwright.shop.acts.add_customer import NewCustomer

    received = receive_parcel(
        hand=hand,
        customer=NewCustomer("Peder Lien"),
        envelope=Envelope(came_by="walk-in"),
        reels=[
            ArrivingReel(
                reel=NewReel(described="Lumvik 4000"), while_you_wait=True, told=Told(up_to_minor=300_00)
            )
        ],
    )
    walk.worked(hand, received.written[0].entry.visit)
