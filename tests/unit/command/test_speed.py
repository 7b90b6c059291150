"""`spoolwright speed`: one table, and what was aimed at."""

from __future__ import annotations

import argparse
import json
from typing import Any

import pytest

from spoolwright.command import speed, speed_casts, speed_drag, speed_start
from spoolwright.command.speed_casts import BesideC, Rate
from spoolwright.command.speed_clock import Error
from spoolwright.command.speed_drag import Pair
from spoolwright.command.speed_start import Start

RATES = {
    "ours": Rate(100_000.0, Error(2e-8, 8e-7), "20000 casts in one call"),
    "RK45": Rate(150.0, Error(6e-8, 1e-3), "2 casts"),
    "LSODA": Rate(120.0, Error(3e-7, 2e-6), "2 casts"),
}
GROWTH = {100: 12e-6, 1000: 6.6e-6, 10_000: 6.06e-6}


@pytest.fixture
def measured(monkeypatch: pytest.MonkeyPatch) -> None:
    """The measuring itself has tests of its own; here it gives fixed numbers."""
    start = Start(0.2, 0.1, 30_000_000)
    fixed: dict[tuple[Any, str], Any] = {
        (speed_start, "starts"): {"mechanics": start, "one cast": Start(0.8, 0.7, 0)},
        (speed_casts, "beside_scipy"): RATES,
        (speed_casts, "beside_c"): BesideC(150_000.0, 160_000.0, 1e-4, 1.7),
        (speed_casts, "in_two_threads"): (100_000.0, 150_000.0),
        (speed_casts, "growth"): GROWTH,
        (speed_casts, "how_uneven"): 1.2,
        (speed_drag, "slips"): Pair(1e6, 200.0, 0.0, 1e-6, "slips"),
        (speed_drag, "stacks"): Pair(50.0, 25.0, 6e-4, 2e-4, "discs"),
    }
    for (room, name), value in fixed.items():
        monkeypatch.setattr(room, name, lambda *_, value=value: value)


def run(*words: str) -> int:
    parser = argparse.ArgumentParser()
    speed.arguments(parser)
    return speed.run(parser.parse_args(words))


@pytest.mark.usefixtures("measured")
def test_the_table_says_error_beside_speed_and_which_aims_are_missed(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert run() == 0
    told = capsys.readouterr().out
    assert "casts, SciPy RK45" in told
    assert "667 times slower" in told
    assert "6e-08, 1e-03" in told
    assert "casts beside SciPy's RK45: 667 times, at least 500: reached" in told
    assert "two threads beside one: 1.5 times, at least 1.8: missed" in told
    assert "memory not told by this system" in told
    assert "1.50 times one; C comes to 1.70 times" in told
    assert "The same work takes 1.20 times its best time here" in told


@pytest.mark.usefixtures("measured")
def test_as_json_it_is_one_object(capsys: pytest.CaptureFixture[str]) -> None:
    assert run("--json") == 0
    told = json.loads(capsys.readouterr().out)
    assert told["casts"]["ours"]["error"]["worst"] == 8e-7
    assert [goal["reached"] for goal in told["goals"]] == [True, True, True, False, True, True]


@pytest.mark.usefixtures("measured")
def test_what_could_not_be_measured_is_said_and_is_no_goal(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(speed_casts, "beside_c", lambda: BesideC(why_not="there is no C compiler here"))
    monkeypatch.setattr(speed_casts, "in_two_threads", lambda: None)
    monkeypatch.setattr(speed, "load", lambda: 4.0)
    run()
    told = capsys.readouterr().out
    assert "there is no C compiler here" in told
    assert "this machine has one core" in told
    assert "The machine is not idle (load 4.0)" in told
    assert "beside C on one core" not in told


def test_the_line_through_the_times_finds_what_a_call_and_a_cast_cost() -> None:
    straight = speed.line_through({count: 6e-6 + 6e-4 / count for count in (100, 1000, 10_000)})
    assert straight.call == pytest.approx(6e-4)
    assert straight.each == pytest.approx(6e-6)
    assert straight.apart < 1e-9
    bent = speed.line_through({100: 6e-6, 1000: 6e-6, 10_000: 9e-6})
    assert bent.apart > 0.1
