"""What combs prove: sound takes more than silence, a name takes more than lines."""

from dataclasses import replace

import numpy as np
import pytest

from spoolwright.bench import bearing_verdict
from spoolwright.bench.bearing_verdict import Heard
from spoolwright.bench.comb import Comb, Line
from spoolwright.bench.envelope import LineSpectrum
from spoolwright.bench.faintest import Faintest

RATES = {"outer": 107.3, "inner": 162.1, "ball": 141.1, "cage": 11.9}


def plain() -> LineSpectrum:
    above = np.random.default_rng(3).exponential(size=4000)
    return LineSpectrum.of((500.0, 5700.0), 0.25, above, np.sqrt(above) / 100, 1)


def lines(part: str, depth: float, multiples: tuple[int, ...] = (1, 2, 3), chance: float = -30.0) -> Comb:
    each = depth / np.sqrt(len(multiples))
    rate = RATES[part]
    found = tuple(Line(m, 0, m * rate, each, -20.0 if m in multiples else 0.0) for m in range(1, 6))
    return Comb(rate, rate, 500.0, 5700.0, depth, chance, found)


def nothing(part: str) -> Comb:
    return lines(part, 0.0, (5,), 0.0)


SOUND = Heard(
    29.9,
    True,
    RATES,
    (plain(),),
    {part: nothing(part) for part in RATES},
    0.05,
    0.0,
    Faintest(-14, 1, 2, -40),
)


def verdict(**changed: Comb) -> str:
    return bearing_verdict.judge(replace(SOUND, combs=SOUND.combs | changed))[0]


def test_no_line_low_noise_and_a_shaft_that_is_heard_are_sound_with_what_would_have_shown() -> None:
    word, grade, evidence = bearing_verdict.judge(SOUND)
    assert word == "sound"
    assert 0.5 <= grade < 0.8
    assert any("would have shown" in sentence for sentence in evidence)


@pytest.mark.parametrize(
    "changed",
    [
        {"turns_heard": False},
        {"loud_share": 0.5},
        {"spikiness": 2.0},
        {"faintest": Faintest(-3.0, 500.0, 5700.0, -10.0)},
    ],
)
def test_each_doubt_alone_makes_it_cannot_tell(changed: dict[str, object]) -> None:
    word, grade, evidence = bearing_verdict.judge(replace(SOUND, **changed))
    assert (word, grade) == ("cannot tell", 0.0)
    assert len(evidence) == 2


def test_a_family_of_lines_is_named_a_faint_one_is_not() -> None:
    assert verdict(outer=lines("outer", 0.8)) == "outer"
    assert verdict(inner=lines("inner", 0.8)) == "inner"
    assert verdict(outer=lines("outer", 0.12)) == "cannot tell"


def test_a_hint_of_lines_is_not_sound() -> None:
    assert verdict(outer=lines("outer", 0.1, (1,), -9.0)) == "cannot tell"
    assert verdict(inner=lines("inner", 0.2, (3,), -9.0)) == "cannot tell"
    assert verdict(outer=lines("outer", 0.03, (5,), -9.0)) == "sound"


def test_two_parts_alike_are_not_told_apart_and_a_ball_may_be_the_cage() -> None:
    assert verdict(outer=lines("outer", 0.8), inner=lines("inner", 0.6)) == "cannot tell"
    assert verdict(cage=lines("cage", 0.9, (1, 2, 3, 4))) == "cage"
    assert verdict(cage=lines("cage", 0.9, (1, 2, 3, 4)), ball=lines("ball", 0.2)) == "cannot tell"


def test_the_spectrum_that_is_drawn_is_the_band_of_the_named_part() -> None:
    other = replace(plain(), low=3000.0)
    heard = replace(SOUND, spectra=(other, plain()), combs=SOUND.combs | {"outer": lines("outer", 0.8)})
    assert bearing_verdict.shown(heard, "outer").low == 500.0
    assert bearing_verdict.shown(heard, "sound") is other
