"""Taking times."""

from __future__ import annotations

import pytest

from spoolwright.command.speed_clock import Error, in_turn, load, processor_seconds, wall_seconds


def test_an_error_is_told_in_the_middle_and_at_worst() -> None:
    error = Error.of([1.0, 2.2, 3.0], [1.0, 2.0, 3.0])
    assert (error.middle, error.worst) == (0.0, pytest.approx(0.1))


def test_every_run_is_made_and_the_best_of_them_counts() -> None:
    made: list[str] = []
    assert processor_seconds(lambda: made.append("processor"), 3) >= 0
    assert wall_seconds(lambda: made.append("wall"), 2) >= 0
    assert all(seconds >= 0 for seconds in in_turn(lambda: made.append("a"), lambda: made.append("b"), 2))
    assert made == ["processor"] * 3 + ["wall"] * 2 + ["a", "b"] * 2


def test_the_load_of_the_machine_is_a_number_where_it_is_told() -> None:
    told = load()
    assert told is None or told >= 0
