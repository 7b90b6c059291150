"""Which turn of the star gives the pull that is wanted."""

import numpy as np
import pytest

from spoolwright.judgement.prediction import predict
from spoolwright.judgement.star_turns import star_turn_for
from spoolwright.sheets import reel_sheet

PREDICTION = predict(reel_sheet.load("tarvak-58r"), {}, samples=1000)
TURNS = [row.turns for row in PREDICTION.star_turns]
MIDDLE = [row.pull.middle for row in PREDICTION.star_turns]


@pytest.mark.parametrize("share", [0.1, 0.3, 0.5, 0.9, 1.0])
def test_the_turn_that_is_told_gives_the_pull_that_was_asked(share: float) -> None:
    target = share * MIDDLE[-1]
    advice = star_turn_for(PREDICTION, target)
    assert advice.turns is not None
    assert np.interp(advice.turns, TURNS, MIDDLE) == pytest.approx(target)


def test_early_is_before_late() -> None:
    advice = star_turn_for(PREDICTION, 0.5 * MIDDLE[-1])
    assert advice.low < advice.turns < advice.high
    assert "scale" in advice.words


def test_more_than_the_star_gives_is_said_plainly() -> None:
    advice = star_turn_for(PREDICTION, 3 * MIDDLE[-1])
    assert advice.turns is None
    assert advice.words.startswith("No turn of the star gives")


def test_a_pull_at_the_edge_may_or_may_not_be_reached() -> None:
    advice = star_turn_for(PREDICTION, 1.05 * MIDDLE[-1])
    assert advice.turns is None
    assert advice.low is not None
    assert "may or may not" in advice.words


def test_a_turn_that_may_never_reach_it_says_so() -> None:
    advice = star_turn_for(PREDICTION, 0.98 * MIDDLE[-1])
    assert advice.high is None
    assert "not at all if it bites late" in advice.words


@pytest.mark.parametrize("target", [0.0, -1.0, float("nan")])
def test_a_pull_that_is_none_is_refused(target: float) -> None:
    with pytest.raises(ValueError, match="target_pull"):
        star_turn_for(PREDICTION, target)


def test_a_reel_without_a_star_has_no_turns() -> None:
    bare = predict(reel_sheet.load("tarvak-58r").model_copy(update={"drag": None}), {}, samples=200)
    with pytest.raises(ValueError, match="no table"):
        star_turn_for(bare, 10.0)
