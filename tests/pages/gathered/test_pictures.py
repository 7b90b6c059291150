"""The mark of a reel, its sheet, and its section with the findings ringed."""

from __future__ import annotations

from typing import Any

from spoolwright.pages.gathered import pictures
from spoolwright.shop.questions.diary import diary
from tests.pages import pier_reel
from tests.shop import walk


def test_the_latest_pull_trace_is_the_mark(hand: Any) -> None:
    visit = walk.arrived(hand)
    assert pictures.mark_before(diary(visit.pk).blocks) is None
    pier_reel.pull(hand, visit, 2.6, 1.5)
    first = pictures.mark_before(diary(visit.pk).blocks)
    latest = pier_reel.pull(hand, visit, 2.7, 1.07)
    second = pictures.mark_before(diary(visit.pk).blocks)
    assert first is not None
    assert second is not None
    assert second.svg != first.svg
    walk.strike_entry(hand=hand, entry=latest, reason="gauge not at zero")
    assert pictures.mark_before(diary(visit.pk).blocks) == first


def test_findings_are_ringed_where_a_sheet_draws_the_reel(hand: Any) -> None:
    visit = pier_reel.on_the_mat(hand)
    walk.write_finding(hand=hand, visit=visit, part="pawl", fault="F15", evidence="worn")
    blocks = diary(visit.pk).blocks
    sheet = pictures.sheet_of(visit)
    assert [ring.part for ring in pictures.ringed(sheet, blocks)] == ["level-wind"]
    drawing = pictures.drawing(visit, blocks, "metric")
    assert 'class="finding"' in drawing.svg
    assert "<a " not in drawing.svg
    bare = walk.arrived(hand, name="Peder Lien", reel="Lumvik 4000")
    assert pictures.drawing(bare, diary(bare.pk).blocks, "metric") is None
