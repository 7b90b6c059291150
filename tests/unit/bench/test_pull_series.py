"""Pull against turns: truth in, truth out, as often as it is said."""

import numpy as np
import pytest

from spoolwright.bench import pull_series
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.unreadable import Unreadable

TURNS = (0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5)


def pulled(
    rng: np.random.Generator, slope: float = 12.0, onset: float = 0.8, end: float = 99.0, each: int = 2
) -> list[OnePull]:
    taken = []
    for turns in TURNS:
        true = slope * max(min(turns, end) - onset, 0.0)
        for _ in range(each):
            run = true * (1 + rng.normal(0, 0.03))
            taken.append(OnePull(turns, round(run, 1), round(run * 1.12, 1), step=0.1))
    return taken


def test_slope_and_onset_are_held_as_often_as_is_said() -> None:
    rng = np.random.default_rng(11)
    found = [pull_series.fit(pulled(rng)) for _ in range(60)]
    slope = np.mean([abs(f.per_turn.value - 12.0) <= f.per_turn.expanded for f in found])
    onset = np.mean([abs(f.onset.value - 0.8) <= f.onset.expanded for f in found])
    assert slope >= 0.93
    assert onset >= 0.93
    assert np.mean([f.per_turn.expanded for f in found]) < 0.12 * 12.0


def test_it_levels_off_only_where_it_does() -> None:
    rng = np.random.default_rng(5)
    flat = [pull_series.fit(pulled(rng, end=2.4)) for _ in range(20)]
    rising = [pull_series.fit(pulled(rng)) for _ in range(20)]
    said = [f.levels_off for f in flat if f.levels_off is not None]
    assert len(said) >= 18
    assert np.mean([abs(one.value - 2.4) <= one.expanded + 0.1 for one in said]) > 0.9
    assert sum(f.levels_off is not None for f in rising) <= 1


def test_the_scale_of_the_gauge_makes_the_slope_unsure_and_its_zero_the_onset() -> None:
    taken = pulled(np.random.default_rng(2))
    plain = pull_series.fit(taken)
    rough = pull_series.fit(taken, Gauge(accuracy_of_reading=0.05))
    off = pull_series.fit(taken, Gauge(accuracy_of_reading=0.0, zero_unsure=1.0))
    assert rough.per_turn.uncertainty > plain.per_turn.uncertainty
    assert rough.onset == plain.onset
    assert off.onset.uncertainty == pytest.approx(np.hypot(plain.onset.uncertainty, 1 / 12), rel=0.02)


def test_a_bent_line_widens_and_says_so() -> None:
    bent = pull_series.fit([OnePull(t, 6.0 * t**2) for t in TURNS])
    assert bent.misfit > 1.5
    assert any("straight" in note for note in bent.notes)


def test_the_line_is_drawn_from_its_foot() -> None:
    found = pull_series.fit(pulled(np.random.default_rng(3)))
    assert found.fitted[0] == (0.0, 0.0)
    assert found.fitted[-1][0] == TURNS[-1]


@pytest.mark.parametrize(
    "taken",
    [
        [OnePull(1, 5.0), OnePull(2, 9.0)],
        [OnePull(1, 5.0), OnePull(1, 5.5), OnePull(2, 9.0)],
        [OnePull(1, 9.0), OnePull(2, 8.0), OnePull(3, 5.0)],
        [OnePull(-1, 5.0), OnePull(2, 8.0), OnePull(3, 9.0)],
    ],
)
def test_what_is_no_series_is_refused(taken: list[OnePull]) -> None:
    with pytest.raises(Unreadable):
        pull_series.fit(taken)
