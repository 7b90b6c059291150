"""Acceptance: while you wait. No full check-in is forced on a job of 22 minutes.

Source of every number: the trade handbook, chapter 9, scenario 4 (invented there).
"""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.judgement.price import Charge, price
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.open_diary import Beside
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Envelope, receive_parcel
from spoolwright.shop.acts.record_answer import Said, record_answer
from spoolwright.shop.acts.send_home import WayHome, send_home
from spoolwright.shop.acts.send_quote import OfferedOption, OfferedWork, send_quote
from spoolwright.shop.acts.take_reading import Value, take_reading
from spoolwright.shop.acts.write_work import Done, Fitted, Labour, write_work
from spoolwright.shop.questions.diary import diary
from spoolwright.shop.questions.shop_settings import rates
from tests.shop import walk

pytestmark = pytest.mark.django_db
CHARGES = (Charge("tier", "Quick fix", 150_00), Charge("part", "Line roller bearing", 110_00))
WORK = OfferedWork("raise spool", "Raise the spool, new roller bearing", 22)


@pytest.fixture
def visit(hand: Any) -> Any:
    reel = ArrivingReel(NewReel("Lumvik 4000"), while_you_wait=True)
    received = receive_parcel(
        hand=hand, customer=NewCustomer("Peder Lien"), reels=[reel], envelope=Envelope("walk-in")
    )
    return received.written[0].entry.visit


def nexts(visit: Any) -> str:
    read = diary(visit.pk)
    assert read is not None
    return str(read.next.act)


def test_from_the_counter_and_back_without_a_check_in(hand: Any, visit: Any) -> None:
    assert nexts(visit) == "quote"
    option = OfferedOption("quick", "Quick", price(CHARGES, rates()).lines, [WORK], minutes=22)
    quote = send_quote(hand=hand, visit=visit, options=[option], beside=Beside(moved_to="mat")).entry.quote
    assert (quote.options.get().total_minor, quote.options.get().minutes) == (260_00, 22)
    assert nexts(visit) == "answer"
    record_answer(
        hand=hand, quote=quote, option=quote.options.get(), said=Said("Peder Lien", "in the shop", "Go on.")
    )
    assert nexts(visit) == "work"
    done = [Done(WORK.work, WORK.title)]
    write_work(hand=hand, visit=visit, labour=Labour(done, 22, [Fitted("Shim 0.3 mm")]))
    assert nexts(visit) == "invoice"
    assert walk.billed(hand, visit, *CHARGES).total_minor == 260_00
    assert nexts(visit) == "dispatch"
    send_home(hand=hand, visit=visit, way=WayHome("fetched"))
    assert nexts(visit) == "nothing"
    assert not visit.entries.filter(kind__in=("reading", "finding", "proof")).exists()


def test_before_and_after_can_be_written_all_the_same(hand: Any, visit: Any) -> None:
    for size, end in ((47.8e-3, "front"), (46.2e-3, "rear")):
        where = {"place_measured": f"line lay, {end}"}
        values = [Value("caliper", size, "length", 2e-5)]
        take_reading(hand=hand, visit=visit, values=values, conditions=where)
    assert nexts(visit) == "quote"
