"""Slow and fast pulls."""

import math

import pytest

from spoolwright.bench import pull_speed
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.unreadable import Unreadable

SPEEDS = (0.02, 0.05, 0.1, 0.3, 0.6)


def drawn(above: float, start: float = 1.3) -> list[OnePull]:
    return [OnePull(v, 30.0, 30.0 * start, judder=0.4 if v < above else 0.03) for v in SPEEDS]


@pytest.mark.parametrize(
    ("above", "verdict"),
    [(0.08, pull_speed.STICKS), (0.0, pull_speed.SMOOTH_ALL), (9.0, pull_speed.ROUGH_ALL)],
)
def test_the_speed_from_which_it_is_smooth(above: float, verdict: str) -> None:
    found = pull_speed.fit(drawn(above))
    assert found.verdict == verdict
    if verdict == pull_speed.STICKS:
        assert (found.rough_up_to, found.smooth_from) == (0.05, 0.1)


def test_a_drag_that_judders_only_when_fast_does_not_stick_and_slip() -> None:
    taken = [OnePull(v, 30.0, judder=0.3 if v > 0.2 else 0.02) for v in SPEEDS]
    assert pull_speed.fit(taken).verdict != pull_speed.STICKS


def test_a_pull_that_falls_with_speed_is_found() -> None:
    taken = [OnePull(v, 30.0 * (1 - 0.1 * math.log10(v / 0.1))) for v in SPEEDS]
    found = pull_speed.fit(taken)
    assert found.per_tenfold.value == pytest.approx(-0.1, abs=0.01)
    assert found.verdict == pull_speed.CANNOT_TELL


@pytest.mark.parametrize("speeds", [(0.1, 0.1, 0.1), (0.0, 0.1, 0.2), (0.1, 0.11, 0.12)])
def test_speeds_that_are_too_much_alike_are_refused(speeds: tuple[float, ...]) -> None:
    with pytest.raises(Unreadable, match="speeds"):
        pull_speed.fit([OnePull(v, 30.0) for v in speeds])
