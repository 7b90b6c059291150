"""A pull whose numbers were typed while it went: what few numbers can say, and no more."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import budget, live_rows, slip, student
from spoolwright.bench.budget import RECTANGLE, ROUNDING, Contribution
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.uncertainty import Measured
from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import show

FEWEST = 3
"""Numbers while the line runs below which no scatter can be told."""

MISSED = 0.10
"""Share of the running pull that a display's start-up may have stood higher unseen: judgement prior."""

_ACCEPTED = (
    f"the highest number as the line starts to run, then {FEWEST} numbers or more while it runs, a second or "
    "so apart"
)

Samples = NDArray[np.float64]


@dataclass(frozen=True)
class LiveReading:
    """What a typed pull says: start-up and running pull, their ratio; judder and drift it cannot say.

    Times in s from the first row; `samples` numbers make the running pull; `held` where the scale itself held
    its highest.
    """

    start_up: Measured
    running: Measured
    start_up_ratio: Measured
    samples: int
    slip_start: float
    slip_end: float
    held: bool
    budget: tuple[Contribution, ...]
    notes: tuple[str, ...]
    pull_number: int = 1
    pulls: int = 1


@dataclass(frozen=True)
class _Numbers:
    """The rows taken apart, in newtons."""

    top: float
    run: Samples
    step: float
    missed: float
    gauge: Gauge
    rest: float

    @property
    def mean(self) -> float:
        return float(self.run.mean())

    @property
    def scatter(self) -> float:
        return float(self.run.std(ddof=1))

    @property
    def of_mean(self) -> float:
        return student.of_mean(self.run.tolist())

    @property
    def rounding(self) -> float:
        """Rounding that the scatter does not hold already."""
        return self.step * ROUNDING if self.scatter <= 0.5 * self.step else 0.0

    @property
    def zero(self) -> float:
        return float(np.linalg.norm((self.gauge.offset, self.gauge.zero_unsure, self.rest * RECTANGLE)))


def analyse(trace: live_rows.TypedTrace, gauge: Gauge, held: float | None = None) -> LiveReading:
    """Start-up pull, running pull and their ratio from numbers typed as the pull went.

    Parameters
    ----------
    trace : TypedTrace
        Rows as `live_rows.read` gives them: time [s] and pull [N], shape (n,).
    gauge : Gauge
        What is known of the scale [N and fractions].
    held : float or None
        The highest that the scale itself held [N], above zero; None where it holds none.

    Returns
    -------
    LiveReading
        Three values with their standard uncertainties [N and 1], and the rows they are made of.

    Raises
    ------
    Unreadable
        Fewer than three numbers after the start, a held highest below a number that was typed, no pull.

    Notes
    -----
    The line starts to run at the first number above nine tenths of the middle of all that lie above half the
    highest; the start-up is that number or a clearly higher one right after it. running = mean of what
    follows, without a last number under half of it (let go). A scale that does not hold its highest may have
    missed it: the start-up may lie higher by what it stands above the running pull, or by a tenth of that
    pull (judgement prior), whichever is more, taken as a half-width. Few numbers widen the scatter by
    Student's factor. Numbers a second apart count as independent.

    Source
    ------
    JCGM 100:2008, 4.2.3, 4.3.7, F.2.2.1, G.3.2. Where the pull starts: our own rule.

    Examples
    --------
    >>> rows = live_rows.read("0 0.6\\n1 2.9\\n2 2.4\\n3 2.3\\n4 2.35\\n5 0")
    >>> found = analyse(rows, Gauge())
    >>> round(found.start_up.value, 2), round(found.running.value, 2), found.samples
    (28.44, 23.05, 3)
    """
    first, stop = _slip(trace.force)
    top = _climbed(trace.force, first, stop)
    running = _running(trace, top, stop)
    highest = float(trace.force.max())
    if held is not None and held < highest * (1 - 1e-9):
        told = f"{_as_typed(trace, held)}) is less than a number that was typed ({_as_typed(trace, highest)}"
        reason = f"the highest that was held ({told})"
        raise Unreadable(reason, "", "the highest of all, or nothing where the scale holds none")
    numbers = _numbers(trace, gauge, held, top, running)
    rows = tuple(_rows(numbers, held is not None))
    return LiveReading(
        start_up=budget.measured(numbers.top, "force", _of("start_up", rows)),
        running=budget.measured(numbers.mean, "force", _of("running", rows)),
        start_up_ratio=budget.measured(numbers.top / numbers.mean, "ratio", _of("start_up_ratio", rows)),
        samples=len(running),
        slip_start=float(trace.time[top]),
        slip_end=float(trace.time[running[-1]]),
        held=held is not None,
        budget=rows,
        notes=tuple(_notes(trace, numbers, held is not None, running)),
    )


def _as_typed(trace: live_rows.TypedTrace, force: float) -> str:
    """A pull for a message, in the unit in which it was typed."""
    return show(force, "force", unit=trace.found.force_unit)


def _slip(force: Samples) -> tuple[int, int]:
    """Where the line starts to run, and the row after the last while it was held tight."""
    highest = float(force.max())
    if highest <= 0:
        raise Unreadable("every number is nought", "", _ACCEPTED)
    tight = np.flatnonzero(force >= 0.5 * highest)
    level = float(np.median(force[tight]))
    return int(np.argmax(force >= 0.9 * level)), int(tight[-1]) + 1


def _climbed(force: Samples, first: int, stop: int) -> int:
    """The row of the start-up: numbers on the way up to it are clearly lower than the next one."""
    top = first
    while top + 1 < stop and force[top + 1] > 1.02 * force[top]:
        top += 1
    return top


def _running(trace: live_rows.TypedTrace, top: int, stop: int) -> list[int]:
    found = [k for k in range(top + 1, stop) if trace.time[k] - trace.time[top] >= slip.FIRST]
    if len(found) < FEWEST:
        start = _as_typed(trace, float(trace.force[top]))
        came = f"{len(found)} number" if len(found) == 1 else f"{len(found)} numbers"
        after = f"after the start ({start}) there {'is' if len(found) == 1 else 'are'} {came}"
        raise Unreadable(f"{after}, too few to tell a running pull", "", _ACCEPTED)
    return found


def _numbers(
    trace: live_rows.TypedTrace, gauge: Gauge, held: float | None, top: int, running: list[int]
) -> _Numbers:
    run = trace.force[running]
    step = max(gauge.resolution or 0.0, trace.step)
    highest = held if held is not None else float(trace.force[top])
    mean = float(run.mean())
    missed = 0.0 if held is not None else max(highest - mean, MISSED * mean)
    slack = trace.force[:top]
    rest = float(slack[0]) if len(slack) and slack[0] < 0.05 * mean else 0.0
    return _Numbers(highest, run, step, missed, gauge, rest)


def _of(result: str, rows: Iterable[Contribution]) -> list[Contribution]:
    return [row for row in rows if row.result == result]


def _rows(it: _Numbers, held: bool) -> Iterable[Contribution]:
    ratio, gauge = it.top / it.mean, it.gauge
    missed = "start-up between two looks at the display"
    if not held:
        yield Contribution("start_up", missed, "B", it.missed * RECTANGLE)
    yield Contribution("start_up", "step of the display", "B", it.step * ROUNDING)
    yield Contribution("start_up", "scale of the gauge", "B", gauge.gain * it.top)
    yield Contribution("start_up", "zero of the gauge", "B", it.zero)
    yield Contribution("start_up", "line's way to the gauge", "B", gauge.way_unsure * it.top)
    yield Contribution("running", f"scatter of {len(it.run)} numbers", "A", it.of_mean)
    yield Contribution("running", "step of the display", "B", it.rounding)
    yield Contribution("running", "scale of the gauge", "B", gauge.gain * it.mean)
    yield Contribution("running", "zero of the gauge", "B", it.zero)
    yield Contribution("running", "line's way to the gauge", "B", gauge.way_unsure * it.mean)
    if not held:
        yield Contribution("start_up_ratio", missed, "B", it.missed * RECTANGLE / it.mean)
    scatter = ratio * it.of_mean / it.mean
    yield Contribution("start_up_ratio", f"scatter of {len(it.run)} numbers", "A", scatter)
    display = float(np.hypot(it.step * ROUNDING, ratio * it.rounding)) / it.mean
    yield Contribution("start_up_ratio", "step of the display", "B", display)
    yield Contribution("start_up_ratio", "zero of the gauge", "B", abs(1.0 - ratio) * it.zero / it.mean)


def _notes(trace: live_rows.TypedTrace, it: _Numbers, held: bool, running: list[int]) -> Iterable[str]:
    yield (
        f"Typed as the pull went: {len(trace.force)} numbers, {len(running)} of them while the line ran. "
        "Start-up and running pull can be told from them; judder and drift cannot."
    )
    if held:
        yield "The start-up pull is the highest that the scale held."
    else:
        yield (
            "The start-up pull is the highest number that was seen: one that was over before the display "
            "showed it stood higher. A scale that holds its highest says more."
        )
    if not it.gauge.stated:
        yield "The scale's accuracy was not given; the uncertainty holds its step and the scatter only."
    if float(it.run.max()) > it.top:
        yield "A number while the line ran is higher than the start: the drag rose as it ran."
    if running[-1] + 1 < len(trace.force):
        yield "The last numbers, when the line was let go, are not counted."
