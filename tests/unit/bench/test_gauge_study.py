"""Variance components of a study: what they come to, what is cut, what is said; truth in, truth out."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.bench import gauge_study
from spoolwright.bench.gauge_study import NAMES

BY_HAND = np.array([[[10.0, 12.0], [14.0, 16.0]], [[20.0, 22.0], [24.0, 26.0]]])


def study(
    rng: np.random.Generator, parts: float, persons: float, both: float, same: float, shape: tuple[int, ...]
) -> np.ndarray:
    p, o, r = shape
    return (
        rng.normal(0, parts, (p, 1, 1))
        + rng.normal(0, persons, (1, o, 1))
        + rng.normal(0, both, (p, o, 1))
        + rng.normal(0, same, (p, o, r))
    )


def test_components_by_hand() -> None:
    """Pooled mean square 1.6; hands (32 - 1.6) / 4; parts (200 - 1.6) / 4."""
    read = gauge_study.read(BY_HAND, tolerance=30.0)
    variances = {name: read.spreads[name].deviation ** 2 for name in NAMES}
    assert variances["repeatability"] == pytest.approx(1.6)
    assert variances["persons"] == variances["reproducibility"] == pytest.approx(7.6)
    assert variances["parts"] == pytest.approx(49.6)
    assert read.gauge**2 == pytest.approx(9.2)
    assert read.gauge_of_whole == pytest.approx((9.2 / 58.8) ** 0.5)
    assert read.of_tolerance == pytest.approx(6 * 9.2**0.5 / 30)
    assert read.classes == 3
    assert "taken into repeatability" in read.rule


def test_an_interaction_that_stands_out_is_kept() -> None:
    rng = np.random.default_rng(2)
    read = gauge_study.read(study(rng, 3.0, 0.5, 1.5, 0.2, (8, 3, 2)))
    assert "kept apart" in read.rule
    assert read.spreads["interaction"].deviation == pytest.approx(1.5, rel=0.4)
    assert read.between_hands >= read.spreads["interaction"].deviation


def test_below_zero_is_none_and_said() -> None:
    rng = np.random.default_rng(7)
    values = study(rng, 2.0, 0.0, 0.0, 1.0, (6, 3, 3))
    values -= values.mean(axis=(0, 2), keepdims=True)
    read = gauge_study.read(values)
    assert read.spreads["persons"].deviation == 0
    assert read.spreads["persons"].cut
    assert any("below zero" in note and "between hands" in note for note in read.notes)


def test_one_hand_alone() -> None:
    read = gauge_study.read(BY_HAND[:, :1, :])
    assert read.between_hands == 0
    assert any("one person took every try" in note for note in read.notes)


def test_a_display_coarser_than_the_hand() -> None:
    read = gauge_study.read(np.repeat(np.array([[[1.0]], [[2.0]], [[3.0]]]), 2, axis=2))
    assert read.gauge == 0
    assert read.classes is None
    assert any("coarser" in note for note in read.notes)


def test_truth_in_truth_out() -> None:
    """Of 150 studies the 95 % intervals hold the truth about as often; 150 throws of 0.95: 3 deviations."""
    rng = np.random.default_rng(11)
    truth = {"repeatability": 1.0, "persons": 0.8, "parts": 4.0, "gauge": (1 + 0.64) ** 0.5}
    held = dict.fromkeys(truth, 0)
    for _ in range(150):
        read = gauge_study.read(study(rng, 4.0, 0.8, 0.0, 1.0, (8, 3, 3)))
        for name, true in truth.items():
            held[name] += read.spreads[name].low <= true <= read.spreads[name].high
    for name, times in held.items():
        assert times / 150 == pytest.approx(0.95, abs=0.055), name
