"""Home again by hand: weighed, packed as the trade packs, with what belongs to it."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import form, last, send, text, way
from tests.shop import walk

pytestmark = pytest.mark.django_db
POSTED = {"went_by": "post", "mass_kg": "745", "mass_kg_unit": "g", "carrier": "Havnepost"}


def test_the_parcel_goes_with_its_mass_and_what_is_in_it(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    sent = POSTED | {
        "carrier_number": "GV 17",
        "enclosed": ["the old parts in a bag", "the care card"],
        "enclosed_more": "her letter",
        "packed": ["drag backed off", "click off"],
        "insured_minor": "1,900",
        "sent_to": "Ragna Solbu\nMoloveien 3",
    }
    assert send(bench, way(visit, "dispatch"), **sent).status_code == 302
    block = last(visit)
    assert block.part.mass_kg == pytest.approx(0.745)
    assert block.part.insured_minor == 1900_00
    assert block.part.enclosed == ["the old parts in a bag", "the care card", "her letter"]
    assert block.entry.words == "Packed: drag backed off; click off."
    visit.refresh_from_db()
    assert not visit.is_open


def test_a_reel_that_is_fetched_needs_no_mass(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    assert send(bench, way(visit, "dispatch"), went_by="fetched").status_code == 302
    assert "Fetched in the shop" in text(bench.get(f"/diary/{visit.tag}/"))


def test_it_starts_with_the_way_it_came_and_the_customers_address(bench: Client, torbal: Any) -> None:
    fresh = form(bench.get(way(walk.agreed(torbal), "dispatch")))
    assert fresh["went_by"].value() == "post"
    assert fresh["carrier"].value() == "Havnepost"
    assert fresh["sent_to"].value() == "Ragna Solbu\nMoloveien 3, Grånesvåg"


def test_the_list_of_the_post_table_is_there(bench: Client, torbal: Any) -> None:
    said = text(bench.get(way(walk.agreed(torbal), "dispatch")))
    for words in ("drag backed off", "click off", "name slip inside", "photographed on the scale"):
        assert words in said
