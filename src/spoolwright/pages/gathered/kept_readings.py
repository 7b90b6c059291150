"""Readings as a key: what is worked out from them can be kept in this process until they change."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.taken import Taken

FrozenTaken = tuple[str, float, float, str, tuple[tuple[str, Any], ...]]


def frozen(readings: Mapping[str, tuple[Taken, ...]]) -> tuple[FrozenTaken, ...]:
    """Readings as a key to keep a prediction under."""
    return tuple(
        (
            t.kind,
            t.measured.value,
            t.measured.uncertainty,
            t.measured.dimension,
            tuple(sorted(t.conditions.items())),
        )
        for several in readings.values()
        for t in several
    )


def thawed(taken: tuple[FrozenTaken, ...]) -> dict[str, tuple[Taken, ...]]:
    """The same readings as judgement takes them."""
    found: dict[str, list[Taken]] = {}
    for kind, value, uncertainty, dimension, conditions in taken:
        found.setdefault(kind, []).append(
            Taken(kind, Measured(value, uncertainty, dimension), dict(conditions))
        )
    return {kind: tuple(several) for kind, several in found.items()}
