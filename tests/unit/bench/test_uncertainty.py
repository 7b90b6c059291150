"""The one shape in which readings travel."""

import dataclasses

import pytest

from spoolwright.bench.uncertainty import COVERAGE_FACTOR, Measured


def test_the_expanded_uncertainty_is_k_times_the_standard_one() -> None:
    assert Measured(25.0, 0.1, "force").expanded == pytest.approx(COVERAGE_FACTOR * 0.1)


def test_a_reading_cannot_be_changed_afterwards() -> None:
    with pytest.raises(dataclasses.FrozenInstanceError):
        Measured(25.0, 0.1, "force").value = 3.0  # type: ignore[misc]
