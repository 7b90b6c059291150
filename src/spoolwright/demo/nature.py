"""What a reel of the demonstration really does: the physics behind its traces, before the work and after."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from math import sqrt
from random import Random

from spoolwright.judgement.free_spin import (
    FLICK_FALL,
    FLICK_MASS,
    GRAVITY,
    bare_inertia,
)
from spoolwright.judgement.prediction import Prediction, predict
from spoolwright.judgement.promises import PromisedReading
from spoolwright.judgement.quote_options import Option
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

WARM = 291.15
"""The bench in the demonstration is at 18 °C."""

FLICK_SHARE = 0.96
DRAWS = 400


@dataclass(frozen=True)
class Nature:
    """A reel as it is, SI: one setting of its drag, its most, its free spin, its play.

    `running` is the pull at `star_turns`, with the line leaving at `radius`; `spins` is how long it runs on
    from `flick` [rad/s]; where there is no spool to spin both are 0.
    """

    running: float
    ratio: float
    judder: float
    full: float
    radius: float
    star_turns: float
    flick: float = 0.0
    spins: float = 0.0
    end_float: float = 0.0
    feel: int = 1
    mass: float = 0.3


@lru_cache
def known(slug: str) -> ReelSheet:
    """A shipped sheet, read once."""
    return reel_sheet.load(slug)


@lru_cache
def sound(slug: str) -> Prediction:
    """What a sound reel of this model gives."""
    return predict(known(slug), {}, samples=DRAWS)


def flick_speed(sheet: ReelSheet) -> float:
    """Speed that the house's falling weight gives the spool [rad/s]."""
    energy = FLICK_MASS * GRAVITY * FLICK_FALL * FLICK_SHARE
    return sqrt(2 * energy / (bare_inertia(sheet) + FLICK_MASS * sheet.spool.arbor_radius**2))


def worn(slug: str, chance: Random) -> Nature:
    """A reel of this model as it comes in: some years behind it."""
    sheet, built = known(slug), sound(slug)
    tired = chance.uniform(0.72, 0.95)
    half = (sheet.drag.turns_to_full if sheet.drag else 4.0) / 2
    spin = built.values.get("spin_time")
    spins = spin.middle if spin else 0.0
    return Nature(
        running=tired * _pull_at(built, half),
        ratio=chance.uniform(1.18, 1.58),
        judder=chance.uniform(0.10, 0.28),
        full=tired * built.values["pull_full_spool"].middle,
        radius=sheet.spool.full_radius,
        star_turns=half,
        flick=flick_speed(sheet) if spins else 0.0,
        spins=spins * chance.uniform(0.3, 0.62),
        end_float=chance.choice((0.09e-3, 0.16e-3, 0.21e-3, 0.28e-3, 0.36e-3)),
        feel=chance.choice((1, 2, 2, 3, 3)),
        mass=(sheet.reel.mass or 0.3) + chance.uniform(-0.004, 0.005),
    )


def mended(before: Nature, option: Option, chance: Random, outcome: str = "shown", on: str = "") -> Nature:
    """The reel after the works of an option: as promised, or with one promise near its edge or broken.

    `outcome` is "shown", "not shown" or "failed", and holds for the promise of the kind `on`.
    """
    after = replace(
        before,
        ratio=min(before.ratio, option.predicted["start_up_ratio"].middle),
        judder=min(before.judder, option.predicted["judder"].middle),
        end_float=min(before.end_float, 0.10e-3),
        feel=chance.choice((0, 1)),
    )
    for promise in option.promises:
        value = _kept(promise, chance, outcome if promise.reading_kind == on else "shown")
        after = replace(after, **{_FIELDS[promise.reading_kind]: value})
    built = option.prediction.values["pull_full_spool"].middle
    half = _pull_at(option.prediction, before.star_turns)
    return replace(after, running=half * after.full / built)


_FIELDS = {
    "pull_full": "full",
    "start_up_ratio": "ratio",
    "judder": "judder",
    "spin_time": "spins",
    "end_float": "end_float",
}


def _kept(promise: PromisedReading, chance: Random, outcome: str) -> float:
    low, high = promise.low, promise.high
    if low is not None and high is not None:
        inside = {"shown": chance.uniform(0.35, 0.65), "not shown": 0.03, "failed": -0.45}[outcome]
        return low + (high - low) * inside
    if low is not None:
        return low * {"shown": chance.uniform(1.25, 1.45), "not shown": 1.03, "failed": 0.7}[outcome]
    # A ratio of one is the best there is: its promise is kept by what it has above one.
    floor = 1.0 if promise.reading_kind == "start_up_ratio" else 0.0
    part = {"shown": chance.uniform(0.40, 0.62), "not shown": 0.99, "failed": 1.7}[outcome]
    return floor + ((high or floor) - floor) * part


def _pull_at(prediction: Prediction, turns: float) -> float:
    rows: Sequence[tuple[float, float]] = [(row.turns, row.pull.middle) for row in prediction.star_turns]
    return min(rows, key=lambda row: abs(row[0] - turns))[1]
