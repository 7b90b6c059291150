"""Several pulls gathered by setting."""

import numpy as np
import pytest

from spoolwright.bench import pulls
from spoolwright.bench.pulls import OnePull, Scatter
from spoolwright.bench.unreadable import Unreadable


def test_repeats_teach_the_scatter_and_few_of_them_teach_little() -> None:
    rng = np.random.default_rng(1)
    few = [OnePull(1, f) for f in rng.normal(20, 2, 2)]
    many = [OnePull(1, f) for f in rng.normal(20, 2, 60)]
    assert pulls.scatter_of(many).share == pytest.approx(0.1, abs=0.02)
    assert pulls.scatter_of(few).share < pulls.scatter_of(many).share
    assert pulls.scatter_of(few).own == 1


def test_a_step_that_all_pulls_share_is_not_averaged_away() -> None:
    one = pulls.settings_of([OnePull(1, 20.0, step=1.0)] * 50, Scatter(1e-6, 1e9, 49))[0]
    assert one.running.uncertainty == pytest.approx(1 / np.sqrt(12), rel=0.03)
    assert one.start_up is None


def test_the_ratio_of_a_series_is_surer_than_that_of_one_pull() -> None:
    pull = [OnePull(t, 10.0 * t, 11.5 * t, step=0.1) for t in (1, 2, 3, 4)]
    one, four = pulls.start_up_ratio(pull[:1]), pulls.start_up_ratio(pull)
    assert one is not None
    assert four is not None
    assert four.value == pytest.approx(1.15)
    assert four.uncertainty < one.uncertainty
    assert pulls.start_up_ratio([OnePull(1, 10.0)]) is None


@pytest.mark.parametrize(
    ("taken", "words"),
    [
        ([], "0 pulls"),
        ([OnePull(1, 5.0)] * 61, "61 pulls"),
        ([OnePull(1, -1.0)], "no pull of a reel"),
        ([OnePull(1, 5.0, 2.0)], "less than half"),
        ([OnePull(1, 0.0)], "above nothing"),
    ],
)
def test_what_is_no_pull_is_refused(taken: list[OnePull], words: str) -> None:
    with pytest.raises(Unreadable, match=words):
        pulls.check(taken, 1, "a pull")
