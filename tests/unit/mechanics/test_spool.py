"""Line on a spool."""

from __future__ import annotations

import pytest

from spoolwright.mechanics import spool

ARBOR, FILL, WIDTH, LINE = 0.0125, 0.0235, 0.0245, 0.40e-3
BARE = {"arbor_radius": 0.0125, "flange_radius": 0.0245, "width": 0.0245, "wall": 1.2e-3, "density": 2700.0}


def test_length_and_radius_are_each_others_inverse() -> None:
    metres = spool.line_length(ARBOR, FILL, WIDTH, LINE, 0.7)
    assert spool.fill_radius(ARBOR, metres, WIDTH, LINE, 0.7) == pytest.approx(FILL, rel=1e-12)


def test_an_empty_spool_holds_nothing_and_a_line_of_nothing_fills_nothing() -> None:
    assert spool.line_length(ARBOR, ARBOR, WIDTH, LINE) == 0.0
    assert spool.fill_radius(ARBOR, 0.0, WIDTH, LINE) == pytest.approx(ARBOR)
    assert spool.line_inertia(ARBOR, ARBOR, WIDTH, 1140.0) == 0.0


def test_half_the_diameter_is_four_times_the_length() -> None:
    assert spool.line_length(ARBOR, FILL, WIDTH, LINE / 2) == pytest.approx(
        4 * spool.line_length(ARBOR, FILL, WIDTH, LINE)
    )


def test_drag_on_the_spool_is_a_ratio_of_one() -> None:
    assert spool.line_pull(0.6, 1, 0.02) == pytest.approx(30.0)


def test_a_bore_takes_mass_and_inertia_away() -> None:
    assert spool.spool_mass(**BARE, bore_radius=0.004) < spool.spool_mass(**BARE)
    assert spool.spool_inertia(**BARE, bore_radius=0.004) < spool.spool_inertia(**BARE)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: spool.line_length(0.0, FILL, WIDTH, LINE), "arbor_radius must be above zero"),
        (
            lambda: spool.line_length(ARBOR, 0.01, WIDTH, LINE),
            "fill_radius must be arbor_radius or more; came 0.01",
        ),
        (lambda: spool.line_length(ARBOR, FILL, WIDTH, LINE, 1.2), "packing must be above 0 and at most 1"),
        (lambda: spool.fill_radius(ARBOR, -1.0, WIDTH, LINE), "line_length must be zero or more"),
        (lambda: spool.fill_radius(ARBOR, 1.0, WIDTH, LINE, 0.0), "packing must be above 0"),
        (lambda: spool.line_pull(-1.0, 5.3, 0.02), "drag_torque must be zero or more"),
        (lambda: spool.line_pull(1.0, 0.0, 0.02), "gear_ratio must be above zero"),
        (lambda: spool.line_pull(1.0, 5.3, float("nan")), "radius must be above zero"),
        (lambda: spool.spool_mass(**(BARE | {"wall": 0.02})), "wall must be less than arbor_radius"),
        (
            lambda: spool.spool_inertia(**(BARE | {"flange_radius": 0.01})),
            "arbor_radius must be less than flange",
        ),
        (
            lambda: spool.spool_inertia(**BARE, bore_radius=0.03),
            "bore_radius must be less than flange_radius",
        ),
        (lambda: spool.line_inertia(ARBOR, 0.01, WIDTH, 1140.0), "fill_radius must be arbor_radius or more"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
