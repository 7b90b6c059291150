"""The signal behind a reading as a picture: its chart, and the words that stand under its small line."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright import quantities
from spoolwright.pages.diary.told import series
from spoolwright.pages.gathered import inertia, noise
from spoolwright.pages.words.budget import RESULTS as RESULTS
from spoolwright.pages.words.budget import BudgetRow as BudgetRow
from spoolwright.pages.words.budget import budget_rows as budget_rows
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart
from spoolwright.papers.figures import Span
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.shop.questions.kept_inertia import KeptInertia
from spoolwright.shop.questions.kept_noise import KeptNoise
from spoolwright.shop.questions.kept_series import KeptSeries
from spoolwright.shop.questions.signals import KeptPull, KeptSpin


@dataclass(frozen=True)
class SmallLine:
    """What `pull_line` draws: moments, heights, the words under it, and the level ruled across."""

    times: Sequence[float]
    heights: Sequence[float]
    words: str
    level: float | None


def small_pull(pull: KeptPull) -> SmallLine:
    lasts = quantities.show(pull.times[-1] - pull.times[0], "time")
    first = quantities.show(pull.slip_start, "time")
    rate = f"{pull.rate:.3g} readings a second"
    return SmallLine(
        pull.times, pull.forces, f"{lasts} at {rate}; first slip after {first}", pull.running.value
    )


def small_spin(spin: KeptSpin) -> SmallLine:
    words = f"speed against time, {spin.ticks_used} ticks, {spin.ticks_mended} of them mended"
    if spin.heard_as == "hum":
        words = f"speed against time, from the tone in {spin.ticks_used} pieces of the sound"
    return SmallLine(spin.times, spin.speeds, words, None)


def heard(spin: KeptSpin) -> str:
    """How much of the recording was used, and what was left out of it."""
    if spin.heard_as == "hum":
        used = f"the tone in {spin.ticks_used} pieces of the sound, {spin.ticks_mended} left out"
    else:
        used = f"{spin.ticks_used} ticks used, {spin.ticks_mended} mended (heard twice, or not at all)"
    hand = f"; {len(spin.before)} points before it left out, a hand was at work" if spin.before else ""
    touch = f"; {len(spin.after)} points after it left out" if spin.after else ""
    return f"{used}{hand}{touch}"


def pull_chart(pull: KeptPull, system: str, promised: Span | None = None) -> Chart:
    drawn = charts.Pull(
        times=pull.times,
        forces=pull.forces,
        slip_start=pull.slip_start,
        slip_end=pull.slip_end,
        start_up=pull.start_up,
        running=pull.running,
        promised=promised,
    )
    return charts.pull_trace(drawn, system=system)


def spin_chart(spin: KeptSpin, system: str) -> Chart:
    drawn = charts.Spin(
        times=spin.times,
        speeds=spin.speeds,
        fitted=spin.fitted,
        mended=spin.counted_in,
        stop_time=spin.stop_time,
        before=spin.before,
        after=spin.after,
    )
    return charts.spin_down(drawn, system=system)


def chart_of(
    kept: KeptPull | KeptSpin | KeptInertia | KeptSeries | KeptNoise,
    system: str,
    promised: Span | None = None,
    setting: DragSetting = STAR,
) -> Chart:
    if isinstance(kept, KeptNoise):
        return noise.chart(kept, system)
    if isinstance(kept, KeptSeries):
        return series.chart(kept, system, setting)
    if isinstance(kept, KeptInertia):
        return inertia.swing_chart(kept, system) or inertia.chart(kept, system)
    if isinstance(kept, KeptPull):
        return pull_chart(kept, system, promised)
    return spin_chart(kept, system)


def is_per_inertia(reading: Any) -> bool:
    """Whether the drags behind this reading's budget are per inertia, because none was known."""
    return not any(value.kind == "spin_constant" for value in reading.values.all())
