"""What would change a cast, one thing at a time."""

from __future__ import annotations

import pytest

from spoolwright.judgement.cast_matters import what_matters
from tests.unit.judgement.casting import LURE, case, matters


def test_each_change_has_the_sign_of_its_physics() -> None:
    found = matters()
    gain = {change.key: change.gain for change in found.changes}
    slack = {change.key: change.more_slack for change in found.changes}
    assert gain["bearings gummed"] < gain["brake harder"] < 0
    assert slack["bearings freer"] > 0 > slack["spool lighter"]
    assert slack["brake harder"] < 0
    assert gain["line thinner"] > 0
    assert gain["level wind out"] > 0


def test_the_order_is_that_of_the_distance_at_the_same_slack() -> None:
    sizes = [abs(change.like_for_like) for change in matters().changes]
    assert sizes == sorted(sizes, reverse=True)


def test_what_is_set_again_keeps_the_slack_of_before() -> None:
    freer = matters().of("bearings freer")
    assert freer is not None
    assert freer.again is not None
    assert freer.again > (matters().share or 0)
    assert freer.gain_again is not None
    assert freer.gain_again < freer.gain


def test_a_perfect_thumb_is_the_most_that_brake_and_bearings_can_give() -> None:
    for slug, throw in (("tarvak-58r", None), ("ostrell-s71", LURE)):
        found = matters(slug, throw) if throw else matters(slug)
        assert found.distance < found.ideal < 1.1 * found.distance


def test_a_level_wind_that_stands_in_the_cast_is_not_taken_out() -> None:
    assert matters("tarvak-54c").of("level wind out") is None


def test_a_thumb_alone_has_no_brake_to_set() -> None:
    found = matters("pellmar-30-2")
    assert found.of("brake harder") is None
    assert all(change.again is None for change in found.changes)


def test_a_spool_that_stands_still_has_nothing_to_change() -> None:
    assert what_matters(case("lumvik-4000")) is None


def test_a_brake_that_keeps_no_slack_is_kept_so() -> None:
    found = what_matters(case(share=1.0))
    assert found is not None
    assert found.slack == pytest.approx(case(share=1.0).middle.summary.peak_slack, abs=1e-9)
