"""Works set beside the reel as it is, cast by cast."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.cast_compare import compared, difference
from tests.unit.judgement.casting import LURE, case, known


def test_no_works_at_all_change_nothing() -> None:
    found = compared(case(), (), known("tarvak-58r"))
    assert found is not None
    assert (found.gain.low, found.gain.middle, found.gain.high) == (0.0, 0.0, 0.0)
    assert found.gain_again is not None
    assert abs(found.gain_again.middle) < 0.02


def test_hybrids_in_a_clean_reel_win_next_to_nothing_and_run_further_ahead() -> None:
    found = compared(case(), ["hybrid-spool-bearings"], known("tarvak-58r"))
    assert found is not None
    assert found.again is not None
    assert found.gain_again is not None
    assert found.more_slack.middle > 0
    assert found.again.share > found.untouched.share
    assert abs(found.gain_again.middle) < 0.005 * case().values["distance"].middle


def test_differences_of_paired_casts_are_far_tighter_than_the_casts() -> None:
    found = compared(case(), ["hybrid-spool-bearings"], known("tarvak-58r"))
    assert found is not None
    assert found.gain.deviation < 0.2 * case().values["distance"].deviation


def test_a_reel_without_a_brake_is_compared_with_the_thumb_untouched() -> None:
    found = compared(case("pellmar-30-2"), ["strip-and-wash"], known("pellmar-30-2"))
    assert found is not None
    assert found.again is None
    assert found.gain_again is None


def test_a_fly_reel_is_not_compared() -> None:
    from spoolwright.judgement.cast_case import cast_case
    from spoolwright.sheets import reel_sheet

    fly = cast_case(reel_sheet.load("brekkas-9-10"), throw=LURE)
    assert compared(fly, (), known("tarvak-58r")) is None


def test_a_work_that_is_not_done_on_it_is_refused() -> None:
    with pytest.raises(ValueError, match="works: "):
        compared(case(), ["nothing-of-ours"], known("tarvak-58r"))


def test_a_difference_has_its_band() -> None:
    found = difference("more", np.linspace(-1.0, 1.0, 101))
    assert (found.low, found.middle, found.high) == pytest.approx((-0.9, 0.0, 0.9))
