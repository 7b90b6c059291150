"""The stack in place and pulled apart."""

from itertools import pairwise

import pytest

from spoolwright.papers.section import stack
from spoolwright.papers.section.arrangement import reel_parts
from spoolwright.papers.section.measures import MM, measure
from spoolwright.papers.section.shapes import box_of
from tests.unit.papers.section import reels


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_pulled_apart_each_member_keeps_its_thickness_and_its_order(slug: str) -> None:
    sheet = reels.shipped(slug)
    assert sheet.drag is not None
    apart = stack.pulled_apart(measure(sheet), 0.0, 120.0)
    assert apart is not None
    members = apart.parts[:-1]
    assert [part.name for part in members] == [washer.name for washer in sheet.drag.stack]
    boxes = [box_of(part.shapes) for part in members]
    assert all(a[2] < b[0] for a, b in pairwise(boxes))
    for washer, box in zip(sheet.drag.stack, boxes, strict=True):
        if washer.name != "main gear":
            assert box[2] - box[0] == pytest.approx(washer.thickness * MM)
            assert box[3] - box[1] == pytest.approx(washer.outer_diameter * MM)


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_it_stays_within_its_length(slug: str) -> None:
    apart = stack.pulled_apart(measure(reels.shipped(slug)), 0.0, 90.0)
    assert apart is not None
    assert max(box_of(part.shapes)[2] for part in apart.parts) <= 90.0 + 1e-6


@pytest.mark.parametrize(
    ("slug", "pairs"),
    [("tarvak-52", 3), ("tarvak-58r", 5), ("tarvak-54c", 6), ("pellmar-70", 6), ("ostrell-s71", 4),
     ("pellmar-30-2", 1), ("lumvik-4000", 3), ("brekkas-9-10", 2)],
)  # fmt: skip
def test_it_marks_as_many_slips_as_the_order_gives(slug: str, pairs: int) -> None:
    """Counted by hand on the sheets: a friction disc between members that turn differently is one pair."""
    apart = stack.pulled_apart(measure(reels.shipped(slug)), 0.0, 90.0)
    assert apart is not None
    assert apart.pairs == pairs
    assert len(apart.slips) == pairs


@pytest.mark.parametrize("slug", reels.SLUGS)
def test_in_place_and_apart_are_the_same_parts(slug: str) -> None:
    m = measure(reels.shipped(slug))
    apart = stack.pulled_apart(m, 0.0, 90.0)
    assert apart is not None
    assert {part.key for part in apart.parts} <= {part.key for part in reel_parts(m, m.full)}


def test_a_member_that_is_the_spool_is_not_pulled_apart() -> None:
    m = measure(reels.fixed_spool())
    apart = stack.pulled_apart(m, 0.0, 90.0)
    assert apart is not None
    assert [part.name for part in apart.parts] == ["felt disc", "pressure plate", "cupped springs"]


def test_a_reel_without_a_drag_has_no_stack() -> None:
    assert stack.pulled_apart(measure(reels.fly()), 0.0, 90.0) is None
