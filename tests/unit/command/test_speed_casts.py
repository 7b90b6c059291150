"""Casts beside SciPy, beside C, in threads, and more and more of them."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from spoolwright.command import speed_casts


@pytest.fixture
def few(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(speed_casts, "POOL", 200)
    monkeypatch.setattr(speed_casts, "RUNS", 1)


@pytest.mark.usefixtures("few")
def test_all_fly_the_same_casts() -> None:
    rates = speed_casts.beside_scipy(2)
    assert set(rates) == {"ours", "RK45", "LSODA"}
    assert all(rate.per_second > 0 and rate.error.worst < 1e-4 for rate in rates.values())


@pytest.mark.usefixtures("few")
def test_c_lands_them_in_the_same_places_where_there_is_a_compiler() -> None:
    beside = speed_casts.beside_c(200)
    if beside.why_not:
        assert "compile" in beside.why_not
    else:
        assert beside.apart < 0.01
        assert min(beside.ours, beside.theirs) > 0


def test_without_source_or_compiler_it_says_so(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr(speed_casts, "COMPILERS", ("no-such-compiler",))
    assert speed_casts.beside_c(1).why_not == "there is no C compiler on this machine"
    monkeypatch.setattr(speed_casts, "C_SOURCE", tmp_path / "cast.c")
    assert "tests/speed" in speed_casts.beside_c(1).why_not


@pytest.mark.usefixtures("few")
def test_two_threads_are_measured_where_there_are_two_cores(monkeypatch: pytest.MonkeyPatch) -> None:
    both = speed_casts.in_two_threads(100)
    assert both is None if os.cpu_count() == 1 else min(both) > 0
    monkeypatch.setattr(os, "cpu_count", lambda: 1)
    assert speed_casts.in_two_threads(100) is None


def test_growth_goes_by_tens_up_to_the_most() -> None:
    assert list(speed_casts.growth(1000)) == [100, 1000]
