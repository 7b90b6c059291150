"""Guides for the hand: each whole, each leading to a reading and to instruments that can take it."""

from __future__ import annotations

import pytest

from spoolwright.sheets import hand_guides, reading_kinds, wear_rates
from spoolwright.sheets.hand_guides import HandGuide

EVERY = list(hand_guides.guides().values())


@pytest.mark.parametrize("guide", EVERY, ids=lambda g: g.id)
def test_every_guide_says_what_how_and_with_what(guide: HandGuide) -> None:
    assert guide.title.endswith("?") or guide.title.startswith("The gap")
    assert guide.how.endswith(".")
    assert guide.tools
    assert guide.kind in reading_kinds.kinds()
    assert (guide.rule == "stated") == bool(guide.stated)
    if guide.rule == "depth":
        assert wear_rates.reject_depth(guide.depth)
    for row in guide.stated:
        assert row.accept <= row.reject
        assert "judgement prior" in row.mark


def test_a_casting_reels_shaft_has_to_be_straighter() -> None:
    shaft = hand_guides.guide("shaft-run-out")
    casting, other = shaft.stated_for("round multiplier"), shaft.stated_for("fly")
    assert casting is not None
    assert other is not None
    assert casting.reject == pytest.approx(0.03e-3)
    assert other.reject == pytest.approx(0.06e-3)


def test_an_unknown_guide_lists_the_known_ones() -> None:
    with pytest.raises(KeyError, match=r"luck.*worm-groove"):
        hand_guides.guide("luck")
