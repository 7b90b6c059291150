"""Two lines on one spool."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import mixed_line, spool


def test_one_line_alone_fills_as_before() -> None:
    radius = mixed_line.mixed_fill(0.011, 0.044, [150.0], [0.4e-3], 0.7)
    assert radius[-1] == pytest.approx(spool.fill_radius(0.011, 150.0, 0.044, 0.4e-3, 0.7))  # type: ignore[index]
    assert spool.mixed_fill is mixed_line.mixed_fill


def test_backing_and_top_shot_come_to_the_level_asked() -> None:
    backing = mixed_line.backing_length(0.011, 0.0235, 0.044, 0.35e-3, 150.0, 0.4e-3, 0.7)
    radii = mixed_line.mixed_fill(0.011, 0.044, [float(backing), 150.0], [0.35e-3, 0.4e-3], 0.7)
    assert radii[-1] == pytest.approx(0.0235)  # type: ignore[index]


def test_too_long_a_top_shot_leaves_less_than_no_backing() -> None:
    assert mixed_line.backing_length(0.011, 0.0235, 0.044, 0.35e-3, 5000.0, 0.4e-3, 0.7) < 0


def test_each_line_may_have_its_own_packing() -> None:
    radii = mixed_line.mixed_fill(0.011, 0.044, [100.0, 100.0], [0.4e-3, 0.4e-3], np.array([0.6, 0.8]))
    assert radii[1] - radii[0] < radii[0] - 0.011  # type: ignore[index]


def test_ends_of_a_run() -> None:
    assert mixed_line.radius_at_line_out(0.01, 0.02, 0.0) == pytest.approx(0.02)
    assert mixed_line.radius_at_line_out(0.01, 0.02, 1.0) == pytest.approx(0.01)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: mixed_line.mixed_fill(0.0, 0.044, [1.0], [1e-3]), "arbor_radius must be above zero"),
        (lambda: mixed_line.mixed_fill(0.01, 0.044, [-1.0], [1e-3]), "lengths must be zero or more"),
        (lambda: mixed_line.mixed_fill(0.01, 0.044, [1.0], [0.0]), "line_diameters must be above zero"),
        (lambda: mixed_line.mixed_fill(0.01, 0.044, [1.0], [1e-3], 1.2), "packing must be above 0"),
        (
            lambda: mixed_line.backing_length(0.02, 0.01, 0.044, 1e-3, 1.0, 1e-3),
            "fill_radius must be arbor_radius",
        ),
        (lambda: mixed_line.radius_at_line_out(0.01, 0.02, 1.5), "share_out must be between 0 and 1"),
        (lambda: mixed_line.line_per_turn(0.0, 5.0), "radius must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
