"""What holds for any pulls: scale, order, and that a correction takes out what was put in."""

from __future__ import annotations

from math import cos

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.bench import pull_fade, pull_series
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pull_corrections import LineWay, corrected_pulls
from spoolwright.bench.pull_ratio import interval
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.uncertainty import Measured

SLOPES = st.floats(1.0, 100.0)
ONSETS = st.floats(0.0, 0.9)


def series(slope: float, onset: float) -> list[OnePull]:
    return [OnePull(t, slope * (t - onset), 1.1 * slope * (t - onset)) for t in (1.0, 1.5, 2.0, 3.0)]


@settings(max_examples=20, deadline=None)
@given(SLOPES, ONSETS, st.floats(0.1, 10.0))
def test_harder_pulls_make_a_steeper_line_and_nothing_else(slope: float, onset: float, factor: float) -> None:
    one, other = pull_series.fit(series(slope, onset)), pull_series.fit(series(factor * slope, onset))
    assert other.per_turn.value == pytest.approx(factor * one.per_turn.value, rel=1e-6)
    assert other.onset.value == pytest.approx(one.onset.value, abs=1e-6)
    assert other.start_up_ratio == one.start_up_ratio or other.start_up_ratio.value == pytest.approx(1.1)


@settings(max_examples=15, deadline=None)
@given(SLOPES, ONSETS, st.permutations(range(4)))
def test_the_order_of_the_pulls_does_not_matter(slope: float, onset: float, order: list[int]) -> None:
    taken = series(slope, onset)
    found, other = pull_series.fit(taken), pull_series.fit([taken[k] for k in order])
    assert other.per_turn == found.per_turn
    assert other.onset == found.onset


@settings(max_examples=30, deadline=None)
@given(
    st.lists(st.floats(1.0, 200.0), min_size=2, max_size=8),
    st.floats(1.0, 1.5),
    st.floats(0.0, 1.0),
    st.floats(-0.5, 0.5),
    st.floats(-0.5, 0.5),
)
def test_a_correction_takes_out_what_the_way_put_in(
    pull: list[float], factor: float, angle: float, before: float, after: float
) -> None:
    way = LineWay(
        Measured(angle, 0.0, "angle"),
        Measured(factor, 0.0, "ratio"),
        Measured(before, 0.0, "force"),
        Measured(after, 0.0, "force"),
    )
    shares = [k / (len(pull) - 1) for k in range(len(pull))]
    shown = [
        OnePull(k, true * factor / cos(angle) + before + share * (after - before))
        for k, (true, share) in enumerate(zip(pull, shares, strict=True))
    ]
    put_right, _ = corrected_pulls(shown, Gauge(), way)
    assert [one.running for one in put_right] == pytest.approx(pull)


@settings(max_examples=50, deadline=None)
@given(
    st.floats(1, 100), st.floats(1, 100), st.floats(0.001, 0.1), st.floats(0.001, 0.1), st.floats(-0.9, 0.9)
)
def test_the_ratio_lies_between_its_ends(a: float, b: float, ua: float, ub: float, rho: float) -> None:
    top, bottom = Measured(a, ua * a, "force"), Measured(b, ub * b, "force")
    low, high = interval(top, bottom, rho)
    assert low <= a / b <= high


@settings(max_examples=30, deadline=None)
@given(st.lists(st.floats(5.0, 50.0), min_size=4, max_size=12), st.floats(0.1, 10.0))
def test_a_fade_does_not_hang_on_the_scale(pull: list[float], factor: float) -> None:
    one = pull_fade.fit([OnePull(k, f) for k, f in enumerate(pull)])
    other = pull_fade.fit([OnePull(k, factor * f) for k, f in enumerate(pull)])
    assert other.change.value == pytest.approx(one.change.value, rel=1e-6, abs=1e-9)
    assert other.verdict == one.verdict
