"""The body of a fixed-spool reel in section: gears, bearings, oscillation, handle."""

import pytest

from spoolwright.papers.section import fixed_body
from spoolwright.papers.section.fixed_measures import FixedMeasures
from spoolwright.papers.section.shapes import Outline, Round, box_of
from tests.unit.papers.section import reels


@pytest.fixture(scope="module")
def m() -> FixedMeasures:
    return FixedMeasures(reels.shipped("lumvik-4000"))


def test_the_main_gear_is_as_wide_as_its_teeth_say(m: FixedMeasures) -> None:
    """By hand: pitch circle 0.7 mm / cos 45 x 44 = 43.56 mm, and the face of 5.5 mm over it."""
    gear = next(part for part in fixed_body.behind(m) if part and part.key == "main-gear")
    left, _, right, _ = box_of(gear.shapes)
    assert right - left == pytest.approx(43.56 + 5.5, abs=0.01)
    assert "a face gear" in gear.title


def test_a_bearing_across_the_section_keeps_its_sizes(m: FixedMeasures) -> None:
    """From its sheet: 8 x 14 x 4 mm on the far side, its axis across the reel."""
    far = next(part for part in fixed_body.bearings(m) if part.key == "bearing-far-side")
    left, top, right, bottom = box_of(far.shapes)
    assert (right - left, bottom - top) == pytest.approx((14.0, 4.0))
    assert sum(isinstance(it, Round) for it in far.shapes) == 2


def test_the_worm_has_its_lead_and_is_as_long_as_the_stroke(m: FixedMeasures) -> None:
    worm = next(part for part in fixed_body.before(m) if part and part.key == "oscillation")
    body = worm.shapes[0]
    left, _, right, _ = box_of([body])
    assert right - left >= 19.0
    slanted = [
        it
        for it in worm.shapes
        if isinstance(it, Outline) and not it.closed and it.points[0][1] != it.points[1][1]
    ]
    assert {round(it.points[1][0] - it.points[0][0], 6) for it in slanted} == {6.0}


def test_the_handle_has_its_length(m: FixedMeasures) -> None:
    """From its sheet: 56 mm from the gear's axis to the knob."""
    handle = next(part for part in fixed_body.before(m) if part and part.key == "handle")
    spindle = next(it for it in handle.shapes if it.line == "chain")
    assert m.gear_centre - spindle.points[0][0] == pytest.approx(56.0)  # type: ignore[union-attr]


@pytest.mark.parametrize("kind", ["crank", "eccentric"])
def test_another_oscillation_is_a_wheel_edge_on(m: FixedMeasures, kind: str) -> None:
    said = m.sheet.oscillation
    assert said is not None
    other = FixedMeasures(m.sheet.model_copy(update={"oscillation": said.model_copy(update={"kind": kind})}))
    keys = {part.key: part for part in fixed_body.before(other) if part}
    assert kind in keys["oscillation"].title
    assert "oscillation-cogs" not in keys
