"""Heat into a washer."""

from __future__ import annotations

import pytest

from spoolwright.mechanics import heat

STEEL = (54.0, 7833.0, 465.0)


def test_no_time_no_rise_and_heat_drawn_out_cools() -> None:
    assert heat.semi_infinite_rise(3e5, 0.0, *STEEL) == 0.0
    assert heat.semi_infinite_rise(-3e5, 2.0, *STEEL) == -heat.semi_infinite_rise(3e5, 2.0, *STEEL)


def test_what_carries_heat_away_stays_cooler() -> None:
    steel = heat.semi_infinite_rise(3e5, 2.0, *STEEL)
    assert heat.semi_infinite_rise(3e5, 2.0, 160.0, 2800.0, 880.0) < steel
    assert heat.semi_infinite_rise(3e5, 2.0, 17.0, 7900.0, 460.0) > steel


@pytest.mark.parametrize(
    ("place", "bad", "named"),
    [
        (0, float("nan"), "heat_flux must be a finite number"),
        (1, -1.0, "time must be zero or more"),
        (2, 0.0, "conductivity must be above zero"),
        (3, -1.0, "density must be above zero"),
        (4, float("inf"), "specific_heat must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(place: int, bad: float, named: str) -> None:
    values = [3e5, 2.0, *STEEL]
    values[place] = bad
    with pytest.raises(ValueError, match=named):
        heat.semi_infinite_rise(*values)
