"""What is kept of a series of pulls beside its values: the pulls, the line through them, what was said.

A reading's `analysis` column holds it as plain data; "signal" in it says "pull series".
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.bench.budget import Contribution
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.uncertainty import Measured

ALONG = ("turns", "number", "speed")
"""What was changed from pull to pull."""

Points = tuple[tuple[float, ...], ...]


@dataclass(frozen=True)
class KeptSeries:
    """A series: pulls put right [N], results by kind, the line [at, N], the sheet's band [at, low, high].

    `said` holds sentences for metric and for imperial readers; `gain` what is unsure of the gauge's scale.
    """

    along: str
    pulls: tuple[OnePull, ...]
    results: tuple[tuple[str, Measured], ...]
    fitted: Points
    band: Points
    verdict: str
    said: Mapping[str, tuple[str, ...]]
    gain: float = 0.0
    notes: tuple[str, ...] = ()
    budget: tuple[Contribution, ...] = ()

    def as_data(self) -> dict[str, Any]:
        return {
            "signal": "pull series",
            "along": self.along,
            "pulls": [[p.at, p.running, p.start_up, p.step, p.judder] for p in self.pulls],
            "results": [[kind, it.value, it.uncertainty, it.dimension] for kind, it in self.results],
            "fitted": _rows(self.fitted),
            "band": _rows(self.band),
            "verdict": self.verdict,
            "said": {system: list(lines) for system, lines in self.said.items()},
            "gain": self.gain,
            "notes": list(self.notes),
            "budget": [[row.result, row.source, row.way, float(row.uncertainty)] for row in self.budget],
        }


def series_from(data: Mapping[str, Any]) -> KeptSeries | None:
    """The series that was kept, or None where the data holds something else."""
    if data.get("signal") != "pull series":
        return None
    return KeptSeries(
        along=data["along"],
        pulls=tuple(OnePull(*row) for row in data["pulls"]),
        results=tuple((kind, Measured(*rest)) for kind, *rest in data["results"]),
        fitted=tuple(map(tuple, data["fitted"])),
        band=tuple(map(tuple, data["band"])),
        verdict=data["verdict"],
        said={system: tuple(lines) for system, lines in data["said"].items()},
        gain=data["gain"],
        notes=tuple(data["notes"]),
        budget=tuple(Contribution(*row) for row in data["budget"]),
    )


def _rows(points: Sequence[Sequence[float]]) -> list[list[float]]:
    return [[round(float(value), 4) for value in point] for point in points]
