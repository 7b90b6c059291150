"""What is kept of a noise beside its value: the verdict, what it rests on, and the spectrum that shows it.

A reading's `analysis` column holds it as plain data; "signal" in it says "noise".
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.bench.budget import Contribution
from spoolwright.bench.uncertainty import Measured

BEARING, GEARS = "bearing", "gears"


@dataclass(frozen=True)
class KeptNoise:
    """One verdict on a bearing or on gears.

    `about` is "bearing" or "gears", `place` which of them, `speed` how fast it turned [rad/s], None for a
    coast. `named` are the rates that were looked for, by their names; with `frequencies` they are in `unit`,
    Hz or times a turn. `swelling` is how much loudness swells at each, from `low` to `high` Hz.
    """

    about: str
    place: str
    speed: float | None
    verdict: str
    confidence: float
    evidence: tuple[str, ...]
    unit: str
    named: tuple[tuple[str, float], ...]
    frequencies: tuple[float, ...]
    swelling: tuple[float, ...]
    low: float
    high: float
    strength: Measured
    notes: tuple[str, ...] = ()

    @property
    def budget(self) -> tuple[Contribution, ...]:
        """A verdict has evidence and no budget."""
        return ()

    def as_data(self) -> dict[str, Any]:
        return {
            "signal": "noise",
            "about": self.about,
            "place": self.place,
            "speed": self.speed,
            "verdict": self.verdict,
            "confidence": self.confidence,
            "evidence": list(self.evidence),
            "unit": self.unit,
            "named": [[words, _short(rate)] for words, rate in self.named],
            "frequencies": [_short(value) for value in self.frequencies],
            "swelling": [_short(value) for value in self.swelling],
            "band": [self.low, self.high],
            "strength": [self.strength.value, self.strength.uncertainty],
            "notes": list(self.notes),
        }


def noise_from(data: Mapping[str, Any]) -> KeptNoise | None:
    """The noise that was kept, or None where the data holds none."""
    if data.get("signal") != "noise":
        return None
    return KeptNoise(
        about=data["about"],
        place=data["place"],
        speed=data["speed"],
        verdict=data["verdict"],
        confidence=data["confidence"],
        evidence=tuple(data["evidence"]),
        unit=data["unit"],
        named=_pairs(data["named"]),
        frequencies=tuple(data["frequencies"]),
        swelling=tuple(data["swelling"]),
        low=data["band"][0],
        high=data["band"][1],
        strength=Measured(*data["strength"], "ratio"),
        notes=tuple(data["notes"]),
    )


def _pairs(rows: Sequence[Any]) -> tuple[tuple[str, float], ...]:
    return tuple((words, rate) for words, rate in rows)


def _short(value: float) -> float:
    return float(f"{value:.5g}")
