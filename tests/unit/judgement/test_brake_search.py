"""How hard a brake must be set for so much slack."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from spoolwright.judgement.brake_search import share_for_slack, shares_for_slack, slack_at, stacked
from tests.unit.judgement.casting import case


def middle():  # type: ignore[no-untyped-def]
    inputs = case().inputs
    assert inputs is not None
    return inputs.middle


@pytest.mark.parametrize("wanted", [0.3, 1.0, 4.0])
def test_the_share_that_is_found_keeps_the_slack_and_hardly_less_would(wanted: float) -> None:
    share = share_for_slack(middle(), wanted)
    assert share is not None
    slack = slack_at([middle()], np.array([[share, share - 3e-3]]))[0]
    assert slack[0] <= wanted < slack[1]


def test_a_brake_that_is_not_needed_is_not_set() -> None:
    assert share_for_slack(middle(), 1000.0) == 0.0


def test_a_brake_that_is_too_weak_is_told_by_how_much() -> None:
    weak = replace(middle().brakes, centrifugal=middle().brakes.centrifugal / 4)
    asked = share_for_slack(replace(middle(), brakes=weak), 0.7)
    assert asked == pytest.approx(4 * share_for_slack(middle(), 0.7), rel=0.01)


def test_a_reel_without_a_brake_has_no_share() -> None:
    bare = case("pellmar-30-2").inputs
    assert bare is not None
    assert share_for_slack(bare.middle, 1.0) is None
    assert shares_for_slack([bare.middle, bare.middle], 1.0) == [None, None]


def test_several_are_found_as_each_alone() -> None:
    lighter = middle().with_plain(spool_inertia=np.asarray(middle().plain["spool_inertia"]) * 0.8)
    together = shares_for_slack([middle(), lighter], 0.7)
    assert together == [share_for_slack(middle(), 0.7), share_for_slack(lighter, 0.7)]
    assert together[1] < together[0]


def test_casts_are_stacked_one_under_the_other() -> None:
    rows = stacked([middle(), middle()], [0.2, 0.4])
    assert rows["brake_centrifugal"].shape == (2, 1)
    assert rows["brake_centrifugal"][1, 0] == pytest.approx(2 * rows["brake_centrifugal"][0, 0])


def test_no_slack_at_all_cannot_be_asked_for() -> None:
    with pytest.raises(ValueError, match="wanted: above 0"):
        share_for_slack(middle(), 0.0)
