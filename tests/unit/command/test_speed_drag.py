"""Judder and heat beside SciPy."""

from __future__ import annotations

import pytest

from spoolwright.command import speed_drag


def test_slips_by_scipy_reach_the_pull_of_the_closed_form(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(speed_drag, "EVENTS", 2)
    monkeypatch.setattr(speed_drag, "MANY", 10)
    pair = speed_drag.slips()
    assert pair.our_error < 1e-12
    assert pair.their_error < 1e-4
    assert pair.ours > 0
    assert pair.theirs > 0


def test_both_stacks_reach_nearly_the_same_temperature() -> None:
    pair = speed_drag.stacks()
    assert pair.our_error < 5e-3
    assert pair.their_error < 5e-3
