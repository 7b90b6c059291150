"""A reel goes home weighed, with carrier and number; then its diary is shut."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

import pytest

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.attach_file import attach_file
from spoolwright.shop.acts.open_diary import Attached, Beside
from spoolwright.shop.acts.send_home import ParcelWasNotWeighed, WayHome, send_home
from spoolwright.shop.questions.by_number import visit as visit_by_id
from spoolwright.shop.questions.on_the_bench import on_the_bench
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_everything_that_is_evidence_is_kept(hand: Any) -> None:
    visit = walk.agreed(hand)
    label = attach_file(hand=hand, data=walk.PHOTO, original_name="label.jpg")
    when = datetime(2026, 6, 3, 15, 0, tzinfo=UTC)
    with clock.as_of(when):
        written = send_home(
            hand=hand,
            visit=visit,
            way=WayHome(
                carrier="Havnepost",
                carrier_number="GV 17",
                mass_kg=0.745,
                insured_minor=5000_00,
                enclosed=["old pawl in a bag", "proof sheet"],
            ),
            beside=Beside(attached=[Attached(label, "label and scale")]),
        )
    dispatch = written.entry.dispatch
    assert (dispatch.carrier_number, dispatch.mass_kg, dispatch.insured_minor) == ("GV 17", 0.745, 5000_00)
    assert dispatch.sent_to == "Ragna Solbu\nMoloveien 3, Grånesvåg"
    assert dispatch.enclosed == ["old pawl in a bag", "proof sheet"]
    assert visit_by_id(visit.pk).sent_home_at == when
    assert all(place.reels == () for place in on_the_bench())


def test_a_posted_parcel_is_weighed_and_a_fetched_reel_is_not(hand: Any) -> None:
    visit = walk.agreed(hand)
    with pytest.raises(ParcelWasNotWeighed):
        send_home(hand=hand, visit=visit, way=WayHome(carrier="Havnepost"))
    send_home(hand=hand, visit=visit, way=WayHome(went_by="fetched"))
    assert not visit_by_id(visit.pk).is_open


def test_to_another_address_where_she_said_so(hand: Any) -> None:
    visit = walk.agreed(hand)
    sent = send_home(hand=hand, visit=visit, way=WayHome(mass_kg=0.7, sent_to="Fyrveien 1"))
    assert sent.entry.dispatch.sent_to == "Fyrveien 1"
