"""The best comb of each part, in spectra made line by line."""

import numpy as np

from spoolwright.bench.bearing_combs import combs, is_a_family
from spoolwright.bench.envelope import LineSpectrum

STEP = 0.25
RATES = {"outer": 107.3, "inner": 162.1, "ball": 141.1, "cage": 11.9}


def spectrum(*lines: float) -> LineSpectrum:
    above = np.random.default_rng(5).exponential(size=4000)
    for frequency in lines:
        above[round(frequency / STEP)] = 300.0
    return LineSpectrum.of((500.0, 1000.0), STEP, above, np.sqrt(above) / 50, 1)


def test_lines_at_one_rate_are_of_that_part_and_of_no_other() -> None:
    found = combs((spectrum(*(107.5 * k for k in (1, 2, 3, 4))),), RATES, 29.9, 0.015)
    assert is_a_family("outer", found["outer"])
    assert not any(is_a_family(part, found[part]) for part in ("inner", "ball", "cage"))


def test_lines_beside_a_stronger_comb_are_not_counted_again() -> None:
    beside = [161.75 + 11.9, 161.75 - 11.9, 161.75 + 29.9, 161.75 - 29.9]
    found = combs((spectrum(161.75, 323.5, 485.25, *beside),), RATES, 29.9, 0.015)
    assert found["inner"].multiples == (1, 2, 3)
    assert found["ball"].depth == 0


def test_a_first_line_alone_is_no_family_and_a_cage_needs_four() -> None:
    one = combs((spectrum(107.5),), RATES, 29.9, 0.015)
    assert not is_a_family("outer", one["outer"])
    three = combs((spectrum(11.9, 23.8, 35.7),), RATES, 29.9, 0.015)
    assert not is_a_family("cage", three["cage"])
