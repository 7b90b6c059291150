"""Limits as rungs."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.rung import Limit, band, rung


def held(**more) -> Limit:
    return Limit(
        "shaft", "spool shaft", "it bends", np.linspace(80.0, 100.0, 201), "statics", "guess", **more
    )


def test_a_band_leaves_five_in_a_hundred_out_on_either_side() -> None:
    found = band("pull", np.arange(101.0), "force", ("why",))
    assert (found.low, found.middle, found.high) == pytest.approx((5.0, 50.0, 95.0))
    assert found.rests_on == ("why",)


def test_a_rung_says_how_often_it_holds_what_it_has_to() -> None:
    found = rung(held(), np.full(201, 60.0))
    assert found.over.middle == pytest.approx(1.5)
    assert found.limit.middle == pytest.approx(90.0)
    assert found.limit.rests_on == ("statics", "guess")
    assert found.lasts is None


def test_what_it_bears_for_its_life_stands_beside_it() -> None:
    found = rung(held(lasts=np.full(201, 30.0)), np.full(201, 60.0))
    assert found.lasts is not None
    assert found.lasts.middle == 30.0
