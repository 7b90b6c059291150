"""A pull that was typed as it went, as it is kept: like every pull, each of its few numbers a point."""

from __future__ import annotations

from spoolwright.bench.live_pull import LiveReading
from spoolwright.bench.trace import PullTrace
from spoolwright.shop.records.signals import KeptPull


def kept_live(trace: PullTrace, read: LiveReading) -> KeptPull:
    """What will be kept of it; a page draws it from this before anything is written."""
    return KeptPull(
        times=tuple(map(float, trace.time)),
        forces=tuple(map(float, trace.force)),
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
