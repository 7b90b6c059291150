"""Zero, drift, pulley and angle put right, with what that leaves unsure."""

from math import cos, radians, sqrt

import numpy as np
import pytest

from spoolwright.bench import pull_reading
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pull_corrections import (
    LineWay,
    angle_factor,
    corrected,
    corrected_pulls,
    pulley,
    said,
    zero_at,
)
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.trace import Found, PullTrace
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable


def force(value: float, uncertainty: float = 0.0) -> Measured:
    return Measured(value, uncertainty, "force")


def trace_of(pull: float, seed: int = 1) -> PullTrace:
    time = np.arange(0.0, 6.0, 0.01)
    line = np.clip(60 * (time - 0.5), 0, pull) * (time < 5.2)
    shaken = line + np.random.default_rng(seed).normal(0, 0.02, len(time))
    return PullTrace(time, shaken, Found("utf-8", "comma", "point", (), "", "", "s", "N", 100.0, 600))


def test_a_weight_pulled_both_ways_gives_the_pulley_and_itself() -> None:
    weight, factor = 49.0, 1.06
    tried = pulley(force(weight * factor, 0.2), force(weight / factor, 0.2))
    assert tried.factor.value == pytest.approx(factor)
    assert tried.weight.value == pytest.approx(weight)
    assert tried.factor.uncertainty == pytest.approx(
        factor * 0.5 * sqrt((0.2 / 51.94) ** 2 + (0.2 / 46.23) ** 2), rel=1e-3
    )


def test_a_pulley_without_friction_may_come_out_a_little_below_one() -> None:
    assert pulley(force(49.9, 0.1), force(50.0, 0.1)).factor.value == 1.0
    with pytest.raises(Unreadable, match="harder than lifting"):
        pulley(force(45, 0.1), force(50, 0.1))
    with pytest.raises(Unreadable, match="holds fast"):
        pulley(force(450, 0.1), force(5, 0.1))
    with pytest.raises(Unreadable, match="more than nothing"):
        pulley(force(0), force(5))


@pytest.mark.parametrize("angle", [0.0, 5.0, 20.0, 50.0])
def test_an_angle_takes_its_cosine_also_where_the_slope_of_the_cosine_is_nothing(angle: float) -> None:
    found = angle_factor(Measured(radians(angle), 0.05, "angle"))
    drawn = np.cos(np.random.default_rng(2).normal(radians(angle), 0.05, 40000))
    assert found.value == pytest.approx(drawn.mean(), abs=5e-4)
    assert found.uncertainty == pytest.approx(drawn.std(), rel=0.06)
    with pytest.raises(Unreadable, match="60 deg"):
        angle_factor(Measured(radians(61), 0.0, "angle"))


def test_the_zero_moves_from_before_to_after_and_is_least_sure_in_between() -> None:
    way = LineWay(zero_before=force(1.0, 0.1), zero_after=force(3.0, 0.1))
    assert [zero_at(x, way).value for x in (0.0, 0.5, 1.0)] == [1.0, 2.0, 3.0]
    assert zero_at(0.5, way).uncertainty == pytest.approx(sqrt(0.005 + 1.0))
    assert zero_at(0.7, LineWay(zero_after=force(3.0, 0.1))) == force(3.0, 0.1)
    assert zero_at(0.3, LineWay()).value == 0.0
    with pytest.raises(ValueError, match="share"):
        zero_at(1.2, way)


def test_a_trace_askew_over_a_pulley_with_a_drifting_zero_reads_as_the_straight_one() -> None:
    straight = trace_of(40.0)
    factor = cos(radians(20)) / 1.05
    drift = 0.5 + 0.4 * straight.time / straight.time[-1]
    askew = PullTrace(straight.time, straight.force / factor + drift, straight.found)
    way = LineWay(
        Measured(radians(20), 0.02, "angle"),
        Measured(1.05, 0.005, "ratio"),
        force(0.5, 0.02),
        force(0.9, 0.02),
    )
    read = pull_reading.analyse(*corrected(askew, Gauge(resolution=0.01), way))
    true = pull_reading.analyse(straight, Gauge(resolution=0.01))
    assert read.running.value == pytest.approx(true.running.value, rel=2e-3)
    assert read.start_up_ratio.value == pytest.approx(true.start_up_ratio.value, rel=2e-3)
    assert read.running.uncertainty > true.running.uncertainty
    sources = {row.source for row in read.budget if row.uncertainty > 0}
    assert {"line's angle and pulley", "zero that was taken off"} <= sources
    assert len(said(way)) == 3
    assert set(said(way)) <= set(read.notes)


def test_nothing_to_correct_leaves_everything_as_it_is() -> None:
    trace, gauge = trace_of(20.0), Gauge()
    assert corrected(trace, gauge, LineWay()) == (trace, gauge)
    assert LineWay().straight
    assert said(LineWay()) == ()


def test_pulls_off_a_scale_are_put_right_one_by_one() -> None:
    way = LineWay(pulley=Measured(1.1, 0.01, "ratio"), zero_before=force(1.0), zero_after=force(3.0))
    shown = [OnePull(n, 11.0 * n + 1.0 + n, 12.1 * n + 1.0 + n, step=0.11) for n in range(3)]
    put_right, gauge = corrected_pulls(shown, Gauge(), way)
    assert [pull.running for pull in put_right] == pytest.approx([0.0, 10.0, 20.0])
    assert [pull.start_up for pull in put_right] == pytest.approx([0.0, 11.0, 22.0])
    assert put_right[0].step == pytest.approx(0.1)
    assert gauge.way_unsure == pytest.approx(0.01 / 1.1)
    assert gauge.zero_unsure > 0
    assert corrected_pulls(shown, Gauge(), LineWay()) == (tuple(shown), Gauge())
    with pytest.raises(Unreadable, match="zero"):
        corrected_pulls([OnePull(1, 0.5)] * 2, Gauge(), way)


def test_a_display_coarser_than_what_was_typed_counts_with_its_step() -> None:
    shown = [OnePull(1, 20.0, step=0.1), OnePull(2, 30.0, step=1.0)]
    assert [pull.step for pull in corrected_pulls(shown, Gauge(resolution=0.5), LineWay())[0]] == [0.5, 1.0]
    halved = LineWay(pulley=Measured(2.0, 0.0, "ratio"))
    assert [pull.step for pull in corrected_pulls(shown, Gauge(resolution=0.5), halved)[0]] == [0.25, 0.5]
