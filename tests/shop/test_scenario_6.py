"""Acceptance: it comes back slipping in the cold. Linked to its parent, and not invoiced.

Source of every number: the trade handbook, chapter 9, scenario 6 (invented there).
"""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.judgement.price import Charge
from spoolwright.shop.acts.issue_invoice import BillWasAboveTheCap
from spoolwright.shop.acts.receive_parcel import (
    ArrivingReel,
    ReturnWasOfAnotherReel,
    Told,
    receive_parcel,
)
from spoolwright.shop.acts.send_home import WayHome, send_home
from spoolwright.shop.acts.take_reading import ConditionsWereMissing, Value, take_reading
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.acts.write_work import Done, Labour, Lubricated, write_work
from spoolwright.shop.questions.diary import diary
from spoolwright.shop.questions.find import find
from spoolwright.shop.questions.passport import passport
from tests.shop import walk

pytestmark = pytest.mark.django_db
GREASED = [Lubricated("roller clutch", "Fjølvatn 2", "a film", "G2-07")]


def serviced(hand: Any, name: str) -> Any:
    """A fixed-spool reel that was here in that week, greased from that tub, and went home."""
    visit = walk.arrived(hand, name=name, reel="Lumvik 2500")
    walk.answered(hand, walk.quoted(hand, visit))
    write_work(hand=hand, visit=visit, labour=Labour([Done("service", "Service")], 60, lubricants=GREASED))
    send_home(hand=hand, visit=visit, way=WayHome("fetched"))
    visit.refresh_from_db()
    return visit


@pytest.fixture
def first(hand: Any) -> Any:
    return serviced(hand, "Mikkel Dahl")


@pytest.fixture
def back(hand: Any, first: Any) -> Any:
    arriving = ArrivingReel(first.reel, told=Told("Slips when it is cold."), return_of=first)
    return receive_parcel(hand=hand, customer=first.reel.customer, reels=[arriving]).written[0].entry.visit


def jabs(hand: Any, visit: Any, slips: int, cold: bool) -> None:
    take_reading(
        hand=hand,
        visit=visit,
        values=[Value("anti_reverse_slips", slips, "count", 0.0, f"{slips} of 20")],
        conditions={"anti_reverse_cold": cold},
    )


def nexts(visit: Any) -> str:
    read = diary(visit.pk)
    assert read is not None
    return str(read.next.act)


def test_the_return_is_linked_to_its_parent(first: Any, back: Any) -> None:
    assert back.return_of == first
    book = passport(first.reel_id)
    assert book is not None
    assert [stay.visit.pk for stay in book.visits] == [first.pk, back.pk]


def test_a_return_belongs_to_the_same_reel(hand: Any, first: Any) -> None:
    other = serviced(hand, "Somebody else")
    with pytest.raises(ReturnWasOfAnotherReel):
        receive_parcel(
            hand=hand,
            customer=first.reel.customer,
            reels=[ArrivingReel(first.reel, return_of=other)],
        )


def test_warm_or_cold_has_to_be_said(hand: Any, back: Any) -> None:
    with pytest.raises(ConditionsWereMissing, match="cold or warm"):
        take_reading(
            hand=hand, visit=back, values=[Value("anti_reverse_slips", 7, "count", 0.0)], conditions={}
        )


def test_our_own_fault_is_mended_read_again_and_not_invoiced(hand: Any, back: Any) -> None:
    jabs(hand, back, 0, cold=False)
    jabs(hand, back, 7, cold=True)
    write_finding(hand=hand, visit=back, part="roller clutch", fault="F12", evidence="grease in it, by us")
    assert nexts(back) == "work"
    done = [Done("clean-roller-clutch", "Clean the roller anti-reverse")]
    oil = [Lubricated("roller clutch", "Tysna clutch", "1 drop", "OC-02")]
    write_work(hand=hand, visit=back, labour=Labour(done, 35, lubricants=oil))
    assert nexts(back) == "reading"
    jabs(hand, back, 0, cold=True)
    assert nexts(back) == "dispatch"
    with pytest.raises(BillWasAboveTheCap, match="no quote was answered"):
        walk.billed(hand, back, Charge("labour", "Clean the clutch", 350_00))
    send_home(hand=hand, visit=back, way=WayHome("fetched"))
    assert nexts(back) == "nothing"


def test_the_siblings_of_the_same_tub_are_found(hand: Any, first: Any) -> None:
    others = [serviced(hand, f"Sibling {n}") for n in range(5)]
    found = {hit.visit_id for hit in find("G2-07") if hit.kind == "entry"}
    assert found == {first.pk, *(visit.pk for visit in others)}
