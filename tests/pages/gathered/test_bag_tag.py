"""The tag on the reel's foot."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

from django.utils import timezone

from spoolwright.pages.gathered import bag_tag
from spoolwright.shop.questions.diary import diary
from tests.pages.coming import came
from tests.shop import walk


def told(visit: Any, shop: Any) -> Any:
    return bag_tag.gathered(diary(visit.pk), shop, "https://bench.example/reels/1/")


def test_number_owner_and_marks(hand: Any, shop: Any) -> None:
    visit = walk.arrived(hand)
    tag = told(visit, shop)
    assert (tag.number, tag.reel, tag.owner) == (str(visit.tag), "Tarvak 58R", "Ragna Solbu")
    assert tag.marks == ("serial 5801",)
    assert tag.belongs == f"envelope {visit.parcel.number}"
    assert tag.caution == ""


def test_one_of_several_in_an_envelope_and_what_came_with_it(hand: Any, shop: Any) -> None:
    received = walk.receive_parcel(
        hand=hand,
        customer=walk.NewCustomer(name="Aslak Rein"),
        reels=[
            walk.ArrivingReel(
                reel=walk.NewReel(described=described),
                contents=[walk.Counted("reel"), walk.Counted("spare spool", words=words)],
            )
            for described, words in (("Pellmar 30-2", ""), ("Pellmar 70", "spare spool, narrow"))
        ],
    )
    second = received.written[1].entry.visit
    assert told(second, shop).belongs == (
        f"2 of 2 in envelope {received.parcel.number}; with it: spare spool, narrow"
    )


def test_a_reel_out_of_the_water_says_so_on_its_foot(hand: Any, shop: Any) -> None:
    wet = came(under_water_at=timezone.now() - timedelta(hours=2))
    assert told(wet, shop).caution == bag_tag.TURN_NOTHING
