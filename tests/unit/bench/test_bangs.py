"""Bangs are turned down; a bearing's own knocks are left as they are."""

import numpy as np
import pytest

from spoolwright.bench import bangs
from tests.knocking import Case, recording


@pytest.mark.parametrize("kind", ["outer", "inner", "ball", "cage"])
def test_knocks_of_a_bearing_are_no_bangs(kind: str) -> None:
    made = recording(Case(kind, 1790.0, turns=60.0, seed=3))
    evened, share = bangs.turned_down(made.samples, made.rate, 1790.0 / 60)
    assert share == 0
    assert evened == pytest.approx(made.samples.astype(float))


def test_a_bang_is_brought_down_to_the_rest_and_the_rest_is_untouched() -> None:
    quiet = np.random.default_rng(2).normal(0.0, 0.05, 24000)
    loud = quiet.copy()
    loud[12000:12100] += 2.0
    evened, share = bangs.turned_down(loud, 12000.0, 30.0)
    assert 0 < share < 0.1
    assert np.abs(evened).max() < 0.7
    assert evened[:11000] == pytest.approx(quiet[:11000])


def test_a_silent_recording_and_a_short_one_stay_as_they_are() -> None:
    for sound in (np.zeros(24000), np.ones(50)):
        evened, share = bangs.turned_down(sound, 12000.0, 30.0)
        assert share == 0
        assert evened == pytest.approx(sound)
