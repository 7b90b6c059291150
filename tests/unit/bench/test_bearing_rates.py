"""The rates at which a bearing's parts knock."""

import pytest

from spoolwright.bench import bearing_rates
from spoolwright.bench.bearing_rates import Bearing


def test_rates_grow_with_speed_and_add_up_to_every_ball_once_a_turn() -> None:
    one = bearing_rates.rates(Bearing(9, 7.94e-3, 39.04e-3), 1.0)
    two = bearing_rates.rates(Bearing(9, 7.94e-3, 39.04e-3), 2.0)
    assert two == pytest.approx({part: 2 * rate for part, rate in one.items()})
    assert one["outer"] + one["inner"] == pytest.approx(9.0)


def test_a_spectrum_reaches_past_every_multiple() -> None:
    rates = bearing_rates.rates(Bearing(7, 1.588e-3, 6.175e-3), 20.0)
    for part, count in bearing_rates.MULTIPLES.items():
        assert bearing_rates.highest(rates) > count * rates[part]
