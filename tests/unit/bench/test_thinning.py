"""Long signals made short enough to keep."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoolwright.bench.thinning import thinned


@given(st.lists(st.floats(-10, 100), min_size=1, max_size=300), st.integers(2, 60))
def test_every_peak_and_trough_of_the_whole_is_kept(values: list[float], most: int) -> None:
    points = thinned(range(len(values)), values, most)
    assert len(points) <= max(most, 2)
    assert max(value for _, value in points) == max(values)
    assert min(value for _, value in points) == min(values)
    assert [moment for moment, _ in points] == sorted(moment for moment, _ in points)


def test_a_short_signal_is_kept_whole() -> None:
    assert thinned([0.0, 0.5], [3, 4]) == [(0.0, 3.0), (0.5, 4.0)]


def test_times_and_samples_must_be_as_many() -> None:
    with pytest.raises(ValueError, match="shorter|longer"):
        thinned([0.0], [1.0, 2.0])
