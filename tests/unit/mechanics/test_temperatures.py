"""Questions that a bench asks of a hot drag."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics.temperatures import StackTemperatures

TIME = np.array([0.0, 10.0, 20.0, 120.0])
FACES = np.array([[300.0, 340.0, 380.0, 305.0], [300.0, 350.0, 360.0, 310.0]])
LAYERS = np.array([[300.0, 320.0, 350.0, 320.0]])


def told(faces: np.ndarray = FACES, layers: np.ndarray = LAYERS) -> StackTemperatures:
    left = np.array([1.0, 0.9, 0.8, 1.0])
    return StackTemperatures(TIME, faces, layers, layers[:0], left, 2, 1.0, 0.5, 0.5)


def test_the_hottest_face_may_change_on_the_way() -> None:
    assert told().hottest_face == pytest.approx([300.0, 350.0, 380.0, 310.0])
    assert told().hottest == pytest.approx([300.0, 350.0, 380.0, 320.0])
    assert told().after_run == told().peak == 380.0
    assert told().pull_lost == pytest.approx(0.2)


def test_the_limit_is_met_by_whichever_face_comes_first() -> None:
    assert told().time_until(360.0) == pytest.approx(15.0)
    assert told().time_until(345.0) == pytest.approx(9.0)
    assert told().time_until(np.array([370.0, 355.0])) == pytest.approx(15.0)
    assert told().time_until(400.0) == np.inf
    assert told().time_until(290.0) == 0.0


def test_the_wait_counts_from_the_end_of_the_run_and_looks_at_every_disc() -> None:
    assert told().wait_until_below(350.0) == pytest.approx(50.0)
    assert told().wait_until_below(390.0) == 0.0
    assert told().wait_until_below(315.0) == np.inf


def test_many_cases_are_asked_at_once() -> None:
    both = StackTemperatures(
        TIME, np.stack([FACES, FACES + 30.0]), np.stack([LAYERS, LAYERS]), np.zeros((2, 0, 4)),
        np.ones((2, 4)), 2, np.ones(2), np.ones(2), np.zeros(2),
    )  # fmt: skip
    assert both.time_until(400.0) == pytest.approx([np.inf, 17.5])
    assert both.after_run == pytest.approx([380.0, 410.0])
    assert np.shape(both.wait_until_below(350.0)) == (2,)
