"""A hybrid bearing beside its all-steel twin."""

from __future__ import annotations

from math import inf

import pytest

from spoolwright.mechanics import hybrid_balls


def test_steel_balls_change_nothing() -> None:
    same = hybrid_balls.hybrid(
        7, 2e-3, hybrid_balls.STEEL_DENSITY, hybrid_balls.STEEL_MODULUS, hybrid_balls.STEEL_POISSON
    )
    ratios = {name: value for name, value in same.items() if name not in ("ball_set_mass", "fast_friction")}
    assert ratios.pop("mass_saved") == pytest.approx(0.0)
    assert all(value == pytest.approx(1.0) for value in ratios.values())


def test_what_stays_and_what_changes() -> None:
    found = hybrid_balls.hybrid(7, 2e-3)
    assert found["oil_friction"] == found["dynamic_rating"] == 1.0
    assert found["ball_mass"] < 0.42
    assert found["contact_pressure"] > 1.1
    assert found["static_rating"] < found["contact_area"] < 1.0


def test_pressure_goes_with_the_cube_root_of_the_force() -> None:
    once = hybrid_balls.ball_pressure(1.0, 2e-3)
    assert hybrid_balls.ball_pressure(8.0, 2e-3) == pytest.approx(2 * once)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: hybrid_balls.hybrid(0, 2e-3), "balls must be a whole number"),
        (lambda: hybrid_balls.hybrid(7, 2e-3, density=0.0), "density must be above zero"),
        (lambda: hybrid_balls.hybrid(7, 2e-3, poisson=0.6), "poisson must be between"),
        (lambda: hybrid_balls.ball_pressure(-1.0, 2e-3), "force must be zero or more"),
        (lambda: hybrid_balls.ball_pressure(1.0, 2e-3, inf, 0.3, inf, 0.3), "compliance of ball and ring"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
