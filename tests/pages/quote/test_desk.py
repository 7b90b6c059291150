"""What lies on the desk: findings, readings, what was agreed, and the kind of reel."""

from __future__ import annotations

from typing import Any

import pytest
from django.http import Http404
from django.test import Client

from spoolwright.judgement.job_price import NOTHING_BEFORE
from tests.pages import pier_reel
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_the_first_quote_answers_findings_and_readings(visit: Any, sit_down: Any) -> None:
    desk = sit_down(visit)
    about = {wrong.about for wrong in desk.wrong}
    assert {"pawl-worn", "drag-jerks", "end-float-large", "grease-dried"} <= about
    assert (desk.is_extra, desk.before, desk.kind) == (False, NOTHING_BEFORE, "round multiplier")
    assert [way.key for way in desk.ways] == ["put right", "improve", "most"]
    assert desk.latest("pull_full").number("radius") == pytest.approx(0.0235)
    assert desk.latest("mass") is None


def test_an_extra_knows_the_tier_that_is_paid_for(
    hand: Any, desk_client: Client, visit: Any, sit_down: Any
) -> None:
    pier_reel.answered(hand, pier_reel.quoted(desk_client, visit))
    walk.write_finding(hand=hand, visit=visit, part="idler cog", fault="F16", evidence="split")
    desk = sit_down(visit)
    assert desk.is_extra
    assert (desk.before.tier, desk.before.total_minor) == ("common", 1104_00)
    assert "carbon-drag-set" in desk.before.works
    assert [wrong.about for wrong in desk.wrong] == ["idler-cog-split"]
    assert [[work.id for work in way.works] for way in desk.ways] == [["new-idler-cog"]]


def test_a_no_asks_anew_and_not_for_an_extra(
    hand: Any, desk_client: Client, visit: Any, sit_down: Any
) -> None:
    quote = pier_reel.quoted(desk_client, visit)
    assert sit_down(visit).quote_waits
    said = pier_reel.Said("Ragna Solbu", "telephone", "no, too dear")
    pier_reel.record_answer(hand=hand, quote=quote, option=None, said=said)
    desk = sit_down(visit)
    assert not desk.quote_waits
    assert not desk.is_extra
    assert "pawl-worn" in {wrong.about for wrong in desk.wrong}


@pytest.mark.parametrize(("asked", "kind"), [("fly", "fly"), ("teapot", "round multiplier")])
def test_without_a_sheet_the_kind_is_as_somebody_says(
    hand: Any, sit_down: Any, asked: str, kind: str
) -> None:
    visit = pier_reel.on_the_mat(hand, sheet=False)
    assert sit_down(visit, {"kind": asked}).kind == kind


def test_over_the_counter_nothing_is_posted(hand: Any, sit_down: Any) -> None:
    from tests.pages.coming import came

    assert sit_down(came(came_by="post")).around.posted
    handed = came(name="Peder Lien", reel="Lumvik 4000", came_by="walk-in")
    assert not sit_down(handed).around.posted


def test_no_such_tag(sit_down: Any, visit: Any) -> None:
    visit.tag = 4711
    with pytest.raises(Http404):
        sit_down(visit)
