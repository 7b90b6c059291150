"""Turns, layers and the pawl's way."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import level_wind


def test_an_idler_drops_out() -> None:
    assert level_wind.train_ratio([18, 24], [24, 34]) == pytest.approx(18 / 34)
    assert level_wind.train_ratio(np.full((4, 2), 20), np.full((4, 2), 40)).tolist() == [0.25] * 4  # type: ignore[union-attr]


def test_an_emptier_spool_crosses_wider_and_costs_the_pawl_more() -> None:
    radii = np.array([0.022, 0.016, 0.012])
    assert np.all(np.diff(level_wind.crossing_angle(3.7e-3, radii)) > 0)
    assert np.all(np.diff(level_wind.pawl_slide(0.53, 7e-3, 5e-3, radii)) > 0)


def test_the_offset_is_at_most_half_a_pitch() -> None:
    travel = np.linspace(0.02, 0.06, 200)
    offset = np.asarray(level_wind.track_offset(travel, 3.7e-3))
    assert offset.min() >= 0
    assert offset.max() <= 3.7e-3 / 2 + 1e-12


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: level_wind.train_ratio([0], [4]), "drivers must be a whole number"),
        (lambda: level_wind.train_ratio([4], [4.5]), "driven must be a whole number"),
        (lambda: level_wind.line_pitch(0.0, 1.0), "worm_lead must be above zero"),
        (lambda: level_wind.turns_per_layer(0.04, 0.0), "pitch must be above zero"),
        (lambda: level_wind.crossing_angle(-1e-3, 0.02), "pitch must be zero or more"),
        (lambda: level_wind.pawl_slide(1.0, 7e-3, 5e-3, 0.0), "radius must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
