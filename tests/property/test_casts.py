"""What holds of every cast that is reckoned from a sheet."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.judgement.brake_setting import BrakeSetting
from spoolwright.judgement.cast_case import CastCase, flown
from spoolwright.judgement.cast_reckoned import reckoned
from spoolwright.judgement.narrowing import Known, know
from spoolwright.judgement.throw import Throw
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.payloads import payload_names

CASTING = ["tarvak-58r", "tarvak-54c", "pellmar-70", "ostrell-s71", "pellmar-30-2", "lumvik-4000"]
FEW = settings(max_examples=12, deadline=None, derandomize=True)

throws = st.builds(
    Throw,
    payload=st.floats(0.01, 0.3),
    speed=st.floats(15.0, 70.0),
    shape=st.sampled_from(payload_names()),
    wind=st.floats(-8.0, 8.0),
    diameter=st.floats(0.15e-3, 0.5e-3),
    fill=st.floats(0.4, 1.0),
    brake=st.builds(BrakeSetting, share=st.floats(0.0, 1.0)),
)

short_throws = st.builds(
    Throw,
    payload=st.floats(0.01, 0.12),
    speed=st.floats(15.0, 32.0),
    wind=st.floats(-8.0, 0.0),
    diameter=st.floats(0.15e-3, 0.22e-3),
    brake=st.builds(BrakeSetting, share=st.floats(0.0, 0.4)),
)
"""Throws for which the line on any of these reels is long enough: one that runs out ends otherwise."""


@cache
def known(slug: str) -> Known:
    return know(reel_sheet.load(slug), {}, samples=100, seed=1)


def thrown(slug: str, throw: Throw) -> CastCase:
    return flown(reckoned(known(slug), (), throw), throw)


@FEW
@given(slug=st.sampled_from(CASTING), throw=throws)
def test_no_cast_goes_farther_than_one_without_air(slug: str, throw: Throw) -> None:
    still = replace(throw, wind=min(throw.wind, 0.0))
    found = thrown(slug, still)
    speed = float(np.max(np.asarray(found.arguments["release_speed"])))
    up, g = speed * np.sin(still.angle), 9.80665
    vacuum = speed * np.cos(still.angle) * (up + np.sqrt(up**2 + 2 * g * still.height)) / g
    assert np.all(found.samples["distance"] <= vacuum)
    assert np.all(found.samples["distance"] > 0)


@FEW
@given(slug=st.sampled_from(CASTING[:4]), throw=short_throws, more=st.floats(0.05, 0.6))
def test_more_brake_never_means_more_slack_nor_more_distance(slug: str, throw: Throw, more: float) -> None:
    share = throw.brake.share or 0.0
    soft = thrown(slug, throw)
    hard = thrown(slug, replace(throw, brake=BrakeSetting(share=share + more)))
    slack, far = soft.samples["peak_slack"], soft.samples["distance"]
    assert np.all(hard.samples["peak_slack"] <= slack + 1e-3 * (1 + slack))
    # Where a spool runs far ahead, braking it saves line that would be flung out: only tight casts are held.
    tight = slack < 1e-3
    assert np.all(hard.samples["distance"][tight] <= far[tight] * (1 + 1e-4))


@FEW
@given(throw=short_throws, heavier=st.floats(1.1, 2.0))
def test_the_same_speed_carries_a_heavier_lead_farther(throw: Throw, heavier: float) -> None:
    far = thrown("lumvik-4000", replace(throw, payload=throw.payload * heavier)).samples
    assert np.all(far["distance"] >= thrown("lumvik-4000", throw).samples["distance"] * (1 - 1e-6))


@FEW
@given(slug=st.sampled_from(CASTING), throw=throws)
def test_two_throws_alike_give_the_same_numbers(slug: str, throw: Throw) -> None:
    one, other = thrown(slug, throw), thrown(slug, throw)
    for name, sample in one.samples.items():
        assert np.array_equal(sample, other.samples[name])


@pytest.mark.parametrize("slug", CASTING)
def test_the_middle_lies_inside_the_band(slug: str) -> None:
    found = thrown(slug, Throw(0.06, 35.0, diameter=0.28e-3))
    for value in found.values.values():
        assert value.low <= value.middle <= value.high
