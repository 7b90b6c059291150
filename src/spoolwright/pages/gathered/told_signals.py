"""The pictures behind a reading, whatever was kept of it: each kind of signal has its teller here."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from spoolwright.pages.gathered import inertia
from spoolwright.papers import charts
from spoolwright.papers.charts import PAPER_WIDTH, Chart, Pull, Spin
from spoolwright.shop.questions.kept_inertia import inertia_of
from spoolwright.shop.questions.signals import pull_of, spin_of

Teller = Callable[[Any, str, int | None], tuple[Chart, ...]]


def pictures_of(reading: Any, system: str, width: int | None = PAPER_WIDTH) -> tuple[Chart, ...]:
    """Trace and fit of a reading in ink; none where nothing was kept that could be drawn."""
    teller = TELLERS.get(reading.analysis.get("signal", ""))
    return teller(reading, system, width) if teller else ()


def _pull(reading: Any, system: str, width: int | None) -> tuple[Chart, ...]:
    kept = pull_of(reading)
    if kept is None:
        return ()
    shown = Pull(kept.times, kept.forces, kept.slip_start, kept.slip_end, kept.start_up, kept.running)
    return (charts.pull_trace(shown, system=system, width=width),)


def _spin(reading: Any, system: str, width: int | None) -> tuple[Chart, ...]:
    kept = spin_of(reading)
    if kept is None:
        return ()
    shown = Spin(kept.times, kept.speeds, kept.fitted, kept.counted_in, kept.stop_time)
    return (charts.spin_down(shown, system=system, width=width),)


def _inertia(reading: Any, system: str, width: int | None) -> tuple[Chart, ...]:
    kept = inertia_of(reading)
    if kept is None:
        return ()
    swing = inertia.swing_chart(kept, system, width)
    beside = inertia.chart(kept, system, width=width)
    return (swing, beside) if swing else (beside,)


TELLERS: dict[str, Teller] = {"pull": _pull, "spin": _spin, "inertia": _inertia}
