"""Torque beside pull."""

import pytest

from spoolwright.bench.torque import pull_torque
from spoolwright.bench.uncertainty import Measured


def test_the_same_torque_at_half_the_radius_is_twice_the_pull() -> None:
    full = pull_torque(Measured(20.0, 0.1, "force"), Measured(0.02, 0.0, "length"))
    near = pull_torque(Measured(40.0, 0.2, "force"), Measured(0.01, 0.0, "length"))
    assert full.value == pytest.approx(near.value)
    assert full.uncertainty == pytest.approx(near.uncertainty)


def test_relative_parts_add_in_squares() -> None:
    torque = pull_torque(Measured(30.0, 0.9, "force"), Measured(0.02, 0.0008, "length"))
    assert torque.uncertainty / torque.value == pytest.approx(0.05)
    assert torque.dimension == "torque"


@pytest.mark.parametrize(
    ("pull", "radius"),
    [
        (Measured(2.6, 0.0, "mass"), Measured(0.02, 0.0, "length")),
        (Measured(25.0, 0.0, "force"), Measured(0.02, 0.0, "force")),
        (Measured(25.0, 0.0, "force"), Measured(0.0, 0.0, "length")),
    ],
)
def test_anything_but_a_force_at_a_radius_is_refused(pull: Measured, radius: Measured) -> None:
    with pytest.raises(ValueError, match="needed|above zero"):
        pull_torque(pull, radius)
