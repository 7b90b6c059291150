"""The five results of a pull, with the parts of their uncertainty."""

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest
from numpy.typing import NDArray

from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pull_reading import PullReading, analyse, step_of_display
from spoolwright.bench.trace import Found, PullTrace
from spoolwright.bench.unreadable import Unreadable

Samples = NDArray[np.float64]
RESULTS = ("start_up", "running", "start_up_ratio", "judder", "drift")


def trace_of(force: Callable[[Samples], Samples], rate: float = 200.0, noise: float = 0.01) -> PullTrace:
    """A pull with a second of rest, half a second of climbing, five seconds of slipping, and rest again."""
    time = np.arange(0.0, 8.0, 1 / rate)
    shape = np.clip((time - 1.0) / 0.5, 0, 1) * np.clip((6.5 - time) / 0.05, 0, 1)
    seen = shape * force(time - 1.5) + np.random.default_rng(1).normal(0.0, noise, len(time))
    return PullTrace(time, seen, Found("utf-8", "comma", "point", (), "", "", "s", "N", rate, len(time)))


def level(since: Samples) -> Samples:
    return np.full_like(since, 20.0)


def start_peak(since: Samples) -> Samples:
    return 20.0 + 5.0 * np.exp(-np.maximum(since, 0.0) / 0.05)


def test_a_level_pull_has_a_ratio_of_one_and_neither_judder_nor_drift() -> None:
    found = analyse(trace_of(level), Gauge())
    assert found.running.value == pytest.approx(20.0, abs=0.01)
    assert found.start_up_ratio.value == pytest.approx(1.0, abs=0.005)
    assert found.judder.value == pytest.approx(0.0, abs=0.003)
    assert found.drift.value == pytest.approx(0.0, abs=0.001)


def test_the_start_up_pull_is_the_highest_of_the_first_moments() -> None:
    found = analyse(trace_of(start_peak), Gauge())
    assert found.start_up.value == pytest.approx(25.0, abs=0.4)
    assert found.start_up_ratio.value == pytest.approx(1.25, abs=0.02)


def test_a_peak_after_the_first_moments_is_judder_and_no_start() -> None:
    late = lambda since: 20.0 + 5.0 * np.exp(-(((since - 2.0) / 0.05) ** 2))  # noqa: E731
    assert analyse(trace_of(late), Gauge()).start_up_ratio.value < 1.01


def test_judder_is_the_span_of_the_ripple_over_the_mean() -> None:
    ripple = lambda since: 20.0 + np.sin(2 * np.pi * 5 * since)  # noqa: E731
    found = analyse(trace_of(ripple), Gauge())
    # 5th to 95th percentile of a sine of amplitude 1: 2 sin(0.45 pi).
    assert found.judder.value == pytest.approx(2 * np.sin(0.45 * np.pi) / 20, abs=0.003)


def test_noise_of_the_gauge_is_not_judder_of_the_drag() -> None:
    found = analyse(trace_of(level, noise=0.4), Gauge())
    assert found.judder.value < 0.5 * 3.29 * 0.4 / 20  # half of what that noise alone spans
    assert found.judder.value - found.judder.expanded <= 0.0


def test_where_no_rest_shows_the_noise_the_judder_may_be_little_or_all_that_is_seen() -> None:
    whole = trace_of(level, noise=0.2)
    pulled = (whole.time > 1.02) & (whole.time < 6.4)
    found = analyse(PullTrace(whole.time[pulled] - 1.02, whole.force[pulled], whole.found), Gauge())
    low, high = np.percentile(found_force(whole), (5.0, 95.0))
    assert found.judder.value - found.judder.expanded <= 0.2 * (high - low) / 20.0
    assert found.judder.value + found.judder.expanded >= 0.95 * (high - low) / 20.0


def found_force(trace: PullTrace) -> Samples:
    """The running part of `trace_of`."""
    return trace.force[(trace.time > 1.8) & (trace.time < 6.4)]


def test_drift_is_the_rise_over_the_running_part() -> None:
    fading = lambda since: 20.0 * (1.0 - 0.02 * since)  # noqa: E731
    found = analyse(trace_of(fading), Gauge())
    lasts = found.slip_end - found.slip_start - 0.3
    assert found.drift.value == pytest.approx(-0.02 * lasts * 20.0 / found.running.value, rel=0.02)


def test_the_scale_of_the_gauge_counts_in_pulls_and_cancels_in_ratios() -> None:
    trace = trace_of(start_peak)
    plain, rough = analyse(trace, Gauge()), analyse(trace, Gauge(accuracy_of_reading=0.05))
    assert rough.running.uncertainty == pytest.approx(
        np.hypot(plain.running.uncertainty, 20 * 0.05 / 3**0.5), rel=0.01
    )
    for name in ("start_up_ratio", "judder", "drift"):
        assert getattr(rough, name).uncertainty == pytest.approx(getattr(plain, name).uncertainty)


def test_the_zero_of_the_gauge_cancels_in_a_ratio_of_one_only() -> None:
    gauge = Gauge(accuracy_of_range=0.01, range=200.0)
    even, uneven = analyse(trace_of(level), gauge), analyse(trace_of(start_peak), gauge)
    zero = {row.result: row.uncertainty for row in uneven.budget if row.source == "zero of the gauge"}
    assert zero["running"] == pytest.approx(2.0 / 3**0.5, rel=0.01)
    assert zero["start_up_ratio"] == pytest.approx(0.25 * zero["running"] / 20, rel=0.1)
    flat = [
        r.uncertainty for r in even.budget if (r.result, r.source) == ("start_up_ratio", "zero of the gauge")
    ]
    assert flat[0] < 0.05 * zero["start_up_ratio"]


def test_a_coarse_display_widens_what_does_not_shake() -> None:
    trace = trace_of(level, noise=0.0)
    coarse = replace(trace, force=np.round(trace.force))
    found = analyse(coarse, Gauge())
    assert found.running.uncertainty == pytest.approx(1 / 12**0.5, rel=0.05)


def test_the_step_of_a_display_is_found_in_its_values() -> None:
    assert step_of_display(np.array([0.0, 0.49, 0.98, 0.49])) == pytest.approx(0.49)
    assert step_of_display(np.array([2.0, 2.0])) == 0.0


def test_every_uncertainty_is_the_sum_of_its_rows() -> None:
    found = analyse(trace_of(start_peak), Gauge(accuracy_of_reading=0.01, resolution=0.1))
    for name in RESULTS:
        rows = [row.uncertainty for row in found.budget if row.result == name]
        assert getattr(found, name).uncertainty == pytest.approx(np.sqrt(np.sum(np.square(rows))))
        assert {row.way for row in found.budget if row.result == name} == {"A", "B"}


def three_pulls() -> PullTrace:
    time = np.arange(0.0, 9.0, 0.01)
    force = np.random.default_rng(2).normal(0, 0.02, 900)
    for begin, top in ((0.5, 20.0), (3.5, 22.0), (6.3, 24.0)):
        force += top * np.clip((time - begin) / 0.3, 0, 1) * np.clip((begin + 2.3 - time) / 0.1, 0, 1)
    return PullTrace(time, force, Found("utf-8", "comma", "point", (), "", "", "s", "N", 100.0, 900))


@pytest.mark.parametrize(("asked", "pull"), [(1, 20.0), (2, 22.0), (3, 24.0), (None, 24.0)])
def test_of_several_pulls_the_last_or_the_one_asked_for_is_read(asked: int | None, pull: float) -> None:
    found = analyse(three_pulls(), Gauge(), pull=asked)
    assert found.running.value == pytest.approx(pull, abs=0.1)
    assert (found.pull_number, found.pulls) == (asked or 3, 3)
    assert any("3 pulls" in note for note in found.notes)


def test_a_pull_that_is_not_there_is_refused() -> None:
    with pytest.raises(Unreadable, match=r"no pull number 4.*1 to 3"):
        analyse(three_pulls(), Gauge(), pull=4)


def noted(found: PullReading) -> str:
    return " ".join(found.notes)


def test_the_notes_say_what_limits_the_reading() -> None:
    assert "accuracy was not given" in noted(analyse(trace_of(level), Gauge()))
    assert "accuracy" not in noted(analyse(trace_of(level), Gauge(accuracy_of_reading=0.01)))
    assert "samples a second" in noted(analyse(trace_of(level, rate=10.0), Gauge()))
    offset = trace_of(level)
    shifted = analyse(replace(offset, force=offset.force + 1.0), Gauge())
    assert "zero it, or" in noted(shifted)
    assert shifted.running.uncertainty > 0.5
