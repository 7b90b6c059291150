"""Lives of bearings: film, dirt, surety, duties and sets."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import bearing_life, rolling


def test_the_bearing_chapter_carries_these_names() -> None:
    assert rolling.rating_life is bearing_life.rating_life
    assert rolling.life_factor_iso is bearing_life.life_factor_iso


def test_nine_of_ten_is_the_plain_life() -> None:
    plain = bearing_life.rating_life(630.0, 63.0)
    factor = bearing_life.life_factor_iso(1.0, 0.5, 10.0, 63.0)
    assert bearing_life.modified_life(630.0, 63.0, 1.0, 0.5, 10.0) == pytest.approx(plain * factor)


def test_a_steady_duty_has_its_own_load_as_mean() -> None:
    assert bearing_life.mean_load([7.0, 7.0], [10.0, 900.0], [0.2, 0.8]) == pytest.approx(7.0)


def test_a_set_dies_before_its_weakest_and_a_lone_one_by_itself() -> None:
    assert bearing_life.system_life([100.0]) == pytest.approx(100.0)
    assert bearing_life.system_life([100.0, 5000.0]) < 100.0
    assert bearing_life.system_life(np.full((3, 2), 100.0)).shape == (3,)  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: bearing_life.reliability_factor(0.5), "survival must be between"),
        (lambda: bearing_life.contamination_factor(1.0, 0.01, "filthy"), "cleanliness must be"),
        (lambda: bearing_life.contamination_factor(0.0, 0.01), "kappa must be above zero"),
        (lambda: bearing_life.contamination_factor(1.0, 0.6), "pitch_diameter must be 0 or more and below"),
        (lambda: bearing_life.mean_load([1.0], [0.0], [1.0]), "speeds must be above zero"),
        (lambda: bearing_life.mean_load([-1.0], [1.0], [1.0]), "loads must be zero or more"),
        (lambda: bearing_life.system_life([0.0, 1.0]), "lives must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
