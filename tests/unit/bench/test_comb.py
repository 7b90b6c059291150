"""Lines at one rate and its multiples, in spectra made line by line."""

import numpy as np
import pytest
from scipy import stats

from spoolwright.bench import comb
from spoolwright.bench.envelope import LineSpectrum

STEP = 0.25


def spectrum(lines: dict[float, float], seed: int = 0) -> LineSpectrum:
    above = np.random.default_rng(seed).exponential(size=4000)
    for frequency, height in lines.items():
        above[round(frequency / STEP)] = height
    return LineSpectrum.of((500.0, 1000.0), STEP, above, np.sqrt(above) / 100, 1)


def test_the_rate_comes_from_the_multiples_within_the_tolerance() -> None:
    made = spectrum({k * 107.5: 400.0 for k in (1, 2, 3, 4)})
    found = comb.comb(made, 107.0, 0.015, 5, 0.0, None)
    assert found.rate == pytest.approx(107.5, abs=0.1)
    assert found.multiples[:4] == (1, 2, 3, 4)
    assert found.depth == pytest.approx(0.4, rel=0.05)
    assert found.log_chance < -30
    assert comb.comb(made, 104.0, 0.015, 5, 0.0, None).log_chance > -12


def test_one_line_however_strong_is_no_comb() -> None:
    one = comb.comb(spectrum({107.5: 1e6}), 107.5, 0.015, 5, 0.0, None)
    assert one.multiples == (1,)
    assert one.log_chance > -12


def test_sidebands_are_counted_beside_the_first_two() -> None:
    lines = {107.5: 300.0, 77.5: 90.0, 137.5: 90.0, 215.0: 200.0, 245.0: 80.0}
    assert comb.comb(spectrum(lines), 107.5, 0.015, 3, 30.0, None).sidebands == 3


def test_what_the_shaft_hum_or_another_comb_explains_does_not_count() -> None:
    made = spectrum({k * 90.0: 500.0 for k in (1, 2, 3, 4, 5)})
    assert comb.comb(made, 90.0, 0.001, 5, 0.0, comb.foreign(made, 30.0)).multiples == ()
    hum = spectrum({k * 50.0: 500.0 for k in (1, 2, 3, 4, 5)})
    assert comb.comb(hum, 50.0, 0.001, 5, 0.0, comb.foreign(hum, 37.3)).multiples == ()
    other = spectrum({k * 107.5: 500.0 for k in (1, 2, 3)})
    taken = comb.explained(comb.comb(other, 107.5, 0.01, 3, 0.0, None), 29.7, 11.8, 400.0)
    assert comb.comb(other, 107.5, 0.001, 3, 0.0, comb.foreign(other, 29.7, taken)).multiples == ()


def test_chances_are_put_together_by_chi_squared() -> None:
    for score, count in ((0.5, 4), (12.0, 5), (60.0, 6)):
        assert comb._fisher(score, count) == pytest.approx(stats.chi2.logsf(2 * score, 2 * count))


def test_noise_alone_is_as_rare_as_said() -> None:
    # Fisher's sum with Bonferroni's count may only be on the careful side: at 0.05 at most so many.
    below = [comb.comb(spectrum({}, seed), 107.0, 0.015, 5, 0.0, None).log_chance for seed in range(60)]
    assert np.mean(np.array(below) < np.log(0.05)) <= 0.08
