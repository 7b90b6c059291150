"""What holds of every reading, whatever the signal."""

from contextlib import suppress

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from spoolwright.bench import budget, delimited, mending, pull_trace, scatter, spin_down
from spoolwright.bench.budget import Contribution
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.torque import pull_torque
from spoolwright.bench.trace import TraceForm
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.demo import signals
from spoolwright.mechanics import coastdown

FEW = settings(max_examples=25, deadline=None)
sizes = st.floats(0.0, 1e3)


@given(st.lists(sizes, max_size=6), sizes)
def test_one_more_doubt_never_makes_surer(parts: list[float], more: float) -> None:
    rows = [Contribution("x", str(i), "B", u) for i, u in enumerate(parts)]
    assert budget.combined([*rows, Contribution("x", "more", "B", more)]) >= budget.combined(rows)


@given(st.lists(st.tuples(st.floats(-1e4, 1e4), st.floats(-1e4, 1e4)), min_size=3, max_size=30))
@settings(deadline=None)
def test_numbers_written_in_any_style_come_back(rows: list[tuple[float, float]]) -> None:
    for mark, point in ((";", ","), ("\t", "."), ("|", ","), (" ", ".")):
        lines = [mark.join(f"{v:.3f}".replace(".", point) for v in row) for row in rows]
        table = delimited.read("\n".join(lines))
        np.testing.assert_allclose(table.column(0), [a for a, _ in rows], atol=6e-4)
        np.testing.assert_allclose(table.column(1), [b for _, b in rows], atol=6e-4)


@given(st.text(max_size=300))
def test_any_text_is_a_table_or_a_refusal(text: str) -> None:
    with suppress(Unreadable):
        table = delimited.read(text)
        for column in table.number_columns:
            assert np.isfinite(table.column(column)).all()


@given(st.binary(max_size=400))
def test_any_bytes_are_a_trace_or_a_refusal(data: bytes) -> None:
    with suppress(Unreadable):
        found = pull_trace.analyse(
            pull_trace.read(data, form=TraceForm(force_unit="N", time_unit="s")), Gauge()
        )
        assert found.running.value > 0


@FEW
@given(st.floats(5.0, 200.0), st.floats(1.0, 1.6), st.integers(0, 10_000))
def test_the_ratio_is_start_up_over_running(running: float, ratio: float, seed: int) -> None:
    signal = signals.pull_trace(signals.PullShape(running=running, start_up_ratio=ratio), seed=seed)
    found = pull_trace.analyse(pull_trace.read(signal.to_csv()), Gauge(accuracy_of_reading=0.01))
    assert found.start_up_ratio.value == pytest.approx(found.start_up.value / found.running.value)
    assert found.judder.value >= 0
    assert all(row.uncertainty >= 0 for row in found.budget)


@FEW
@given(st.floats(0.2, 5.0), st.integers(0, 10_000))
def test_a_pull_in_other_units_is_the_same_pull(factor: float, seed: int) -> None:
    signal = signals.pull_trace(seed=seed)
    rows = [f"{t:.4f};{f * factor:.5f}" for t, f in zip(signal.time, signal.force, strict=True)]
    one = pull_trace.analyse(pull_trace.read(signal.to_csv()), Gauge())
    other = pull_trace.analyse(pull_trace.read("\n".join(["s;N", *rows]).encode()), Gauge())
    assert other.running.value == pytest.approx(factor * one.running.value, rel=1e-3)
    assert other.start_up_ratio.value == pytest.approx(one.start_up_ratio.value, rel=2e-3)
    assert other.judder.value == pytest.approx(one.judder.value, abs=2e-3)


@given(st.floats(0.1, 500.0), st.floats(0.001, 0.1), sizes, st.floats(0.0, 0.01))
def test_torque_over_radius_is_the_pull(pull: float, radius: float, u_pull: float, u_radius: float) -> None:
    torque = pull_torque(Measured(pull, u_pull, "force"), Measured(radius, u_radius, "length"))
    assert torque.value / radius == pytest.approx(pull)
    assert torque.uncertainty >= u_pull * radius * (1 - 1e-12)


speeds = st.floats(20.0, 500.0)


@FEW
@given(speeds, st.floats(5.0, 40.0), st.floats(0.1, 1.0), st.sets(st.integers(5, 60), max_size=8))
def test_ticks_that_are_taken_out_are_counted_in(
    speed: float, lasts: float, share: float, gone: set[int]
) -> None:
    slowing = 2 * speed / lasts
    drags = (share * slowing, (1 - share) * slowing / speed, 0.0)
    turns = int(float(coastdown.angle(1e6, speed, 1.0, *drags)) / (2 * np.pi))
    assume(turns > 70)
    at = np.asarray(coastdown.time_at_angle(2 * np.pi * np.arange(turns), speed, 1.0, *drags))
    left = np.delete(at, sorted(gone))
    found = mending.mend(left)
    assert found.turns[-1] == turns - 1
    assert found.misses == len(gone)


@FEW
@given(speeds, st.floats(5.0, 40.0), st.floats(0.2, 0.9), st.integers(0, 10_000))
def test_no_drag_is_negative_and_every_spool_comes_to_rest(
    speed: float, lasts: float, share: float, seed: int
) -> None:
    slowing = 2 * speed / lasts
    shape = signals.SpinShape(speed, share * slowing, (1 - share) * slowing / speed, 0.0, missed=0.05)
    try:
        found = spin_down.fit(mending.mend(signals.spin_recording(shape, seed=seed).ticks))
    except Unreadable:
        assume(False)
        raise
    assert min(found.constant.value, found.viscous.value, found.quadratic.value) >= 0
    assert 0 < found.stop_time.value < 1e4
    assert (np.diff(found.fitted) <= 1e-9).all()


@given(st.lists(st.floats(-1e3, 1e3), min_size=3, max_size=60))
def test_correlation_lies_between_one_and_all(values: list[float]) -> None:
    record = np.array(values)
    assert 1.0 <= scatter.correlation_samples(record - record.mean()) <= len(values)
