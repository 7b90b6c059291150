"""The noise behind a reading, as it was kept, and what will be kept of one."""

from __future__ import annotations

from math import sqrt

import numpy as np

from spoolwright.bench.bearing_noise import BearingNoise
from spoolwright.bench.envelope import LineSpectrum
from spoolwright.bench.gear_noise import GearNoise, Gears
from spoolwright.bench.thinning import MOST
from spoolwright.bench.tooth_loudness import LoudTooth
from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.records.kept_noise import BEARING, GEARS, KeptNoise, noise_from
from spoolwright.shop.records.reading import Reading

__all__ = [
    "BEARING",
    "GEARS",
    "KeptNoise",
    "drawn_noise_of",
    "kept_bearing",
    "kept_gears",
    "noise_of",
    "thinned_lines",
]

_PARTS = {"outer": "outer ring", "inner": "inner ring", "ball": "ball", "cage": "cage"}
_WHEELS = {"main": "main gear", "pinion": "pinion", "idler": "wheel between them"}
_LINES_IN_A_COMB = 5
_AS_DEVIATION = 1.4826


def noise_of(reading: Reading) -> KeptNoise | None:
    return noise_from(reading.analysis)


def drawn_noise_of(reading: Reading) -> KeptNoise | None:
    """The noise where it has a spectrum to draw; a recording that was too short has none."""
    kept = noise_of(reading)
    return kept if kept and kept.frequencies else None


def kept_bearing(heard: BearingNoise, place: str, speed: float | None) -> KeptNoise:
    """`speed` is what the shaft was held at [rad/s], None where the spool coasted."""
    spectrum = heard.spectrum
    frequencies, swelling = thinned_lines(spectrum) if spectrum else ((), ())
    return KeptNoise(
        about=BEARING,
        place=place,
        speed=speed,
        verdict=heard.verdict,
        confidence=heard.confidence,
        evidence=heard.evidence,
        unit=heard.unit,
        named=(*((_PARTS[part], rate) for part, rate in heard.rates.items()), ("each turn", heard.turns)),
        frequencies=frequencies,
        swelling=swelling,
        low=spectrum.low if spectrum else 0.0,
        high=spectrum.high if spectrum else 0.0,
        strength=_strength(heard),
        notes=heard.notes,
    )


def kept_gears(heard: GearNoise, gears: Gears) -> KeptNoise:
    """Drawn is the wheel that was named, else the one on which a tooth is loudest most often."""
    loudest = heard.loudest
    shown = heard.verdict if heard.verdict in loudest else None
    shown = shown or min(loudest, key=lambda name: loudest[name].log_chance, default=None)
    wheel = loudest[shown] if shown else None
    per = len(wheel.profile) // wheel.teeth if wheel else 1
    return KeptNoise(
        about=GEARS,
        place=" and ".join(f"{_WHEELS[name]} of {teeth} teeth" for name, teeth in gears.wheels.items()),
        speed=heard.speed,
        verdict=heard.verdict,
        confidence=heard.confidence,
        evidence=heard.evidence,
        unit="teeth",
        named=((_WHEELS[shown], float(wheel.teeth)),) if shown and wheel else (),
        frequencies=tuple(k / per for k in range(len(wheel.profile))) if wheel else (),
        swelling=tuple(float(loud) - 1 for loud in wheel.profile) if wheel else (),
        low=wheel.low if wheel else 0.0,
        high=wheel.high if wheel else 0.0,
        strength=_loud(wheel) if wheel else Measured(0.0, 0.0, "ratio"),
        notes=heard.notes,
    )


def _loud(wheel: LoudTooth) -> Measured:
    """How much louder the loudest tooth is, with the scatter of the others' means."""
    middle = float(np.median(np.abs(wheel.profile - np.median(wheel.profile))))
    return Measured(max(0.0, wheel.swelling), _AS_DEVIATION * middle, "ratio")


def _strength(heard: BearingNoise) -> Measured:
    """The deepest swelling at any part's rate, with what the noise floor makes of five lines."""
    deepest = max((comb.depth for comb in heard.combs.values()), default=0.0)
    floor = _floor(heard.spectrum) if heard.spectrum else 0.0
    return Measured(deepest, sqrt(_LINES_IN_A_COMB) * floor, "ratio")


def _floor(spectrum: LineSpectrum) -> float:
    kept = spectrum.above > 0
    if not kept.any():
        return 0.0
    return float(np.median(spectrum.size[kept] / np.sqrt(spectrum.above[kept])))


def thinned_lines(spectrum: LineSpectrum) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Frequencies and swelling, few enough to be drawn: the highest of each few stays, so no line is lost."""
    first = int(np.argmax(spectrum.above > 0))
    size = spectrum.size[first:]
    each = max(1, -(-len(size) // MOST))
    highest = [first + at + int(np.argmax(size[at : at + each])) for at in range(0, len(size), each)]
    return (
        tuple(float(place * spectrum.step) for place in highest),
        tuple(float(spectrum.size[place]) for place in highest),
    )
