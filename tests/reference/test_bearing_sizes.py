"""Standard bearing sizes against sizes everybody recalls, the rating formulas, and plain geometry."""

from __future__ import annotations

from math import pi

import pytest

from spoolwright.mechanics import rolling
from spoolwright.sheets.bearing_sizes import StandardBearing, bearing_size, sizes
from tests.reference.published import Published, each

PRINTED = "miniature-bearing tables of a general rolling-bearing catalogue"
MM = 1e-3


def rating(bore: float, outer: float, width: float, which: str) -> StandardBearing:
    return getattr(bearing_size(bore * MM, outer * MM, width * MM), which)


CHECKS = [
    Published("623: C", lambda: rating(3, 10, 4, "dynamic_rating").high, 630, 0.5, PRINTED, "opened"),
    Published("623: C0", lambda: rating(3, 10, 4, "static_rating").high, 218, 0.5, PRINTED, "opened"),
    Published("624: C", lambda: rating(4, 13, 5, "dynamic_rating").low, 1300, 0.5, PRINTED, "opened"),
    Published("604: C", lambda: rating(4, 12, 4, "dynamic_rating").low, 960, 0.5, PRINTED, "opened"),
    Published("684: C0", lambda: rating(4, 9, 4, "static_rating").low, 225, 0.5, PRINTED, "opened"),
    Published(
        "608: C", lambda: rating(8, 22, 7, "dynamic_rating").high / 1e3, 3.3, 0.05, PRINTED, "from memory"
    ),
    Published(
        "608: C0", lambda: rating(8, 22, 7, "static_rating").high / 1e3, 1.37, 0.02, PRINTED, "from memory"
    ),
    Published(
        "623: balls of 1/16 in",
        lambda: rating(3, 10, 4, "ball_diameter") / MM,
        1.588,
        0.001,
        PRINTED,
        "opened",
    ),
    Published(
        "608: seven balls", lambda: rating(8, 22, 7, "balls"), 7, 0, "rolling-bearing lore", "from memory"
    ),
]


@each(CHECKS)
def test_value_is_the_printed_one(check: Published) -> None:
    check.agrees()


IN_REELS = [(3, 10, 4), (4, 10, 4), (5, 11, 4), (5, 10, 4), (6, 10, 3), (7, 11, 3), (8, 12, 3.5), (8, 14, 4)]


@pytest.mark.parametrize("size", [*IN_REELS, (3, 8, 4), (4, 7, 2.5), (4, 8, 3), (8, 16, 5), (10, 19, 5)])
def test_sizes_that_reels_commonly_have_are_there(size: tuple[float, float, float]) -> None:
    """Source: bore x outer x width of the ISO miniature series met in reels; from memory."""
    assert bearing_size(*(side * MM for side in size)).outer == pytest.approx(size[1] * MM)


def test_static_rating_follows_from_the_balls() -> None:
    """Source: ISO 76, C0 = f0 i Z Dw^2 with f0 from its table (12.2 to 16.5 over its range); from memory."""
    with_balls = [b for b in sizes() if b.balls and b.balls_how == "derived"]
    for bearing in with_balls:
        factor = bearing.static_rating.high / (bearing.balls * (bearing.ball_diameter / MM) ** 2)
        assert 11.0 < factor < 17.0, bearing.name
    assert len(with_balls) > 60


@pytest.mark.parametrize("bearing", [b for b in sizes() if b.balls], ids=lambda b: b.name)
def test_balls_fit_on_their_pitch_circle(bearing: StandardBearing) -> None:
    """Source: plain geometry, published for any ring of balls: Z D < pi d_m, balls between the races."""
    assert bearing.balls * bearing.ball_diameter < pi * bearing.pitch_diameter
    assert bearing.pitch_diameter - bearing.ball_diameter > 0.9 * bearing.bore
    assert bearing.pitch_diameter + bearing.ball_diameter < 1.02 * bearing.outer


def test_a_cage_turns_a_little_slower_than_half_the_shaft() -> None:
    """Source: textbook kinematics of ball bearings, cage 0.35 to 0.45 of the shaft; from memory."""
    bearing = bearing_size(3 * MM, 10 * MM, 4 * MM)
    speeds = rolling.defect_frequencies(60.0, bearing.balls, bearing.ball_diameter, bearing.pitch_diameter)
    assert 0.33 < speeds["cage"] < 0.45
