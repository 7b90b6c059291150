"""Heat of a run in a reel, with its band."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.fish_run import FishRun, steady
from spoolwright.judgement.hot_stack import HEAT_DRAWS
from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.reel_state import as_built
from spoolwright.judgement.run_heat import CASES, RunHeat, run_heat
from spoolwright.mechanics.heat import ROOM
from spoolwright.sheets import reel_sheet


def heat(slug: str, pull: float, friction: str, **fish: float) -> RunHeat:
    sheet = reel_sheet.load(slug)
    draws = {**draw(HEAT_DRAWS, samples=100, seed=3), friction: np.full(100, 0.15)}
    return run_heat(sheet, as_built(sheet), draws, steady(sheet, FishRun(**fish)), np.full(100, pull))


@pytest.fixture(scope="module")
def felt() -> RunHeat:
    return heat("tarvak-52", 20.0, "felt, greased")


def test_the_band_stands_in_order_and_the_run_ends_in_it(felt: RunHeat) -> None:
    assert np.all(felt.low <= felt.middle)
    assert np.all(felt.middle <= felt.high)
    assert felt.time[felt.run_end] == pytest.approx(25.0)
    assert felt.middle[0] == pytest.approx(ROOM)
    assert felt.middle[felt.run_end] == pytest.approx(felt.after_run.middle)
    assert felt.time[-1] > 3600


def test_felt_is_at_its_limit_before_the_run_is_over(felt: RunHeat) -> None:
    assert felt.limit_material == "felt"
    assert felt.chance == 1.0
    assert felt.time_to_limit is not None
    assert 1.0 < felt.time_to_limit.low < felt.time_to_limit.high < 25.0
    assert felt.wait_again is None
    assert felt.pull_lost.middle > 0.1
    assert 30.0 < felt.wait_touch.middle < 1800.0


def test_a_gentle_run_reaches_nothing_and_may_be_made_again() -> None:
    gentle = heat("tarvak-54c", 8.0, "woven carbon, greased", distance=50.0)
    assert gentle.chance == 0.0
    assert gentle.time_to_limit is None
    assert gentle.again_chance == 1.0
    assert gentle.wait_again is not None
    assert gentle.wait_again.high == 0.0
    assert gentle.pull_lost.high < 0.03


def test_a_large_lever_drag_stays_cooler_than_a_small_star_drag() -> None:
    small = heat("tarvak-54c", 30.0, "woven carbon, greased")
    large = heat("pellmar-30-2", 30.0, "woven carbon, greased")
    assert large.after_run.high < small.after_run.low
    assert large.energy.middle < small.energy.middle * 1.05


def test_as_many_draws_are_followed_as_is_said(felt: RunHeat) -> None:
    assert CASES == 40
    assert "40" in (run_heat.__doc__ or "")
