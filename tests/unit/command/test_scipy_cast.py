"""The cast by SciPy, with which ours is compared."""

from __future__ import annotations

import pytest

from spoolwright.command import scipy_cast
from spoolwright.command.some_casts import one, some_casts


def test_each_solver_lands_in_nearly_the_same_place() -> None:
    given = one(some_casts(4, 1), 2)
    far = {method: scipy_cast.fly(given, method=method)["distance"] for method in ("RK45", "LSODA", "DOP853")}
    assert max(far.values()) == pytest.approx(min(far.values()), rel=1e-4)


def test_line_at_its_end_and_landing_are_told_apart() -> None:
    given = one(some_casts(4, 1), 2)
    assert scipy_cast.fly(given)["landed"] == 1.0
    short = scipy_cast.fly({**given, "line_length": 10.0})
    assert short["landed"] == 0.0
    assert short["line_out"] == pytest.approx(10.0, abs=1e-3)


def test_a_phase_is_ended_by_what_can_end_it() -> None:
    flight = scipy_cast.Flight(one(some_casts(1, 1), 0))
    assert set(flight.events()) >= {"lands", "runs out", "loosens"}
    flight.phase = "stopped"
    assert set(flight.events()) == {"lands", "runs out", "catches"}


def test_an_end_that_does_not_come_is_no_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(scipy_cast, "LONGEST", 0.01)
    with pytest.raises(ArithmeticError, match="no end of the phase"):
        scipy_cast.fly(one(some_casts(1, 1), 0))
