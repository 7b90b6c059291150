"""What is good, what wants a look, what is to be acted on: always in words and with its mark."""

from __future__ import annotations

import pytest

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.diary.told import limits
from spoolwright.sheets import reading_kinds


def said(kind: str, *tags: str, system: str = "metric") -> str:
    return limits.in_words(reading_kinds.kind(kind), tags, system).replace("\u00a0", " ")


def test_every_limit_carries_its_mark() -> None:
    for kind in reading_kinds.kinds().values():
        for limit in kind.limits:
            words = limits.in_words(kind, (limit.when,), "metric")
            assert kind.limits_for(limit.when).mark in words


@pytest.mark.parametrize(
    ("kind", "words"),
    [
        ("start_up_ratio", "Good up to 1.10, wants a look up to 1.30, beyond that to be acted on"),
        ("judder", "Good up to 8 %, wants a look up to 20 %"),
        ("end_float", "Good from 0.05 mm to 0.12 mm, wants a look from 0.01 mm to 0.3 mm"),
        ("feel", "Good up to 1, “a trace”, wants a look up to 2, “felt”"),
        ("anti_reverse_slips", "Good up to 0, beyond that to be acted on"),
    ],
)
def test_limits_are_said_as_the_bench_says_them(kind: str, words: str) -> None:
    assert said(kind).startswith(words)


def test_a_limit_of_another_kind_of_reel_is_not_said() -> None:
    assert said("handle_torque") == ""
    assert "20 mN m" in said("handle_torque", "round multiplier")


def test_units_are_the_readers() -> None:
    assert "in" in said("end_float", system="imperial").split()[3]


def test_only_what_is_not_good_has_a_verdict() -> None:
    kind = reading_kinds.kind("end_float")
    assert limits.verdict(kind, 0.08e-3, (), "metric") == ""
    assert limits.verdict(kind, 0.2e-3, (), "metric").startswith("Wants a look: good is from")
    assert limits.verdict(kind, 0.42e-3, (), "metric").startswith("To be acted on")
    assert limits.verdict(reading_kinds.kind("mass"), 1.0, (), "metric") == ""


def test_a_share_is_a_percentage() -> None:
    assert limits.percent(Measured(0.062, 0.004, "ratio")).replace("\u00a0", " ") == "6.20 % ± 0.80 %"
