"""What a paper shows and says of the signal behind a reading: each kind of signal has its teller here."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from spoolwright.pages.gathered import inertia, noise
from spoolwright.papers import charts
from spoolwright.papers.charts import PAPER_WIDTH, Chart, Pull, Spin
from spoolwright.shop.questions.kept_inertia import inertia_of
from spoolwright.shop.questions.kept_noise import noise_of
from spoolwright.shop.questions.kept_series import series_of
from spoolwright.shop.questions.signals import pull_of, spin_of


@dataclass(frozen=True)
class ToldSignal:
    """Trace and fit as charts of a paper's width, what is said of them, and what went in."""

    pictures: tuple[Chart, ...] = ()
    said: tuple[str, ...] = ()
    inputs: tuple[tuple[str, str], ...] = ()


Teller = Callable[[Any, str], ToldSignal]
NOTHING = ToldSignal()


def told(reading: Any, system: str) -> ToldSignal:
    """Of a reading in ink; nothing where nothing was kept that could be drawn."""
    teller = TELLERS.get(reading.analysis.get("signal", ""))
    return teller(reading, system) if teller else NOTHING


def _pull(reading: Any, system: str) -> ToldSignal:
    kept = pull_of(reading)
    if kept is None:
        return NOTHING
    shown = Pull(kept.times, kept.forces, kept.slip_start, kept.slip_end, kept.start_up, kept.running)
    return ToldSignal((charts.pull_trace(shown, system=system, width=PAPER_WIDTH),))


def _spin(reading: Any, system: str) -> ToldSignal:
    kept = spin_of(reading)
    if kept is None:
        return NOTHING
    shown = Spin(
        kept.times,
        kept.speeds,
        kept.fitted,
        kept.counted_in,
        kept.stop_time,
        before=kept.before,
        after=kept.after,
    )
    said = (f"What the spin says: {kept.verdict}.", *kept.evidence) if kept.verdict else ()
    return ToldSignal((charts.spin_down(shown, system=system, width=PAPER_WIDTH),), said)


def _inertia(reading: Any, system: str) -> ToldSignal:
    kept = inertia_of(reading)
    if kept is None:
        return NOTHING
    swing = inertia.swing_chart(kept, system, PAPER_WIDTH)
    beside = inertia.chart(kept, system, width=PAPER_WIDTH)
    pictures = (swing, beside) if swing else (beside,)
    return ToldSignal(pictures, inertia.in_words(kept, system), inertia.inputs(kept, system))


def _series(reading: Any, system: str) -> ToldSignal:
    kept = series_of(reading)
    if kept is None:
        return NOTHING
    says = (
        "Each dot is one pull; the line is the fit through them, the band what the reel\u2019s sheet expects."
    )
    drawn = charts.Series(kept.along, kept.pulls, kept.fitted, kept.band, says)
    pictures = (charts.pull_series(drawn, system=system, width=PAPER_WIDTH),)
    return ToldSignal(pictures, tuple(kept.said.get(system, ())))


def _noise(reading: Any, system: str) -> ToldSignal:
    kept = noise_of(reading)
    if kept is None:
        return NOTHING
    pictures = (noise.chart(kept, system, PAPER_WIDTH),) if kept.frequencies else ()
    return ToldSignal(pictures, noise.in_words(kept, system))


TELLERS: dict[str, Teller] = {
    "pull": _pull,
    "spin": _spin,
    "inertia": _inertia,
    "pull series": _series,
    "noise": _noise,
}
