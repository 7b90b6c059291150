"""The quote as the customer sees it, as data."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.pages.quote.as_shown import as_shown
from spoolwright.shop.questions.shop_settings import shop_settings
from tests.pages import pier_reel
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_options_whose_pull_is_their_own_have_a_chart_each(desk_client: Client, visit: Any) -> None:
    quote = pier_reel.quoted(desk_client, visit)
    shown = as_shown(quote.entry, shop_settings(), "metric")
    assert [it.chart is not None for it in shown.offers] == [True, True, False], (
        "the most pulls as improve does"
    )
    assert shown.emptying is not None
    assert "grows by" in shown.emptying.says
    assert shown.wide
    assert shown.narrow
    assert shown.other_units == "imperial"
    assert all("the weakest part behind it" in it.offer.carried for it in shown.offers)
    assert shown.ladder == f"/diary/{visit.tag}/carries/"
    assert [it.state for it in shown.offers] == ["option-0", "option-1", "option-2"]


def test_without_a_sheet_there_is_neither_drawing_nor_chart(hand: Any, desk_client: Client) -> None:
    visit = walk.arrived(hand)
    quote = walk.quoted(hand, visit)
    shown = as_shown(quote.entry, shop_settings(), "metric")
    assert not shown.wide
    assert shown.emptying is None
    assert [it.chart for it in shown.offers] == [None]
    assert [it.offer.carried for it in shown.offers] == [""]
    assert shown.ladder == ""


def test_words_that_somebody_typed_into_a_finding_cannot_become_markup(hand: Any, visit: Any) -> None:
    evidence = "<script>alert(1)</script> & worn"
    walk.write_finding(hand=hand, visit=visit, part="spool", fault="", evidence=evidence)
    quote = walk.quoted(hand, visit)
    shown = as_shown(quote.entry, shop_settings(), "metric")
    assert "<script>" not in shown.wide
    assert "&lt;script&gt;" in shown.wide


@pytest.mark.parametrize(("cap", "only_told"), [(1200_00, True), (1150_00, False), (None, False)])
def test_an_extra_within_the_cap_is_only_told(hand: Any, cap: int | None, only_told: bool) -> None:
    # Handbook, chapter 9, scenario 1: 1,104 and 65 for a cog are 1,169, inside a cap of 1,200.
    visit = walk.arrived(hand)
    walk.answered(hand, walk.quoted(hand, visit), cap=cap)
    extra = walk.quoted(hand, visit, walk.option(walk.COG, key="idler cog"))
    shown = as_shown(extra.entry, shop_settings(), "metric")
    assert (shown.is_extra, shown.is_only_told) == (True, only_told)
