"""The noise behind a reading, as it was kept, and what will be kept of one."""

from __future__ import annotations

from math import sqrt

import numpy as np

from spoolwright.bench.bearing_noise import BearingNoise
from spoolwright.bench.envelope import LineSpectrum
from spoolwright.bench.thinning import MOST
from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.records.kept_noise import BEARING, GEARS, KeptNoise, noise_from
from spoolwright.shop.records.reading import Reading

__all__ = ["BEARING", "GEARS", "KeptNoise", "drawn_noise_of", "kept_bearing", "noise_of", "thinned_lines"]

_PARTS = {"outer": "outer ring", "inner": "inner ring", "ball": "ball", "cage": "cage"}
_LINES_IN_A_COMB = 5


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
