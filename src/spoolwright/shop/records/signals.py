"""What is kept of a signal beside its values: enough to draw its picture again without opening the file.

A reading's `analysis` column holds one of these as plain data; "signal" in it says which.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.bench.budget import Contribution
from spoolwright.bench.uncertainty import Measured


@dataclass(frozen=True)
class KeptPull:
    """One pull: samples in s and N (thinned, peaks and all), when it slipped, and what was said of it."""

    times: tuple[float, ...]
    forces: tuple[float, ...]
    slip_start: float
    slip_end: float
    start_up: Measured
    running: Measured
    rate: float
    number: int
    pulls: int
    notes: tuple[str, ...] = ()
    budget: tuple[Contribution, ...] = ()

    def as_data(self) -> dict[str, Any]:
        return {
            "signal": "pull",
            "times": _short(self.times, 4),
            "forces": _short(self.forces, 3),
            "slip": [self.slip_start, self.slip_end],
            "start_up": [self.start_up.value, self.start_up.uncertainty],
            "running": [self.running.value, self.running.uncertainty],
            "rate": self.rate,
            "number": self.number,
            "pulls": self.pulls,
            "notes": list(self.notes),
            "budget": [_row(row) for row in self.budget],
        }


@dataclass(frozen=True)
class KeptSpin:
    """One coast-down: speeds between ticks in s and rad/s, the fit, and which turns no tick was heard for."""

    times: tuple[float, ...]
    speeds: tuple[float, ...]
    fitted: tuple[float, ...]
    counted_in: tuple[bool, ...]
    stop_time: Measured
    ticks_used: int
    ticks_mended: int
    relative_rms: float
    notes: tuple[str, ...] = ()
    budget: tuple[Contribution, ...] = ()
    before: tuple[tuple[float, float], ...] = ()
    after: tuple[tuple[float, float], ...] = ()
    heard_as: str = "ticks"
    verdict: str = ""
    evidence: tuple[str, ...] = ()

    def as_data(self) -> dict[str, Any]:
        return {
            "signal": "spin",
            "times": _short(self.times, 4),
            "speeds": _short(self.speeds, 3),
            "fitted": _short(self.fitted, 3),
            "counted_in": [int(flag) for flag in self.counted_in],
            "stop_time": [self.stop_time.value, self.stop_time.uncertainty],
            "ticks": [self.ticks_used, self.ticks_mended],
            "relative_rms": self.relative_rms,
            "notes": list(self.notes),
            "budget": [_row(row) for row in self.budget],
            "before": [_short(point, 3) for point in self.before],
            "after": [_short(point, 3) for point in self.after],
            "heard_as": self.heard_as,
            "verdict": self.verdict,
            "evidence": list(self.evidence),
        }


def pull_from(data: Mapping[str, Any]) -> KeptPull | None:
    """The pull that was kept, or None where the data holds none."""
    if data.get("signal") != "pull":
        return None
    return KeptPull(
        times=tuple(data["times"]),
        forces=tuple(data["forces"]),
        slip_start=data["slip"][0],
        slip_end=data["slip"][1],
        start_up=Measured(*data["start_up"], "force"),
        running=Measured(*data["running"], "force"),
        rate=data["rate"],
        number=data["number"],
        pulls=data["pulls"],
        notes=tuple(data["notes"]),
        budget=tuple(Contribution(*row) for row in data["budget"]),
    )


def spin_from(data: Mapping[str, Any]) -> KeptSpin | None:
    """The coast-down that was kept, or None where the data holds none."""
    if data.get("signal") != "spin":
        return None
    return KeptSpin(
        times=tuple(data["times"]),
        speeds=tuple(data["speeds"]),
        fitted=tuple(data["fitted"]),
        counted_in=tuple(map(bool, data["counted_in"])),
        stop_time=Measured(*data["stop_time"], "time"),
        ticks_used=data["ticks"][0],
        ticks_mended=data["ticks"][1],
        relative_rms=data["relative_rms"],
        notes=tuple(data["notes"]),
        budget=tuple(Contribution(*row) for row in data["budget"]),
        before=_points(data.get("before", ())),
        after=_points(data.get("after", ())),
        heard_as=data.get("heard_as", "ticks"),
        verdict=data.get("verdict", ""),
        evidence=tuple(data.get("evidence", ())),
    )


def _points(rows: Sequence[Sequence[float]]) -> tuple[tuple[float, float], ...]:
    """Times and speeds that were cut off; spins that were written before these were kept hold none."""
    return tuple((float(moment), float(speed)) for moment, speed in rows)


def _short(values: Sequence[float], places: int) -> list[float]:
    return [round(float(value), places) for value in values]


def _row(row: Contribution) -> list[Any]:
    return [row.result, row.source, row.way, float(row.uncertainty)]
