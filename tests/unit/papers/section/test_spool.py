"""The spool, its line, its shaft and its bearings."""

import pytest

from spoolwright.papers.section import spool
from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.shapes import Outline, Round, box_of
from tests.unit.papers.section import reels


def area(points: tuple[tuple[float, float], ...]) -> float:
    """Area of a polygon (the shoelace rule, from memory)."""
    around = zip(points, (*points[1:], points[0]), strict=True)
    return abs(sum(a * d - b * c for (a, b), (c, d) in around)) / 2


@pytest.mark.parametrize("slug", [*reels.MULTIPLIERS, "pellmar-30-2"])
def test_the_spool_fills_its_outline(slug: str) -> None:
    m = measure(reels.shipped(slug))
    assert box_of(spool.spool(m).shapes) == pytest.approx((-m.spool_end, -m.rim, m.spool_end, m.rim))


@pytest.mark.parametrize("slug", [*reels.MULTIPLIERS, "pellmar-30-2"])
def test_the_hollow_lies_inside_the_metal(slug: str) -> None:
    for half in spool.spool(measure(reels.shipped(slug))).shapes:
        assert isinstance(half, Outline)
        assert 0 < sum(map(area, half.holes)) < area(half.points)


def test_the_line_lies_between_the_flanges() -> None:
    m = measure(reels.shipped())
    assert box_of(spool.line_fill(m, 20.0).shapes[:2]) == (-m.half_width, -20.0, m.half_width, 20.0)


def test_a_spool_that_is_not_full_shows_where_full_would_be() -> None:
    m = measure(reels.shipped())
    marks = [it for it in spool.line_fill(m, 15.0).shapes if it.line == "phantom"]
    assert [abs(it.points[0][1]) for it in marks if isinstance(it, Outline)] == [m.full, m.full]
    assert not [it for it in spool.line_fill(m, m.full).shapes if it.line == "phantom"]


def test_a_bearing_has_its_sizes_and_a_ball_on_each_side() -> None:
    m = measure(reels.shipped("tarvak-58r"))
    (bearing, middle), _ = m.spool_bearings
    shapes = spool.bearing(bearing, middle, 0.0)
    assert box_of(shapes) == pytest.approx((middle - 2.0, -5.5, middle + 2.0, 5.5))
    assert len([it for it in shapes if isinstance(it, Round)]) == 2


def test_the_ball_touches_neither_face_of_its_bearing() -> None:
    for slug in reels.SLUGS:
        for bearing, middle in measure(reels.shipped(slug)).spool_bearings:
            ball = next(it for it in spool.bearing(bearing, middle, 0.0) if isinstance(it, Round))
            assert ball.radius < bearing.size.width * 500


def test_bearings_in_the_spool_have_pockets() -> None:
    m = measure(reels.fly())
    assert len(spool.pocketed(m)) == 2
    radii = {abs(y) for half in spool.spool(m).shapes if isinstance(half, Outline) for _, y in half.points}
    assert 6.5 in radii


def test_off_side_and_gear_side_have_keys_of_their_own() -> None:
    keys = [part.key for part in spool.spool_bearings(measure(reels.shipped()))]
    assert keys == ["bearing-off-side", "bearing-gear-side"]
