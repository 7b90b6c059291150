"""The moment of inertia behind a reading, as it was kept, and what will be kept of one."""

from __future__ import annotations

from spoolwright.bench.inertia_reading import InertiaReading
from spoolwright.bench.swing import Swing
from spoolwright.bench.thinning import MOST
from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.records.kept_inertia import KeptInertia, KeptSwing, inertia_from
from spoolwright.shop.records.reading import Reading

__all__ = ["KeptInertia", "KeptSwing", "inertia_of", "kept_inertia"]


def inertia_of(reading: Reading) -> KeptInertia | None:
    return inertia_from(reading.analysis)


def kept_inertia(
    method: str, read: InertiaReading, swing: Swing | None = None, sheet: Measured | None = None
) -> KeptInertia:
    """`method` is its id in the table of methods; `sheet` what the reel's sheet says of the same spool."""
    return KeptInertia(
        method=method,
        inertia=read.inertia,
        inputs=tuple((known.words, known.measured) for known in read.inputs.values()),
        budget=read.budget,
        notes=(*read.notes, *(swing.notes if swing else ())),
        friction=read.friction,
        sheet=sheet,
        swing=_kept_swing(swing) if swing else None,
    )


def _kept_swing(swing: Swing) -> KeptSwing:
    every = max(1, -(-len(swing.time) // MOST))
    return KeptSwing(
        times=tuple(float(v) for v in swing.time[::every]),
        signal=tuple(float(v) for v in swing.signal[::every]),
        fitted=tuple(float(v) for v in swing.fitted[::every]),
        period=swing.period,
        decay=swing.decay,
    )
