"""Casts laid out for the kernel."""

from __future__ import annotations

from math import pi
from typing import Any

import numpy as np
import pytest

from spoolwright.mechanics import cast, cast_kernel
from spoolwright.mechanics.cast_cases import Cases
from tests.unit.mechanics.test_cast import SURF


def laid_out(variant: str = "multiplier", **other: Any) -> Cases:
    given = {**(cast.simulate.__kwdefaults__ or {}), **SURF, **other}
    given.pop("variant", None)
    return Cases.of(given, variant)


def test_every_column_of_the_kernel_is_filled() -> None:
    known = set(laid_out().columns)
    assert {getattr(cast_kernel, name) for name in known} == set(range(cast_kernel.COLUMNS))


def test_blocks_hold_every_cast_once_and_in_order() -> None:
    asked = laid_out(wind=np.arange(10.0))
    blocks = list(asked.blocks(cast_kernel, 4))
    assert [len(block) for _, block in blocks] == [4, 4, 2]
    winds = np.concatenate([block[:, cast_kernel.WIND] for _, block in blocks])
    assert np.array_equal(winds, np.arange(10.0))


def test_what_does_not_change_in_flight_is_worked_out_once() -> None:
    ((_, block),) = laid_out().blocks(cast_kernel, 1)
    row = block[0]
    assert row[cast_kernel.LINE] == pytest.approx(1140 * pi / 4 * 0.31e-3**2)
    assert row[cast_kernel.FALL] * row[cast_kernel.LENGTH] == pytest.approx(0.022**2 - 0.013**2, rel=3e-3)
    assert row[cast_kernel.AIR] == pytest.approx(0.5 * 1.225 * 1.6e-4)


def test_only_line_that_is_on_the_spool_weighs() -> None:
    ((_, block),) = laid_out(line_length=100.0).blocks(cast_kernel, 1)
    row = block[0]
    mass = 2 * row[cast_kernel.BULK] * (row[cast_kernel.TOP] - row[cast_kernel.FLOOR])
    assert mass == pytest.approx(100.0 * row[cast_kernel.LINE])


@pytest.mark.parametrize(
    ("variant", "limit", "holds"),
    [("multiplier", 1.0, 0.0), ("multiplier", 0.0, 2 * 0.022), ("ideal thumb", 1.0, np.inf)],
)
def test_a_thumb_holds_a_line_without_slack_only_where_it_allows_none(
    variant: str, limit: float, holds: float
) -> None:
    asked = laid_out(variant, slack_limit=limit, thumb_force=2.0)
    assert asked.columns["HOLD"] == pytest.approx(holds)
