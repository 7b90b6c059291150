"""The fit of a coast-down to tick times, against rotors whose drag is known."""

import numpy as np
import pytest

from spoolwright.bench import coast_fit
from spoolwright.mechanics import coastdown

TURN = 2 * np.pi
LAWS = [(100.0, 5.0, 0.0, 0.0), (80.0, 1.0, 0.05, 0.0), (120.0, 1.5, 0.0, 6e-4), (200.0, 4.0, 0.03, 2e-4)]


def ticks(law: tuple[float, ...], turns: int = 150) -> np.typing.NDArray[np.float64]:
    speed, *drags = law
    at = coastdown.time_at_angle(TURN * np.arange(turns), speed, 1.0, *drags)
    return np.asarray(at, dtype=np.float64)


@pytest.mark.parametrize("law", LAWS)
def test_exact_ticks_give_the_law_back(law: tuple[float, ...]) -> None:
    found = coast_fit.fit(ticks(law), np.arange(150))
    speed, *drags = found.values[1:]
    assert speed == pytest.approx(law[0], rel=1e-6)
    slow = drags[0] + drags[1] * law[0] + drags[2] * law[0] ** 2
    assert slow == pytest.approx(law[1] + law[2] * law[0] + law[3] * law[0] ** 2, rel=1e-4)
    assert np.abs(found.residual).max() < 1e-4


@pytest.mark.parametrize("law", LAWS)
def test_no_drag_is_negative_whatever_the_noise(law: tuple[float, ...]) -> None:
    clean = ticks(law)
    for seed in range(5):
        shaken = clean + np.random.default_rng(seed).normal(0, 1e-3, 150)
        assert (coast_fit.fit(shaken - shaken[0], np.arange(150)).values[2:] >= 0).all()


def test_a_drag_that_is_not_free_stays_at_zero() -> None:
    found = coast_fit.fit(ticks(LAWS[3]), np.arange(150), (True, False, True))
    assert found.values[3] == 0.0


def test_stray_ticks_are_left_out_and_the_law_stays() -> None:
    shaken = ticks(LAWS[3]) + np.random.default_rng(1).normal(0, 1e-4, 150)
    shaken[[40, 90]] += 0.01
    found = coast_fit.fit(shaken, np.arange(150))
    assert not found.used[[40, 90]].any()
    assert np.count_nonzero(~found.used) <= 4
    assert found.values[1] == pytest.approx(200.0, rel=1e-3)


def test_four_times_the_ticks_halve_the_uncertainty_or_better() -> None:
    rng = np.random.default_rng(2)
    few = ticks((100.0, 1.0, 0.0, 0.0), 400)
    shaken = few + np.abs(rng.normal(0, 1e-3, 400))
    shaken -= shaken[0]
    every = coast_fit.fit(np.maximum(shaken, 0), np.arange(400))
    fourth = coast_fit.fit(np.maximum(shaken[::4], 0), np.arange(400)[::4])
    ratio = fourth.deviations[2] / every.deviations[2]
    assert 1.4 < ratio < 3.2


def test_few_ticks_are_less_sure_than_the_normal_law_says() -> None:
    # Student's t at 95.45 % for 4, 10 and 45 degrees of freedom (JCGM 100:2008, table G.2, from memory).
    for freedom, t in ((4, 2.87), (10, 2.28), (45, 2.06)):
        assert np.sqrt(coast_fit._few(freedom)) == pytest.approx(t / 2, rel=0.02)


def test_the_neighbourhood_passes_slow_changes_and_no_lone_one() -> None:
    slow = np.linspace(0, 1, 50)
    lone = slow.copy()
    lone[25] += 5
    np.testing.assert_allclose(coast_fit.neighbourhood(lone)[10:40], slow[10:40], atol=0.05)


def test_angle_and_speed_belong_together() -> None:
    values = np.array([0.3, 100.0, 2.0, 0.02, 1e-4])
    time = np.linspace(0.0, 10.0, 2001)
    slope = np.gradient(coast_fit.angle_at(time, values), time)
    np.testing.assert_allclose(slope[2:-2], coast_fit.speed_at(time, values)[2:-2], rtol=1e-4)
