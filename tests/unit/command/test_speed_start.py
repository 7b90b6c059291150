"""What a start costs."""

from __future__ import annotations

import sys

import pytest

from spoolwright.command import speed_start


def test_a_start_is_measured_in_a_process_of_its_own() -> None:
    start = speed_start._once("words = 'x' * 30_000_000", {})
    assert start.wall >= 0
    assert start.processor >= 0
    if sys.platform == "linux":
        assert 30e6 < start.memory < 300e6


def test_a_start_that_fails_is_not_measured() -> None:
    with pytest.raises(speed_start.subprocess.CalledProcessError):
        speed_start._once("raise SystemExit(3)", {})


def test_what_the_starts_do_can_be_done() -> None:
    for code in (speed_start.ONE_CAST, speed_start.MANY_CASTS.format(count=2)):
        exec(code, {})  # our own text, just above
