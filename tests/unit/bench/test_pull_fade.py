"""Pull after pull: fades, holds, tightens, or cannot tell."""

import numpy as np
import pytest

from spoolwright.bench import pull_fade
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.unreadable import Unreadable


def repeated(rng: np.random.Generator, change: float, count: int = 8) -> list[OnePull]:
    return [
        OnePull(n, 40.0 * (1 + change * n / (count - 1)) * (1 + rng.normal(0, 0.03)), step=0.1)
        for n in range(count)
    ]


@pytest.mark.parametrize("change", [-0.25, 0.0, 0.15])
def test_the_change_is_held_as_often_as_is_said(change: float) -> None:
    rng = np.random.default_rng(4)
    found = [pull_fade.fit(repeated(rng, change)).change for _ in range(250)]
    assert np.mean([abs(f.value - change) <= f.expanded for f in found]) == pytest.approx(0.955, abs=0.03)


def test_a_fade_is_not_seen_where_there_is_none() -> None:
    rng = np.random.default_rng(6)
    said = [pull_fade.fit(repeated(rng, 0.0)).verdict for _ in range(200)]
    assert sum(word in ("fades", "tightens") for word in said) <= 14
    assert pull_fade.fit(repeated(rng, -0.4)).verdict == "fades"
    assert pull_fade.fit(repeated(rng, 0.4)).verdict == "tightens"


def test_time_and_temperature_do_as_well_as_numbers() -> None:
    found = pull_fade.fit([OnePull(293.0 + 5 * n, 40.0 - n) for n in range(6)])
    assert found.fitted[0] == (293.0, pytest.approx(40.0))
    assert found.change.value == pytest.approx(-5 / 40)


@pytest.mark.parametrize("taken", [[OnePull(n, 9.0) for n in range(3)], [OnePull(1, 9.0)] * 5])
def test_what_shows_no_fade_is_refused(taken: list[OnePull]) -> None:
    with pytest.raises(Unreadable):
        pull_fade.fit(taken)
