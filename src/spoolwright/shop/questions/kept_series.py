"""A series of pulls as it will be kept: fitted, weighed against the reel's sheet, said in words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.bench import pull_fade, pull_series, pull_speed
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import drag_series, drag_series_words, repeat_words
from spoolwright.judgement.prediction import predict
from spoolwright.quantities import SYSTEMS
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.shop.records.kept_series import ALONG, KeptSeries, series_from
from spoolwright.shop.records.reading import Reading

__all__ = ["ALONG", "Drag", "Earlier", "KeptSeries", "earlier_series", "kept_series", "series_of"]


@dataclass(frozen=True)
class Drag:
    """What is known of the drag beside its pulls: its sheet, the radius of the line [m], facts."""

    sheet: ReelSheet | None
    radius: float | None = None
    felt: bool = False
    earlier: KeptSeries | None = None
    lost: Measured | None = None
    ruled_out: frozenset[str] = frozenset()


@dataclass(frozen=True)
class Earlier:
    """A series of the same reel that may be compared with: the reading's number, when, and what was kept."""

    number: int
    written_at: Any
    kept: KeptSeries


def series_of(reading: Reading) -> KeptSeries | None:
    return series_from(reading.analysis)


def earlier_series(reel: Any) -> tuple[Earlier, ...]:
    """Every series over settings of this reel that stands, the latest first."""
    found = (
        Reading.objects.filter(way="pull series", entry__visit__reel=reel, entry__strike=None)
        .select_related("entry")
        .order_by("-entry__written_at")[:12]
    )
    kept = ((reading, series_of(reading)) for reading in found)
    return tuple(
        Earlier(reading.pk, reading.entry.written_at, one)
        for reading, one in kept
        if one is not None and one.along == "turns"
    )


def kept_series(along: str, pulls: Sequence[OnePull], gauge: Gauge, drag: Drag) -> KeptSeries:
    """What will be kept of a series; a page draws it from this before anything is written.

    Raises `Unreadable` where the pulls say nothing.
    """
    if along == "number":
        return _fade(pulls)
    if along == "speed":
        return _speed(pulls)
    return _settings(pulls, gauge, drag)


def _settings(pulls: Sequence[OnePull], gauge: Gauge, drag: Drag) -> KeptSeries:
    series = pull_series.fit(pulls, gauge)
    results = [("pull_per_turn", series.per_turn), ("drag_onset", series.onset)]
    if series.start_up_ratio is not None:
        results.append(("series_start_ratio", series.start_up_ratio))
    found = _weighed(series, drag)
    return KeptSeries(
        along="turns",
        pulls=series.pulls,
        results=tuple(results),
        fitted=series.fitted,
        band=_band(drag),
        verdict=found.verdict if found else "",
        said={system: _said(series, found, drag, system) for system in SYSTEMS},
        gain=float((gauge.gain**2 + gauge.way_unsure**2) ** 0.5),
        notes=series.notes,
        budget=series.budget,
    )


def _weighed(series: pull_series.PullSeries, drag: Drag) -> drag_series.SeriesVerdict | None:
    if drag.sheet is None or drag.sheet.drag is None or drag.radius is None:
        return None
    earlier = pull_series.fit(drag.earlier.pulls, _gauge_of(drag.earlier)) if drag.earlier else None
    case = drag_series.Case(drag.sheet, series, drag.radius, drag.felt, earlier, drag.lost, drag.ruled_out)
    return drag_series.weigh(case)


def _gauge_of(kept: KeptSeries) -> Gauge:
    return Gauge(way_unsure=kept.gain)


def _said(
    series: pull_series.PullSeries, found: drag_series.SeriesVerdict | None, drag: Drag, system: str
) -> tuple[str, ...]:
    if found is None:
        said = drag_series_words.read_out(series, system, setting_of(drag.sheet))
        return (*said, "Without the reel's sheet nothing more can be said of its drag.")
    levels = drag_series_words.read_out(series, system, setting_of(drag.sheet))[2:]
    grows = tuple(line for line in levels if "grows no more" in line)
    return (drag_series_words.verdict_words(found), *grows, *drag_series_words.evidence(found, system))


def _band(drag: Drag) -> tuple[tuple[float, ...], ...]:
    """What the sheet expects of a sound drag at this radius, setting by setting."""
    if drag.sheet is None or drag.sheet.drag is None or drag.radius is None:
        return ()
    share = drag.sheet.spool.full_radius / drag.radius
    rows = predict(drag.sheet, {}, samples=600).star_turns
    return tuple((row.turns, row.pull.low * share, row.pull.high * share) for row in rows)


def _fade(pulls: Sequence[OnePull]) -> KeptSeries:
    found = pull_fade.fit(pulls)
    said = {system: repeat_words.fade_words(found, system) for system in SYSTEMS}
    results = (("pull_fade", found.change),)
    return KeptSeries(
        "number", found.pulls, results, found.fitted, (), found.verdict, said, notes=found.notes
    )


def _speed(pulls: Sequence[OnePull]) -> KeptSeries:
    found = pull_speed.fit(pulls)
    said = {system: repeat_words.speed_words(found, system) for system in SYSTEMS}
    results = [("pull_by_speed", found.per_tenfold)]
    if found.start_up_ratio is not None:
        results.append(("series_start_ratio", found.start_up_ratio))
    return KeptSeries("speed", found.pulls, tuple(results), (), (), found.verdict, said, notes=found.notes)
