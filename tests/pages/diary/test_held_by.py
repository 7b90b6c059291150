"""What holds a free spool, in plain words."""

from __future__ import annotations

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.diary.told.held_by import in_words

DRAGS = {
    "spin_constant": Measured(50e-6, 2e-6, "torque"),
    "spin_viscous": Measured(0.3e-6, 1e-8, "viscous_drag"),
    "spin_quadratic": Measured(2e-9, 1e-10, "quadratic_drag"),
}


def test_the_shares_at_the_first_speed_are_arithmetic() -> None:
    # At 100 rad/s by arithmetic: 50 + 30 + 20 = 100 µN m.
    words = in_words(DRAGS | {"spin_initial_speed": Measured(100.0, 0.1, "rotation")}, "metric")
    assert len(words) == 2
    assert "ends about 50 %, oil and magnets about 30 %, air and brake blocks about 20 %" in words[1]


def test_without_all_three_nothing_is_said() -> None:
    assert in_words({"spin_constant": DRAGS["spin_constant"]}, "metric") == ()
    assert len(in_words(DRAGS, "metric")) == 1


def test_a_spool_that_nothing_holds_has_no_shares() -> None:
    none = {kind: Measured(0.0, m.uncertainty, m.dimension) for kind, m in DRAGS.items()}
    assert len(in_words(none | {"spin_initial_speed": Measured(9.0, 0.1, "rotation")}, "metric")) == 1
