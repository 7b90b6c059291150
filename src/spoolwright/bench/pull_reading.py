"""A pull trace to its five results: start-up pull, running pull, their ratio, judder and drift."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import budget, peak, scatter, slip
from spoolwright.bench.budget import RECTANGLE, ROUNDING, Contribution
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.peak import Peak
from spoolwright.bench.slip import Slip
from spoolwright.bench.trace import PullTrace
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable

SLOW_GAUGE = 20.0
"""Samples a second below which the start-up pull is only bracketed (common practice: a 20 Hz load cell)."""

_OF_SECOND_DIFFERENCES = 1.944
"""Variance of a variance from second differences over that from independent samples: 1 + 2 (16 + 1) / 36."""

_NOISE_SPAN = 3.2897
"""5th to 95th percentile of a normal distribution, in standard deviations."""

Samples = NDArray[np.float64]


@dataclass(frozen=True)
class PullReading:
    """What one pull says. Times in s from the first sample; each value with its standard uncertainty.

    start_up: highest pull in the first 0.3 s of slipping. running: mean pull from then to the end of the
    slip. start_up_ratio: the first over the second. judder: 5th to 95th percentile of the running part over
    its mean. drift: rise or fall of the running part from its start to its end, over its mean.
    """

    start_up: Measured
    running: Measured
    start_up_ratio: Measured
    judder: Measured
    drift: Measured
    samples: int
    slip_start: float
    slip_end: float
    pull_number: int
    pulls: int
    budget: tuple[Contribution, ...]
    notes: tuple[str, ...]


@dataclass(frozen=True)
class _Run:
    """The running part taken apart, and everything known about the gauge in newtons."""

    time: Samples
    force: Samples
    mean: float
    slope: float
    residual: Samples
    scatter: float
    step: float
    rounding: float
    zero: float
    noise: float
    calm: int
    gain: float
    way: float
    corrected: float
    slow: bool

    @property
    def lasts(self) -> float:
        return float(self.time[-1] - self.time[0])


def analyse(trace: PullTrace, gauge: Gauge, pull: int | None = None) -> PullReading:
    """Start-up pull, running pull, ratio, judder and drift of one pull in a trace.

    Parameters
    ----------
    trace : PullTrace
        Times [s] and pull [N], each of shape (n,).
    gauge : Gauge
        What is known of the gauge [N and fractions].
    pull : int or None
        Which pull of several, counted from 1 [-]; None: the last.

    Returns
    -------
    PullReading
        Five values with their standard uncertainties [N and 1], and the rows they are made of.

    Raises
    ------
    Unreadable
        A trace without a pull, without a start, without a level slip, or without the pull asked for.

    Notes
    -----
    running = mean F; judder = (p95 - p5) / mean F, freed of the gauge's own noise; drift = slope of the
    straight line through the running part x its length / mean F; ratio = start-up / running, in which the
    scale cancels and the zero counts (1 - ratio) / running.
    A reading before the pull is not taken off: it may be the zero or a taut line, so it widens the result.

    Source
    ------
    First 0.3 s and mean of what follows: common practice, no source. Uncertainties: JCGM 100:2008, 4.3.7,
    5.1.2, F.2.2.1; correlated samples as in `scatter`.

    Examples
    --------
    >>> from spoolwright.bench.trace import Found
    >>> t = np.arange(0.0, 5.0, 0.01)
    >>> force = np.clip(40 * (t - 0.5), 0, 20) * (t < 4)
    >>> trace = PullTrace(t, force, Found("utf-8", "comma", "point", (), "", "", "s", "N", 100.0, 500))
    >>> round(analyse(trace, Gauge()).running.value, 6)
    20.0
    """
    slips = slip.find(trace.time, trace.force)
    chosen, number = _chosen(slips, pull)
    run = _run(trace, gauge, chosen)
    top = peak.highest(trace.time, trace.force, chosen.start, chosen.running, chosen.noise)
    rows = tuple(_all_rows(run, top))
    return PullReading(
        start_up=budget.measured(top.value, "force", _of("start_up", rows)),
        running=budget.measured(run.mean, "force", _of("running", rows)),
        start_up_ratio=budget.measured(top.value / run.mean, "ratio", _of("start_up_ratio", rows)),
        judder=budget.measured(_judder(run), "ratio", _of("judder", rows)),
        drift=budget.measured(run.slope * run.lasts / run.mean, "ratio", _of("drift", rows)),
        samples=len(run.force),
        slip_start=float(trace.time[chosen.start]),
        slip_end=float(trace.time[chosen.end]),
        pull_number=number,
        pulls=len(slips),
        budget=rows,
        notes=(*trace.notes, *_notes(trace, gauge, chosen, len(slips), number)),
    )


def _chosen(slips: tuple[Slip, ...], pull: int | None) -> tuple[Slip, int]:
    number = len(slips) if pull is None else pull
    if not 1 <= number <= len(slips):
        raise Unreadable(f"there is no pull number {number} in the trace", "", f"1 to {len(slips)}")
    return slips[number - 1], number


def _of(result: str, rows: Iterable[Contribution]) -> list[Contribution]:
    return [row for row in rows if row.result == result]


def _run(trace: PullTrace, gauge: Gauge, chosen: Slip) -> _Run:
    part = slice(chosen.running, chosen.end + 1)
    time, force = trace.time[part], trace.force[part]
    mean, slope, residual = scatter.line_through(time, force)
    step = gauge.resolution if gauge.resolution is not None else step_of_display(trace.force)
    shakes = float(residual.std()) > 0.5 * step
    rest = abs(chosen.rest) if chosen.rest is not None else 0.0
    return _Run(
        time,
        force,
        mean,
        slope,
        residual,
        scatter=scatter.error_of_mean(residual),
        step=step,
        rounding=0.0 if shakes else step * ROUNDING,
        zero=float(np.hypot(gauge.offset, rest * RECTANGLE)),
        noise=chosen.noise,
        calm=chosen.calm,
        gain=gauge.gain,
        way=gauge.way_unsure,
        corrected=gauge.zero_unsure,
        slow=trace.found.rate < SLOW_GAUGE - 1,
    )


def step_of_display(force: Samples) -> float:
    """The step in which a gauge shows its values, as far as the trace betrays it.

    Parameters
    ----------
    force : array
        Pull [N], shape (n,), n >= 2.

    Returns
    -------
    float
        Smallest difference between two values that occur [N]; 0.0 where all samples are the same.

    Source
    ------
    Our own rule; JCGM 100:2008, F.2.2.1 for what a step is worth.

    Examples
    --------
    >>> round(step_of_display(np.array([0.0, 0.3, 0.1, 0.3])), 9)
    0.1
    """
    values = np.unique(force)
    steps = np.diff(values)
    real = steps[steps > 1e-9 * max(1.0, float(np.abs(values).max()))]
    return float(real.min()) if len(real) else 0.0


def _judder(run: _Run) -> float:
    """The span of the pull itself, freed of noise; of half of it where only its upper bound is known."""
    return _span_without(run, 1.0 if run.calm else 0.5)


def _span_without(run: _Run, share: float) -> float:
    """Spans of independent causes add in squares, as deviations do."""
    seen, noise = scatter.span(run.force), share * _NOISE_SPAN * run.noise
    return float(np.sqrt(max(seen**2 - noise**2, 0.0))) / run.mean


def _all_rows(run: _Run, top: Peak) -> Iterable[Contribution]:
    yield from _start_up_rows(run, top)
    yield from _running_rows(run)
    yield from _ratio_rows(run, top)
    yield from _judder_rows(run)
    yield from _drift_rows(run)


def _start_up_rows(run: _Run, top: Peak) -> Iterable[Contribution]:
    yield Contribution("start_up", "noise on the highest sample", "A", top.from_noise)
    yield Contribution("start_up", "peak hidden between two samples", "B", top.between_samples)
    yield Contribution("start_up", "step of the display", "B", run.step * ROUNDING)
    yield Contribution("start_up", "scale of the gauge", "B", run.gain * top.value)
    yield Contribution("start_up", "zero of the gauge", "B", run.zero)
    yield from _of_the_way("start_up", run, top.value)


def _running_rows(run: _Run) -> Iterable[Contribution]:
    yield Contribution("running", "scatter while slipping", "A", run.scatter)
    yield Contribution("running", "step of the display", "B", run.rounding)
    yield Contribution("running", "scale of the gauge", "B", run.gain * run.mean)
    yield Contribution("running", "zero of the gauge", "B", run.zero)
    yield from _of_the_way("running", run, run.mean)


def _of_the_way(result: str, run: _Run, pull: float) -> Iterable[Contribution]:
    """What correcting for the line's way and for the zero leaves unsure."""
    yield Contribution(result, "line's angle and pulley", "B", run.way * pull)
    yield Contribution(result, "zero that was taken off", "B", run.corrected)


def _ratio_rows(run: _Run, top: Peak) -> Iterable[Contribution]:
    ratio = top.value / run.mean
    hidden = top.between_samples / run.mean
    yield Contribution("start_up_ratio", "noise on the highest sample", "A", top.from_noise / run.mean)
    yield Contribution("start_up_ratio", "peak hidden between two samples", "B", hidden)
    yield Contribution("start_up_ratio", "scatter while slipping", "A", ratio * run.scatter / run.mean)
    display = float(np.hypot(run.step * ROUNDING, ratio * run.rounding)) / run.mean
    yield Contribution("start_up_ratio", "step of the display", "B", display)
    zero = abs(1.0 - ratio) / run.mean
    yield Contribution("start_up_ratio", "zero of the gauge", "B", zero * run.zero)
    yield Contribution("start_up_ratio", "zero that was taken off", "B", zero * run.corrected)


def _judder_rows(run: _Run) -> Iterable[Contribution]:
    judder = _judder(run)
    seen = scatter.span(run.force) / run.mean
    unsure = float(np.sqrt(_OF_SECOND_DIFFERENCES / (2 * max(run.calm, 1))))
    off = max(seen - judder, judder - _span_without(run, 1.0))
    known_to = 0.5 * (_span_without(run, 1.0 - unsure) - _span_without(run, 1.0 + unsure))
    yield Contribution("judder", "scatter while slipping", "A", scatter.error_of_span(run.force) / run.mean)
    yield Contribution("judder", "noise of the gauge taken off", "B", off * RECTANGLE)
    yield Contribution("judder", "how well that noise is known", "A", known_to if run.calm else 0.0)
    yield Contribution("judder", "ripple too fast for the gauge", "B", 0.5 * seen * RECTANGLE * run.slow)
    yield Contribution("judder", "step of the display", "B", np.sqrt(2.0) * run.step * ROUNDING / run.mean)
    yield Contribution("judder", "zero of the gauge", "B", judder * run.zero / run.mean)


def _drift_rows(run: _Run) -> Iterable[Contribution]:
    per_slope = run.lasts / run.mean
    drift = abs(run.slope) * per_slope
    slope = scatter.error_of_slope(run.time, run.residual)
    yield Contribution("drift", "scatter while slipping", "A", slope * per_slope)
    yield Contribution("drift", "step of the display", "B", np.sqrt(2.0) * run.rounding / run.mean)
    yield Contribution("drift", "zero of the gauge", "B", drift * run.zero / run.mean)


def _notes(trace: PullTrace, gauge: Gauge, chosen: Slip, pulls: int, number: int) -> Iterable[str]:
    if pulls > 1:
        yield f"There are {pulls} pulls in the trace; this is number {number}."
    if not gauge.stated:
        yield "The gauge's accuracy was not given; the uncertainty holds the trace's own scatter only."
    if trace.found.rate < SLOW_GAUGE - 1:
        yield (
            f"The gauge takes {trace.found.rate:.3g} samples a second; with fewer than {SLOW_GAUGE:g} the"
            " start-up pull is only bracketed and quick judder goes unseen."
        )
    if chosen.tight:
        yield "The trace begins with the line already tight: the start-up pull may have been higher before."
    if chosen.rest is None:
        yield "The trace shows no slack line, so the gauge's noise is only known to be at most what is seen."
    elif abs(chosen.rest) > max(0.02 * chosen.level, 3 * chosen.noise):
        yield (
            f"Before the pull the gauge shows {chosen.rest / chosen.level:.0%} of the level: zero it, or"
            " slacken the line. Nothing was taken off; the uncertainty was widened."
        )
