"""Two falling weights: friction is parted from inertia, and said."""

import pytest

from spoolwright.bench import inertia_fall
from spoolwright.bench.unreadable import Unreadable
from tests.unit.bench import spools


def test_friction_does_not_move_the_inertia() -> None:
    """Source: Newton's second law; a single weight would read the friction as inertia."""
    base = spools.truth("fall")
    for friction in (0.0, 2e-5, 8e-5):
        times = {
            f"time_{k}": spools.fall_time(m, 0.8, 0.0126, spools.INERTIA, friction)
            for k, m in ((1, 0.002), (2, 0.005))
        }
        found = inertia_fall.read(spools.inputs("fall", {**base, **times}))
        assert found.inertia.value == pytest.approx(spools.INERTIA, rel=1e-6)
        assert found.friction is not None
        assert found.friction.value == pytest.approx(friction, abs=1e-10)
        assert {row.result for row in found.budget} == {"spool_inertia", "spool_friction"}


def test_what_friction_takes_is_said() -> None:
    notes = inertia_fall.read(spools.inputs("fall", spools.truth("fall"))).notes
    assert "takes 16% of the lighter weight's pull" in notes[0]


def test_friction_that_drives_is_refused() -> None:
    true = spools.truth("fall")
    lighter = spools.fall_time(0.002, 0.8, 0.0126, spools.INERTIA, -8e-5)
    heavier = spools.fall_time(0.005, 0.8, 0.0126, spools.INERTIA, -8e-5)
    with pytest.raises(Unreadable, match="drives the spool"):
        inertia_fall.read(spools.inputs("fall", {**true, "time_1": lighter, "time_2": heavier}))


def test_weights_too_alike_are_called_loose() -> None:
    true = {**spools.truth("fall"), "mass_2": 0.0021}
    true["time_2"] = spools.fall_time(0.0021, 0.8, 0.0126, spools.INERTIA, spools.FRICTION)
    assert any("only a rough guess" in note for note in inertia_fall.read(spools.inputs("fall", true)).notes)
