"""Fade and judder by speed, in words."""

import pytest

from spoolwright.bench import pull_fade, pull_speed
from spoolwright.bench.pulls import OnePull
from spoolwright.judgement.repeat_words import fade_words, speed_words


@pytest.mark.parametrize(
    ("per_pull", "words"), [(-0.05, "fades"), (0.05, "tightens"), (0.0, "holds"), (-0.012, "cannot tell")]
)
def test_a_fade_is_said_with_its_spread(per_pull: float, words: str) -> None:
    noise = (0.03, -0.04, 0.02, -0.05, 0.05, -0.02) if words == "cannot tell" else (0.0,) * 6
    found = pull_fade.fit([OnePull(n, 40 * (1 + per_pull * n + noise[n])) for n in range(6)])
    [said] = fade_words(found, "imperial")
    assert words in said
    assert " % ± " in said
    assert " lb" in said


@pytest.mark.parametrize("above", [0.0, 0.08, 9.0])
def test_judder_by_speed_is_said_in_the_readers_units(above: float) -> None:
    taken = [OnePull(v, 30.0, judder=0.4 if v < above else 0.03) for v in (0.02, 0.05, 0.1, 0.5)]
    said = speed_words(pull_speed.fit(taken), "imperial")
    assert said[0].startswith("The drag ")
    assert all("ft/s" in line for line in said[1:])
    assert len(said) == {0.0: 2, 0.08: 3, 9.0: 2}[above]
    assert "cannot tell" in speed_words(pull_speed.fit([OnePull(v, 30.0) for v in (0.1, 0.2, 0.4)]))[0]
