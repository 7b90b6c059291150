"""What a gauge's maker says, as a standard uncertainty."""

from math import inf, nan, sqrt

import pytest

from spoolwright.bench.gauge import Gauge


def test_a_limit_of_error_is_read_as_a_rectangle() -> None:
    assert Gauge(accuracy_of_reading=0.01).gain == pytest.approx(0.01 / sqrt(3))


def test_a_share_of_the_range_is_an_offset_in_newtons() -> None:
    assert Gauge(accuracy_of_range=0.001, range=500.0).offset == pytest.approx(0.5 / sqrt(3))


def test_a_gauge_of_which_nothing_is_known_says_so() -> None:
    assert not Gauge().stated
    assert Gauge(accuracy_of_reading=0.0).stated


def test_a_share_of_the_range_needs_the_range() -> None:
    with pytest.raises(ValueError, match="needs range"):
        Gauge(accuracy_of_range=0.001)


@pytest.mark.parametrize("bad", [-0.01, inf, nan])
@pytest.mark.parametrize("name", ["accuracy_of_reading", "accuracy_of_range", "resolution", "range"])
def test_no_gauge_has_a_negative_or_endless_property(name: str, bad: float) -> None:
    with pytest.raises(ValueError, match=name):
        Gauge(**{name: bad})
