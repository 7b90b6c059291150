"""Round trips: what the generator puts into a signal is what the bench finds, within what it states.

Forty seeds of each; the stated interval (k = 2) must hold the truth in at least thirty-five, and must not be
so wide that this says nothing. (Of forty sound intervals fewer than thirty-five hold once in a hundred times,
by the binomial law; the seeds are fixed.)
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
import pytest

from spoolwright.bench import pull_trace as pulls
from spoolwright.bench import recording, spin_down, ticks
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.spin_down import SpinDown
from spoolwright.bench.uncertainty import Measured
from spoolwright.demo.signals import (
    KILOGRAM,
    PULL_STYLES,
    PullShape,
    SpinShape,
    SpinSignal,
    pull_trace,
    spin_recording,
)

SEEDS = range(40)
ENOUGH = 35
PULL_RESULTS = ("start_up", "running", "start_up_ratio", "judder", "drift")
SPIN_RESULTS = ("initial_speed", "constant", "viscous", "quadratic", "stop_time")


@dataclass(frozen=True)
class Trip:
    """Error and stated standard uncertainty of one result, both over its size."""

    error: float
    uncertainty: float


def held(trips: Sequence[Trip]) -> int:
    return sum(abs(trip.error) <= 2 * trip.uncertainty for trip in trips)


def width(trips: Sequence[Trip]) -> float:
    """Stated uncertainty over the deviation that nine in ten errors show."""
    stated = float(np.median([trip.uncertainty for trip in trips]))
    return stated / (float(np.percentile([abs(trip.error) for trip in trips], 90)) / 1.645)


def trip(found: Measured, true: float, size: float) -> Trip:
    return Trip((found.value - true) / size, found.uncertainty / size)


def any_pull(base: PullShape, seed: int) -> PullShape:
    """Some drag: any pull, any start, judder and drift from none to bad."""
    rng = np.random.default_rng(1000 + seed)
    return replace(
        base,
        running=rng.uniform(8, 80),
        start_up_ratio=rng.uniform(1.02, 1.6),
        stick_slip=rng.uniform(0.005, 0.08),
        stick_slip_rate=rng.uniform(3, 12),
        turn_ripple=rng.uniform(0, 0.08),
        turn_time=rng.uniform(0.25, 1),
        drift=rng.uniform(-0.1, 0.1),
        slip=rng.uniform(2.5, 8),
        ramp=rng.uniform(0.3, 1.2),
    )


def pull_trips(base: PullShape, gauge: Gauge, *, vary: bool) -> dict[str, list[Trip]]:
    trips: dict[str, list[Trip]] = {name: [] for name in PULL_RESULTS}
    for seed in SEEDS:
        signal = pull_trace(any_pull(base, seed) if vary else base, seed=seed)
        trace = pulls.read(signal.to_csv(PULL_STYLES[seed % len(PULL_STYLES)]))
        found = pulls.analyse(trace, gauge)
        for name in PULL_RESULTS:
            size = signal.truth.running if name in ("start_up", "running") else 1.0
            trips[name].append(trip(getattr(found, name), getattr(signal.truth, name), size))
    return trips


GAUGES = {
    "load cell, 100 Hz": (PullShape(), Gauge(accuracy_of_reading=0.005), True),
    "load cell, 100 Hz, one drag": (PullShape(), Gauge(accuracy_of_reading=0.005), False),
    "hanging scale, 20 Hz, 0.1 kg": (
        PullShape(rate=20.0, resolution=0.1 * KILOGRAM, noise=0.1, accuracy=0.01),
        Gauge(accuracy_of_reading=0.01, resolution=0.1 * KILOGRAM),
        True,
    ),
    "noisy, 50 Hz": (PullShape(rate=50.0, noise=0.4), Gauge(accuracy_of_reading=0.005), True),
    "slow, 8 Hz": (PullShape(rate=8.0, resolution=0.02 * KILOGRAM), Gauge(accuracy_of_reading=0.005), True),
}


@pytest.mark.parametrize("gauge", GAUGES)
def test_a_pull_comes_back_within_its_stated_uncertainty(gauge: str) -> None:
    base, stated, vary = GAUGES[gauge]
    trips = pull_trips(base, stated, vary=vary)
    assert {name: held(some) for name, some in trips.items() if held(some) < ENOUGH} == {}
    assert {name: width(some) for name, some in trips.items() if width(some) > 5} == {}


def any_spin(base: SpinShape, seed: int) -> SpinShape:
    """Some spool: 16 to 500 rad/s, at rest after 8 to 60 s or so, by any mixture of the three drags."""
    rng = np.random.default_rng(1000 + seed)
    speed, lasts = 10 ** rng.uniform(1.2, 2.7), rng.uniform(8, 60)
    share, slowing = rng.dirichlet([1, 1, 1]), 2 * speed / lasts
    return replace(
        base,
        initial_speed=float(speed),
        constant=float(max(0.1, share[0]) * slowing),
        viscous=float(share[1] * slowing / speed),
        quadratic=float(share[2] * slowing / speed**2),
    )


def spin_trips(
    base: SpinShape, read: Callable[[SpinSignal], SpinDown], *, vary: bool
) -> dict[str, list[Trip]]:
    trips: dict[str, list[Trip]] = {name: [] for name in SPIN_RESULTS}
    for seed in SEEDS:
        signal = spin_recording(any_spin(base, seed) if vary else base, seed=seed)
        found = read(signal)
        truth = signal.truth
        true = {name: getattr(truth, name) for name in ("constant", "viscous", "quadratic")}
        true["initial_speed"] = truth.speed_at(found.start)
        true["stop_time"] = truth.lead + truth.stop_time - found.start
        for name in SPIN_RESULTS:
            trips[name].append(trip(getattr(found, name), true[name], true[name]))
    return trips


def from_list(signal: SpinSignal) -> SpinDown:
    return spin_down.fit(ticks.mend(ticks.read_csv(signal.to_csv())))


def from_sound(signal: SpinSignal) -> SpinDown:
    return spin_down.fit(ticks.mend(ticks.find(recording.read_wav(signal.to_wav()))))


SPINS = {
    "ticks in a list": (SpinShape(), from_list, True),
    "one in five missed, one in five doubled": (SpinShape(missed=0.2, doubled=0.2), from_list, True),
    "a recording": (
        SpinShape(initial_speed=120.0, constant=12.0, viscous=0.05, quadratic=4e-4, rate=16_000),
        from_sound,
        False,
    ),
}


@pytest.mark.parametrize("way", SPINS)
def test_a_coast_down_comes_back_within_its_stated_uncertainty(way: str) -> None:
    base, read, vary = SPINS[way]
    trips = spin_trips(base, read, vary=vary)
    assert {name: held(some) for name, some in trips.items() if held(some) < ENOUGH} == {}
    assert {name: width(some) for name, some in trips.items() if width(some) > 5} == {}


def test_a_seed_gives_the_same_signal_each_time_and_another_seed_another() -> None:
    assert pull_trace(seed=4).to_csv() == pull_trace(seed=4).to_csv()
    assert spin_recording(seed=4).to_wav() == spin_recording(seed=4).to_wav()
    assert pull_trace(seed=4).to_csv() != pull_trace(seed=5).to_csv()
    assert spin_recording(seed=4).to_csv() != spin_recording(seed=5).to_csv()


def test_the_truth_of_a_pull_is_what_was_asked_for() -> None:
    truth = pull_trace(PullShape(stick_slip=0.0, turn_ripple=0.0, drift=0.0)).truth
    assert truth.start_up == pytest.approx(31.25)
    assert truth.running == pytest.approx(25.0, rel=1e-3)
    assert truth.judder == pytest.approx(0.0, abs=0.005)
    assert truth.drift == 0.0


def test_a_gauge_shows_multiples_of_its_step() -> None:
    force = pull_trace(PullShape(resolution=0.5)).force
    np.testing.assert_allclose(force / 0.5, np.round(force / 0.5))


def test_clean_ticks_stand_at_whole_turns() -> None:
    shape = SpinShape(jitter=0.0, clock=0.0, missed=0.0, doubled=0.0)
    signal = spin_recording(shape)
    speeds = 2 * np.pi / np.diff(signal.ticks)
    middle = 0.5 * (signal.ticks[1:] + signal.ticks[:-1])
    expected = [signal.truth.speed_at(t) for t in middle]
    np.testing.assert_allclose(speeds[:-20], expected[:-20], rtol=1e-3)


def test_missed_and_doubled_ticks_are_counted_in_the_truth() -> None:
    signal = spin_recording(SpinShape(missed=0.3, doubled=0.1), seed=2)
    clean = spin_recording(SpinShape(missed=0.0, doubled=0.0), seed=2)
    assert len(signal.ticks) == len(clean.ticks) - signal.truth.missed + signal.truth.doubled


def test_a_recording_ends_where_it_is_told_to_and_stays_in_range() -> None:
    signal = spin_recording(SpinShape(seconds=3.0, hiss=0.3, hum=0.9))
    assert signal.length == pytest.approx(3.0 + 0.5 + signal.truth.lead, abs=0.2)
    assert np.abs(signal.samples()).max() <= 1.0
