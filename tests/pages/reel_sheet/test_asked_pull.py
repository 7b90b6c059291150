"""How much of this line goes on, and what would reach this pull: answered in words or refused in words."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

pytestmark = pytest.mark.django_db


def answered(desk: Client, **asked: str) -> str:
    return desk.get("/sheets/tarvak-54c/", asked).content.decode()


def test_a_typed_line_fills_the_spool(desk: Client, shelf: Any) -> None:
    """By hand: pi (23^2 - 11^2) 32 mm^3, 71 % filled, over pi 0.1^2 mm^2: 927 m."""
    page = answered(desk, line="dacron", thick="0.20 mm")
    assert "line of 0.2\u00a0mm" in page
    assert "930\u00a0m" in page
    assert "Backing and trolling line" in page


@pytest.mark.parametrize("thick", ["0.35", "thin", "0 mm", "-0.3 mm", "9 mm", "12 lb", "", "1e309 mm"])
def test_a_line_that_cannot_be_is_refused_beside_its_field_and_kept(
    desk: Client, shelf: Any, thick: str
) -> None:
    page = answered(desk, line="nylon", thick=thick, thick_unit="")
    assert 'id="id_thick_error"' in page
    if thick:
        assert f'value="{thick}"' in page or f'value="{thick.removesuffix(" mm")}"' in page
    assert "Line on a full spool" not in page


def test_a_line_that_nobody_knows_is_answered_with_those_we_know(desk: Client, shelf: Any) -> None:
    page = answered(desk, line="catgut", thick="0.3 mm")
    assert "This is no line we know." in page
    assert "braided polyethylene" in page


def test_a_pull_within_reach_is_a_turn_of_the_star(desk: Client, shelf: Any) -> None:
    page = answered(desk, target="18 lb")
    assert "star about" in page
    assert "Line under load whips back" in page


def test_a_pull_out_of_reach_is_what_would_have_to_change(desk: Client, shelf: Any) -> None:
    page = desk.get("/sheets/tarvak-52/", {"target": "12 lb"}).content.decode()
    assert "No turn of the star gives" in page
    assert "What would have to change:" in page


def test_a_pull_that_no_work_reaches_is_said_to_be_beyond_this_reel(desk: Client, shelf: Any) -> None:
    assert "this is not the reel for it" in answered(desk, target="200 kg")


@pytest.mark.parametrize("target", ["18", "soft", "0 kg", "-4 lb", "18 mm", "", "1e9 kg"])
def test_a_pull_that_cannot_be_read_is_refused_beside_its_field(
    desk: Client, shelf: Any, target: str
) -> None:
    page = answered(desk, target=target, target_unit="")
    assert 'id="id_target_error"' in page
    assert "Accepted" in page


def test_a_reel_without_a_drag_is_not_asked_for_a_pull(desk: Client, hand: Any) -> None:
    from spoolwright.shop.acts.add_sheet_version import add_sheet_version
    from tests.unit.papers.section import reels

    add_sheet_version(hand=hand, toml=reels.FLY)
    page = desk.get("/sheets/brekkas-89/", {"target": "2 kg"}).content.decode()
    assert 'id="id_target"' not in page
    assert "no drag of slipping discs" in page
