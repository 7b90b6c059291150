"""What each guide finds on a reel: parts, sizes when new, limits; and what it says where nothing is known."""

from __future__ import annotations

from math import inf, pi, radians

import pytest

from spoolwright.judgement.hand_limits import AS_CUT, FROM_THE_SHEET, parts_of
from spoolwright.sheets import hand_guides, reel_sheet
from spoolwright.sheets.hand_guides import HandGuide

PIER = reel_sheet.load("tarvak-58r")
DISC, TIP = hand_guides.guide("disc-thickness"), hand_guides.guide("tooth-tip")


def test_discs_are_held_against_their_own_thickness() -> None:
    parts = parts_of(DISC, PIER)
    assert [part.title for part in parts][0] == "first friction disc, hard fibre"
    assert all(part.new_source == FROM_THE_SHEET for part in parts)
    first = parts[0]
    assert first.new == pytest.approx(0.8e-3)
    assert first.limits is not None
    assert (first.limits.low, first.limits.high) == (pytest.approx(0.64e-3), inf)
    assert "80 % of new" in first.source


def test_a_size_that_was_typed_goes_before_the_sheets() -> None:
    first = parts_of(DISC, PIER, new=1.0e-3)[0]
    assert (first.new, first.new_source) == (1.0e-3, "new, as typed")


def test_without_a_sheet_the_size_when_new_has_to_be_typed() -> None:
    (nothing,) = parts_of(DISC, None)
    assert nothing.limits is None
    (typed,) = parts_of(DISC, None, new=1.0e-3)
    assert typed.limits is not None
    assert typed.limits.low == pytest.approx(0.8e-3)


def test_metal_discs_are_those_that_do_not_rub() -> None:
    titles = [part.title for part in parts_of(hand_guides.guide("disc-cup"), PIER)]
    assert "inner keyed disc" in titles
    assert not any("friction" in title for title in titles)


def test_teeth_as_they_are_cut() -> None:
    """A tooth is half a pitch wide at the pitch circle and narrower at its tip; a rack's is known exactly."""
    main, pinion = parts_of(TIP, PIER)
    module = PIER.gears.module
    assert main.new_source == AS_CUT
    assert main.new is not None
    assert pinion.new is not None
    assert pinion.new < main.new < pi * module / 2
    from spoolwright.judgement.hand_limits import _tip

    rack = module * (pi / 2 - 2 * 0.36397023)  # tan 20 degrees on either flank of one module
    assert _tip(100_000, module, radians(20)) == pytest.approx(rack, rel=1e-3)
    assert main.limits is not None
    assert main.limits.low == pytest.approx(0.85 * main.new)


def test_gears_that_are_cut_otherwise_ask_for_the_size() -> None:
    spinning = reel_sheet.load("lumvik-4000")
    assert [part.limits for part in parts_of(TIP, spinning)] == [None, None]


@pytest.mark.parametrize("guide", hand_guides.guides().values(), ids=lambda g: g.id)
@pytest.mark.parametrize("slug", ["tarvak-58r", "lumvik-4000", "brekkas-9-10", "ostrell-s71"])
def test_every_guide_has_something_to_say_of_every_reel(guide: HandGuide, slug: str) -> None:
    sheet = reel_sheet.load(slug)
    for part in parts_of(guide, sheet, (sheet.reel.kind, "roller clutch")):
        assert part.title
        assert part.source
        if part.limits and part.new:
            assert part.limits.low < part.new < part.limits.high


def test_limits_of_a_reading_are_those_of_its_table() -> None:
    (float_,) = parts_of(hand_guides.guide("end-float"), PIER)
    assert float_.limits is not None
    assert (float_.limits.low, float_.limits.high) == (pytest.approx(1e-5), pytest.approx(3e-4))
