"""What is kept of a moment of inertia beside its value: the method, what went in, what the sheet says.

A reading's `analysis` column holds it as plain data; "signal" in it says "inertia".
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from spoolwright.bench.budget import Contribution
from spoolwright.bench.uncertainty import Measured


@dataclass(frozen=True)
class KeptSwing:
    """The record of a swing, thinned: s, the record and its fit in the record's unit, period and decay."""

    times: tuple[float, ...]
    signal: tuple[float, ...]
    fitted: tuple[float, ...]
    period: Measured
    decay: Measured


@dataclass(frozen=True)
class KeptInertia:
    """One result by one method. `inputs` are what went in; `sheet` what the reel's sheet says."""

    method: str
    inertia: Measured
    inputs: tuple[tuple[str, Measured], ...]
    budget: tuple[Contribution, ...]
    notes: tuple[str, ...] = ()
    friction: Measured | None = None
    sheet: Measured | None = None
    swing: KeptSwing | None = None

    def as_data(self) -> dict[str, Any]:
        return {
            "signal": "inertia",
            "method": self.method,
            "inertia": _measured(self.inertia),
            "inputs": [[words, *_measured(one)] for words, one in self.inputs],
            "budget": [[row.result, row.source, row.way, float(row.uncertainty)] for row in self.budget],
            "notes": list(self.notes),
            "friction": _measured(self.friction) if self.friction else None,
            "sheet": _measured(self.sheet) if self.sheet else None,
            "swing": _swing(self.swing) if self.swing else None,
        }


def inertia_from(data: Mapping[str, Any]) -> KeptInertia | None:
    """The inertia that was kept, or None where the data holds none."""
    if data.get("signal") != "inertia":
        return None
    return KeptInertia(
        method=data["method"],
        inertia=Measured(*data["inertia"]),
        inputs=tuple((words, Measured(*one)) for words, *one in data["inputs"]),
        budget=tuple(Contribution(*row) for row in data["budget"]),
        notes=tuple(data["notes"]),
        friction=Measured(*data["friction"]) if data["friction"] else None,
        sheet=Measured(*data["sheet"]) if data["sheet"] else None,
        swing=_swing_from(data["swing"]) if data["swing"] else None,
    )


def _measured(one: Measured) -> list[Any]:
    return [float(one.value), float(one.uncertainty), one.dimension]


def _swing(swing: KeptSwing) -> dict[str, Any]:
    return {
        "times": _short(swing.times),
        "signal": _short(swing.signal),
        "fitted": _short(swing.fitted),
        "period": _measured(swing.period),
        "decay": _measured(swing.decay),
    }


def _swing_from(data: Mapping[str, Any]) -> KeptSwing:
    return KeptSwing(
        times=tuple(data["times"]),
        signal=tuple(data["signal"]),
        fitted=tuple(data["fitted"]),
        period=Measured(*data["period"]),
        decay=Measured(*data["decay"]),
    )


def _short(values: Sequence[float]) -> list[float]:
    return [float(f"{value:.5g}") for value in values]
