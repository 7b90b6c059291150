"""A part measured by hand: guided, held against its limit, never a bare yes."""

from __future__ import annotations

import re
from typing import Any

import pytest
from django.test import Client

from spoolwright.sheets import hand_guides
from spoolwright.shop.questions.by_hand import by_hand_of
from tests.pages.diary.at_the_desk import HTMX, arrived, count, faults, form, last, send, text, way
from tests.shop import walk

pytestmark = pytest.mark.django_db
DISC = "?guide=disc-thickness"


def test_every_guide_is_offered_and_opens(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal, sheet="")
    page = text(bench.get(way(visit, "hand")))
    for guide in hand_guides.guides().values():
        assert guide.title in page
        assert guide.how in text(bench.get(f"{way(visit, 'hand')}?guide={guide.id}", headers=HTMX))
    assert bench.get(f"{way(visit, 'hand')}?guide=luck").status_code == 404


def test_the_size_when_new_and_the_limit_stand_beside_it(bench: Client, torbal: Any) -> None:
    response = bench.get(way(arrived(torbal), "hand") + DISC)
    page = text(response)
    assert "First friction disc, hard fibre; second friction disc, hard fibre" in page
    assert "0.8 mm new, by the sheet. At least 0.64 mm is asked for" in page
    assert "judgement prior" in page
    assert 'class="chosen"' in response.content.decode()


@pytest.mark.parametrize(
    ("typed", "verdict"),
    [("0.78", "Accepted"), ("0.50", "Rejected"), ("0.65", "Too close to call")],
)
def test_three_answers_each_with_how_sure_it_is(bench: Client, torbal: Any, typed: str, verdict: str) -> None:
    visit = arrived(torbal)
    sent = {"part": "first friction disc", "values": typed, "values_unit": "mm"}
    assert send(bench, way(visit, "hand") + DISC, **sent).status_code == 302
    block = last(visit)
    assert block.part.way == "by hand"
    kept = by_hand_of(block.part)
    assert kept is not None
    assert kept.call is not None
    page = text(bench.get(f"/diary/{visit.tag}/"))
    assert f"{verdict}: at least 0.64 mm is asked for" in page
    assert ("chance that this is wrong" in page) == (verdict != "Too close to call")
    assert ("chance that it is good" in page) == (verdict == "Too close to call")


@pytest.mark.parametrize(("typed", "offered"), [("0.78", False), ("0.50", True), ("0.65", False)])
def test_a_part_that_was_rejected_offers_its_finding(
    bench: Client, torbal: Any, typed: str, offered: bool
) -> None:
    visit = arrived(torbal)
    sent = {"part": "first friction disc", "values": typed, "values_unit": "mm"}
    send(bench, way(visit, "hand") + DISC, **sent)
    page = bench.get(f"/diary/{visit.tag}/").content.decode()
    ways = re.findall(r'<a href="([^"]+)#next">Write it as a finding</a>', page)
    assert bool(ways) == offered
    for one in ways:
        assert form(bench.get(one.replace("&amp;", "&")))["part"].value() == "first friction disc, hard fibre"


def test_it_can_be_looked_at_before_it_is_written(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    before = count(visit)
    sent = {"part": "first friction disc", "values": "0.65", "values_unit": "mm"}
    page = text(send(bench, way(visit, "hand") + DISC, do="look", **sent))
    assert "Too close to call" in page
    assert count(visit) == before


def test_the_instrument_makes_the_uncertainty_and_is_remembered(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    tool = walk.measured_with(torbal)
    sent = {"part": "first friction disc", "instrument": "C1", "values": "0.70", "values_unit": "mm"}
    send(bench, way(visit, "hand") + DISC, **sent)
    block = last(visit)
    assert block.part.instrument == tool
    kept = by_hand_of(block.part)
    assert kept is not None
    assert any("study" in row.source for row in kept.budget)
    assert "With: The long caliper (C1)" in text(bench.get(f"/diary/{visit.tag}/"))
    assert form(bench.get(way(visit, "hand") + DISC)).initial["instrument"] == "C1"


def test_three_tries_are_kept(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    sent = {"values": "0.12", "values_2": "0.14", "values_3": "0.13", "values_unit": "mm"}
    send(bench, way(visit, "hand") + "?guide=worm-groove", **sent)
    assert last(visit).part.values.count() == 4
    assert "Too close to call: good is at most 0.1 mm" in text(bench.get(f"/diary/{visit.tag}/"))


def test_without_a_sheet_the_size_when_new_is_asked(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal, sheet="")
    assert "Its size when new" in text(bench.get(way(visit, "hand") + DISC))
    sent = {"values": "0.70", "values_unit": "mm", "new_size": "1.0", "new_size_unit": "mm"}
    send(bench, way(visit, "hand") + DISC, **sent)
    assert "Rejected: at least 0.8 mm is asked for" in text(bench.get(f"/diary/{visit.tag}/"))
    send(bench, way(visit, "hand") + DISC, values="0.70", values_unit="mm")
    assert "No limit is known for it" in text(bench.get(f"/diary/{visit.tag}/"))


def test_what_is_no_size_is_refused_and_stays(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    before = count(visit)
    response = send(bench, way(visit, "hand") + DISC, part="first friction disc", values="thin")
    assert "thin" in faults(response)
    assert count(visit) == before
    assert send(bench, way(visit, "hand") + DISC, part="nobody", values="1 mm").status_code == 422


def test_it_is_written_again_from_what_stood_there(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    sent = {"part": "second friction disc", "values": "0.70", "values_unit": "mm"}
    send(bench, way(visit, "hand") + DISC, **sent)
    old = last(visit)
    again = form(bench.get(f"{way(visit, 'hand')}?again={old.entry.pk}"))
    assert again.initial["part"] == "second friction disc"
    assert again.initial["values"] == "0.70 mm"
