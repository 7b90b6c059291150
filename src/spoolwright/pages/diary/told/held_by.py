"""What holds a free spool, in plain words: the three drags of a spin-down and how much each counts."""

from __future__ import annotations

from collections.abc import Mapping

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.words import shown

PLAIN = {
    "spin_constant": "dry friction in bearings and at the ends",
    "spin_viscous": "oil and magnets",
    "spin_quadratic": "air and brake blocks",
}
KINDS = tuple(PLAIN)


def in_words(found: Mapping[str, Measured], system: str) -> tuple[str, ...]:
    """Two sentences: the drags as they were fitted, and the share of each at the first speed."""
    drags = {kind: found[kind] for kind in KINDS if kind in found}
    if len(drags) < len(KINDS):
        return ()
    each = "; ".join(
        f"{PLAIN[kind]} {shown.quantity(m.value, m.dimension, system, m.expanded)}"
        for kind, m in drags.items()
    )
    return (f"The spool is held by: {each}.", *_shares(drags, found.get("spin_initial_speed"), system))


def _shares(drags: Mapping[str, Measured], first: Measured | None, system: str) -> tuple[str, ...]:
    if first is None:
        return ()
    torques = {kind: m.value * first.value**power for power, (kind, m) in enumerate(drags.items())}
    whole = sum(torques.values())
    if not whole > 0:
        return ()
    said = ", ".join(f"{PLAIN[kind]} about {100 * part / whole:.0f} %" for kind, part in torques.items())
    return (f"Of the whole at {shown.quantity(first.value, 'rotation', system)}: {said}.",)
