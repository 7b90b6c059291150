"""How the brake is set."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from spoolwright.judgement.brake_setting import (
    BRAKE_DRAWS,
    BrakeSetting,
    brakes_of,
    read_setting,
    share_of,
)
from spoolwright.judgement.monte_carlo import draw
from spoolwright.quantities import NotAQuantity
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Brakes

DRAWS = draw(BRAKE_DRAWS, samples=400, seed=3)


def with_brakes(**brakes: object) -> ReelSheet:
    sheet = reel_sheet.load("tarvak-58r")
    return sheet.model_copy(update={"brakes": Brakes.model_construct(**{**_NONE, **brakes})})


_NONE = dict.fromkeys(
    ("blocks", "block_mass", "block_radius", "ring_friction", "magnets", "magnet_drag", "note")
)


def test_blocks_brake_by_their_mass_radius_and_friction() -> None:
    has = brakes_of(reel_sheet.load("tarvak-58r"), DRAWS)
    # two of 0.06 g at 9.5 mm, friction 0.2
    assert np.median(has.centrifugal) == pytest.approx(2 * 0.2 * 0.06e-3 * 9.5e-3**2, rel=0.02)
    assert not np.any(has.magnetic)
    assert has.has_any


def test_magnets_that_nobody_measured_are_called_a_guess() -> None:
    has = brakes_of(with_brakes(magnets=6), DRAWS)
    assert "judgement prior" in has.guess
    assert 1e-6 < np.median(has.magnetic) < 4e-5
    low, high = np.quantile(has.magnetic, [0.05, 0.95])
    assert high > 3 * low


def test_magnets_that_were_measured_are_taken_as_measured() -> None:
    has = brakes_of(with_brakes(magnets=6, magnet_drag=2e-6), DRAWS)
    assert np.all(has.magnetic == 2e-6)
    assert not has.guess


def test_a_reel_without_brakes_has_none() -> None:
    for sheet in (with_brakes(), reel_sheet.load("tarvak-58r").model_copy(update={"brakes": None})):
        assert not brakes_of(sheet, DRAWS).has_any


@pytest.mark.parametrize(
    ("typed", "setting"),
    [
        ("50 %", BrakeSetting(share=0.5)),
        ("0.25", BrakeSetting(share=0.25)),
        ("1 block", BrakeSetting(blocks=1.0)),
        ("3 blocks", BrakeSetting(blocks=3.0)),
        ("2 μN m s", BrakeSetting(constant=2e-6)),
        ("slack 1 m", BrakeSetting(slack=1.0)),
        ("set", BrakeSetting()),
        ("", BrakeSetting()),
    ],
)
def test_a_setting_is_read_as_it_is_typed(typed: str, setting: BrakeSetting) -> None:
    read = read_setting(typed)
    assert (read.share, read.blocks) == (setting.share, setting.blocks)
    assert read.constant == pytest.approx(setting.constant)
    assert read.slack == setting.slack


@pytest.mark.parametrize(
    "typed",
    ["hard", "two blocks", "2.5 blocks", "-10 %", "-1 blocks", "5 kg", "-2 μN m s", "slack", "slack -1 m"],
)
def test_what_is_no_setting_says_what_is_one(typed: str) -> None:
    with pytest.raises(NotAQuantity, match="50 %"):
        read_setting(typed)


def test_blocks_are_a_share_of_those_there_are_and_no_more() -> None:
    has = brakes_of(reel_sheet.load("tarvak-58r"), DRAWS)
    assert share_of(BrakeSetting(blocks=2), has) == 1.0
    assert share_of(BrakeSetting(share=0.3), has) == 0.3
    assert share_of(BrakeSetting(constant=1e-6), has) is None
    assert share_of(BrakeSetting(blocks=0), replace(has, blocks=0)) == 0.0
    with pytest.raises(ValueError, match="at most 2 blocks"):
        share_of(BrakeSetting(blocks=3), has)
