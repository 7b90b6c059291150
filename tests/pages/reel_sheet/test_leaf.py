"""The page of one sheet works out no more than it shows, and keeps what was asked in its address."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

import pytest
from django.test import RequestFactory

from spoolwright.pages.reel_sheet.leaf import Leaf, drawn, read
from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.describe_reel import describe_reel
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.write_finding import write_finding
from tests.shop import walk

pytestmark = pytest.mark.django_db


def leaf(version: Any, units: str = "metric", **asked: str) -> Leaf:
    request = RequestFactory().get("/", asked)
    request.user = SimpleNamespace(units=units)
    return Leaf(request, version)


def described(hand: Any, version: Any) -> Any:
    visit = walk.arrived(hand)
    describe_reel(hand=hand, reel=visit.reel, sheet_version=version, version=visit.reel.version)
    return visit


def test_a_piece_costs_a_piece(shelf: Any) -> None:
    """What was not asked for was not worked out."""
    one = leaf(shelf["tarvak-52"], part="spool")
    assert one.known is not None
    assert "prediction" not in one.__dict__
    assert "turns_chart" not in one.__dict__


def test_the_same_text_is_read_once_and_the_same_drawing_made_once(shelf: Any) -> None:
    text = reel_sheet.shipped()["tarvak-52"]
    assert read(text) is read(text)
    first = leaf(shelf["tarvak-52"]).desk
    before = drawn.cache_info().hits
    assert leaf(shelf["tarvak-52"]).desk == first
    assert drawn.cache_info().hits == before + 1


def test_the_address_keeps_the_look_and_drops_what_is_foreign(shelf: Any) -> None:
    asked = {"stack": "together", "visit": "7", "part": "spool", "target": "3 kg", "x": "y{z}"}
    assert leaf(shelf["tarvak-52"], **asked).address == "?stack=together&visit=7&"
    assert leaf(shelf["tarvak-52"]).address == "?"


def test_braces_in_an_address_do_not_reach_the_drawing(shelf: Any) -> None:
    one = leaf(shelf["tarvak-52"], visit="{0}", level="{key}")
    assert "%7Bkey%7D" in one.address
    assert "<svg" in one.narrow


def test_a_look_changes_the_drawing(shelf: Any) -> None:
    version = shelf["tarvak-54c"]
    plain, half, sizes, together = (
        leaf(version, **asked).desk
        for asked in ({}, {"fill": "50", "was": "100"}, {"words": "sizes"}, {"stack": "together"})
    )
    assert len({plain, half, sizes, together}) == 4
    assert 'class="size"' in sizes
    assert "Ø 1.97 in" in leaf(version, "imperial", words="sizes").desk


def test_findings_of_a_visit_are_ringed_and_struck_ones_are_not(hand: Any, shelf: Any) -> None:
    visit = described(hand, shelf["tarvak-58r"])
    told = {"hand": hand, "visit": visit, "part": "pawl"}
    write_finding(**told, evidence="hooked", touched="level-wind")
    wrong = write_finding(**told, evidence="misread", touched="spool")
    strike_entry(hand=hand, entry=wrong.entry, reason="looked again")
    one = leaf(shelf["tarvak-58r"], visit=str(visit.tag), part="level-wind")
    assert [ring.part for ring in one.rings] == ["level-wind"]
    assert one.desk.count('<circle class="finding"') == 1
    assert [ring.words for ring in one.found_on_part] == ["hooked"]


def test_the_readings_of_a_visit_narrow_what_is_expected(hand: Any, shelf: Any) -> None:
    visit = described(hand, shelf["tarvak-58r"])
    walk.read(hand, visit, "pull_full", 40.0, 0.4, "force", conditions={"star_turns": 5.0})
    own = leaf(shelf["tarvak-58r"], visit=str(visit.tag))
    assert own.taken
    sound = leaf(shelf["tarvak-58r"]).prediction.values["pull_full_spool"]
    assert own.prediction.values["pull_full_spool"].middle < sound.middle


@pytest.mark.parametrize("tag", ["99999", "", "x", "-1", "1" * 40, "١"])
def test_a_tag_that_is_nobodys_rings_nothing(shelf: Any, tag: str) -> None:
    one = leaf(shelf["tarvak-58r"], visit=tag)
    assert one.visit is None
    assert one.rings == ()


def test_a_visit_of_another_model_rings_nothing(hand: Any, shelf: Any) -> None:
    visit = described(hand, shelf["tarvak-58r"])
    write_finding(hand=hand, visit=visit, part="spool", evidence="dented", touched="spool")
    one = leaf(shelf["tarvak-52"], visit=str(visit.tag))
    assert not one.visit_fits
    assert one.rings == ()


def test_our_reels_of_a_model_are_listed(hand: Any, shelf: Any) -> None:
    described(hand, shelf["tarvak-58r"])
    assert [row["words"] for row in leaf(shelf["tarvak-58r"]).reels] == ["Tarvak 58R of Ragna Solbu"]


def test_every_section_of_every_shipped_sheet_can_be_told(shelf: Any) -> None:
    for slug in reel_sheet.shipped():
        one = leaf(shelf[slug])
        assert len(one.pulls) == 3
        assert one.start_up
        assert one.torque
        # A spin where the spool can be free, else the reason why there is none.
        assert bool(one.spin) != bool(one.no_spin)
        assert not one.spin or one.spin_starts.startswith("started by")
        assert bool(one.strike) == (one.control == "lever")
        assert bool(one.line_per_low_turn) == (slug == "pellmar-30-2")
        assert one.line_per_turn
        assert one.at_this_level
        assert one.turns_chart
        assert one.fill_chart
        assert one.bearings
        assert one.screws
        assert one.ends_first[0].islower()
        assert one.springs_end or one.control == "lever"
