"""A worm and its pawl."""

from __future__ import annotations

import pytest

from spoolwright.mechanics import level_wind, worm_drive

SIZE = (7e-3, 5e-3)


def test_the_level_wind_chapter_carries_these_names() -> None:
    assert level_wind.worm_torque is worm_drive.worm_torque


def test_without_friction_nothing_is_lost() -> None:
    assert worm_drive.worm_efficiency(*SIZE, 0.0) == pytest.approx(1.0)


def test_friction_presses_harder_and_costs_torque() -> None:
    for found in (worm_drive.pawl_force, worm_drive.worm_torque):
        assert found(1.0, *SIZE, 0.2) > found(1.0, *SIZE, 0.1)
    assert worm_drive.worm_efficiency(*SIZE, 0.2) < worm_drive.worm_efficiency(*SIZE, 0.1)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: worm_drive.pawl_force(-1.0, *SIZE, 0.1), "side_force must be zero or more"),
        (lambda: worm_drive.worm_torque(1.0, 0.0, 5e-3, 0.1), "worm_lead must be above zero"),
        (lambda: worm_drive.worm_efficiency(*SIZE, 0.1, 1.6), "flank_angle must be 0 or more"),
        (lambda: worm_drive.pawl_force(1.0, 0.05, 5e-3, 2.0), "left of the flank force after friction"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
