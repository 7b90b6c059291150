"""The signal behind a reading, as it was kept: for its small line in the diary and for its chart."""

from __future__ import annotations

from collections.abc import Sequence

from spoolwright.bench.pull_reading import PullReading
from spoolwright.bench.spin_down import SpinDown
from spoolwright.bench.thinning import MOST, thinned
from spoolwright.bench.trace import PullTrace
from spoolwright.judgement.spin_verdict import SpinVerdict
from spoolwright.shop.records.reading import Reading
from spoolwright.shop.records.signals import KeptPull, KeptSpin, pull_from, spin_from

CUT_OFF_SHOWN = 60

__all__ = ["KeptPull", "KeptSpin", "kept_pull", "kept_spin", "pull_of", "spin_of"]


def pull_of(reading: Reading) -> KeptPull | None:
    return pull_from(reading.analysis)


def spin_of(reading: Reading) -> KeptSpin | None:
    return spin_from(reading.analysis)


def kept_pull(trace: PullTrace, read: PullReading) -> KeptPull:
    """What will be kept of a trace; a page draws it from this before anything is written."""
    points = thinned(trace.time, trace.force)
    return KeptPull(
        times=tuple(moment for moment, _ in points),
        forces=tuple(force for _, force in points),
        slip_start=read.slip_start,
        slip_end=read.slip_end,
        start_up=read.start_up,
        running=read.running,
        rate=trace.found.rate,
        number=read.pull_number,
        pulls=read.pulls,
        notes=read.notes,
        budget=read.budget,
    )


def kept_spin(spin: SpinDown, verdict: SpinVerdict | None = None) -> KeptSpin:
    """What will be kept of a coast-down; every turn that no tick was heard for stays among the points."""
    every = max(1, len(spin.time) // MOST)
    kept = [k for k in range(len(spin.time)) if k % every == 0 or spin.turns[k] > 1]
    return KeptSpin(
        times=tuple(float(spin.time[k]) for k in kept),
        speeds=tuple(float(spin.speed[k]) for k in kept),
        fitted=tuple(float(spin.fitted[k]) for k in kept),
        counted_in=tuple(bool(spin.turns[k] > 1) for k in kept),
        stop_time=spin.stop_time,
        ticks_used=spin.ticks_used,
        ticks_mended=spin.ticks_mended,
        relative_rms=spin.relative_rms,
        notes=spin.notes,
        budget=spin.budget,
        before=tuple(spaced(spin.cut_off.before)),
        after=tuple(spaced(spin.cut_off.after)),
        heard_as=spin.heard_as,
        verdict=verdict.words if verdict else "",
        evidence=verdict.evidence if verdict else (),
    )


def spaced(points: Sequence[tuple[float, float]]) -> list[tuple[float, float]]:
    """At most sixty of the points that were cut off: enough to be seen."""
    every = max(1, -(-len(points) // CUT_OFF_SHOWN))
    return list(points[::every])
