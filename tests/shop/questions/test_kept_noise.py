"""What will be kept of a noise: its lines few enough to be drawn, none of them lost."""

from dataclasses import replace

import numpy as np
import pytest

from spoolwright.bench.bearing_noise import BearingNoise
from spoolwright.bench.comb import Comb
from spoolwright.bench.envelope import LineSpectrum
from spoolwright.bench.gear_noise import GearNoise, Gears
from spoolwright.bench.tooth_loudness import LoudTooth
from spoolwright.shop.questions.kept_noise import kept_bearing, kept_gears, thinned_lines

RATES = {"outer": 107.3, "inner": 162.1, "ball": 141.1, "cage": 11.9}


def spectrum() -> LineSpectrum:
    above = np.random.default_rng(3).exponential(size=20000)
    above[:10] = 0.0
    size = np.full(20000, 0.01) * np.sqrt(above)
    size[[4292, 8584]] = 0.5
    return LineSpectrum.of((500.0, 5700.0), 0.025, above, size, 1)


HEARD = BearingNoise(
    "outer",
    0.9,
    ("Lines stand.",),
    29.9,
    True,
    RATES,
    {"outer": Comb(107.3, 107.3, 500.0, 5700.0, 0.7, -40.0, ())},
    spectrum(),
)


def test_no_line_is_lost_when_it_is_thinned() -> None:
    frequencies, swelling = thinned_lines(spectrum())
    assert len(frequencies) <= 1000
    at = [f for f, s in zip(frequencies, swelling, strict=True) if s == 0.5]
    assert at == pytest.approx([107.3, 214.6])


def test_the_strength_is_the_deepest_swelling_with_what_the_floor_makes_of_it() -> None:
    kept = kept_bearing(HEARD, "spool shaft, gear side", 187.9)
    assert kept.strength.value == 0.7
    assert kept.strength.uncertainty == pytest.approx(0.01 * 5**0.5, rel=0.01)
    assert dict(kept.named)["outer ring"] == 107.3
    assert dict(kept.named)["each turn"] == 29.9


def test_a_recording_too_short_for_a_spectrum_is_kept_without_one() -> None:
    kept = kept_bearing(replace(HEARD, spectrum=None, combs={}, verdict="cannot tell"), "handle", None)
    assert kept.frequencies == ()
    assert kept.strength.value == 0


def test_the_wheel_that_was_named_is_kept_tooth_by_tooth() -> None:
    profile = np.ones(34)
    profile[7] = 3.0
    loud = LoudTooth(17, 7, 60, 2.0, 0.1, -50.0, 2000.0, 4000.0, profile)
    quiet = replace(loud, teeth=98, swelling=0.2, log_chance=-60.0, profile=np.ones(196))
    heard = GearNoise("pinion", 0.9, ("x",), 14.0, 220.0, {"main": quiet, "pinion": loud}, {"main": 0.1})
    kept = kept_gears(heard, Gears(98, 17))
    assert kept.named == (("pinion", 17.0),)
    assert kept.frequencies[:3] == (0.0, 0.5, 1.0)
    assert kept.swelling[7] == 2.0
    assert kept.strength.value == 2.0
    assert kept.place == "main gear of 98 teeth and pinion of 17 teeth"


def test_gears_of_which_too_little_was_heard_are_kept_without_a_wheel() -> None:
    kept = kept_gears(GearNoise("cannot tell", 0.0, ("x",), 14.0, 220.0, {}, {}), Gears(98, 17))
    assert kept.frequencies == ()
    assert kept.strength.value == 0
