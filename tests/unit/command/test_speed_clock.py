"""Taking times."""

from __future__ import annotations

import pytest

from spoolwright.command.speed_clock import (
    Error,
    in_turn,
    in_turn_on_the_wall,
    load,
    processor_seconds,
    unevenness,
)


def test_an_error_is_told_in_the_middle_and_at_worst() -> None:
    error = Error.of([1.0, 2.2, 3.0], [1.0, 2.0, 3.0])
    assert (error.middle, error.worst) == (0.0, pytest.approx(0.1))


def test_every_run_is_made_and_the_best_of_them_counts() -> None:
    made: list[str] = []
    assert processor_seconds(lambda: made.append("processor"), 3) >= 0
    for take in (in_turn, in_turn_on_the_wall):
        assert all(seconds >= 0 for seconds in take(lambda: made.append("a"), lambda: made.append("b"), 2))
    assert made == ["processor"] * 3 + ["a", "b"] * 4


def test_a_machine_is_never_quicker_than_at_its_best() -> None:
    assert unevenness(lambda: sum(range(20_000)), 5) >= 1


def test_the_load_of_the_machine_is_a_number_where_it_is_told() -> None:
    told = load()
    assert told is None or told >= 0
