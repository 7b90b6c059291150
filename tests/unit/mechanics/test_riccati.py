"""The law of slowing down, where one form of it hands over to another."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics.riccati import SERIES_REACH, Slowing


def slowing(start: float, a: float, b: float, e: float) -> Slowing:
    return Slowing(*(np.asarray(value, dtype=float) for value in (start, a, b, e)))


def test_time_and_speed_are_each_others_inverse() -> None:
    rotor = slowing(200.0, 2.0, 0.03, 1e-4)
    for slow in (199.0, 120.0, 10.0, 0.5):
        assert rotor.speed(rotor.time_down_to(np.asarray(slow))) == pytest.approx(slow, rel=1e-12)


@pytest.mark.parametrize("b", [0.0, 0.02, 0.04, 0.2])
def test_the_way_gone_has_no_step_where_the_series_ends(b: float) -> None:
    """Around the end of the series' reach the angle keeps the slope that the speed says."""
    rotor = slowing(500.0, 0.4, b, 1e-3)
    edge = SERIES_REACH / (b + 2 * np.sqrt(0.4 * 1e-3))
    if edge >= float(rotor.stop_time()):
        edge = 0.9 * float(rotor.stop_time())
    t = edge + np.array([-1e-3, 0.0, 1e-3])
    way = rotor.angle(t)
    assert np.diff(way) == pytest.approx(rotor.speed(t[1]) * 1e-3, rel=1e-3)
    assert np.diff(way, 2)[0] == pytest.approx(0.0, abs=1e-5 * way[1])


@pytest.mark.parametrize(
    ("a", "b", "e", "whole"),
    [
        (2.0, 0.0, 0.0, 200.0**2 / 4),
        (0.0, 0.5, 0.0, 200.0 / 0.5),
        (0.0, 0.5, 0.01, np.log(1 + 0.01 * 200 / 0.5) / 0.01),
        (0.0, 0.0, 0.01, np.inf),
        (0.0, 0.0, 0.0, np.inf),
    ],
)
def test_the_whole_way_to_rest(a: float, b: float, e: float, whole: float) -> None:
    assert slowing(200.0, a, b, e).whole_angle() == pytest.approx(whole, rel=1e-12)


def test_nothing_that_stands_still_moves() -> None:
    for a in (0.0, 1.0):
        rotor = slowing(0.0, a, 0.1, 0.01)
        assert rotor.stop_time() == 0.0
        assert rotor.whole_angle() == 0.0
