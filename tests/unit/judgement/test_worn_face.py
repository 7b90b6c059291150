"""Use, draws and wear rates of a face."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.worn_face import Use, common_draws, metal_rate, plastic_rate, spread_by_powers
from spoolwright.sheets import wear_rates
from spoolwright.sheets.sourced import Sourced

DRAWS = common_draws(400, 1)


@pytest.mark.parametrize(
    ("given", "named"),
    [({"casts": -1.0}, "casts"), ({"grit": 1.5}, "grit"), ({"pull": float("nan")}, "pull")],
)
def test_a_use_that_cannot_be_is_refused(given: dict[str, float], named: str) -> None:
    with pytest.raises(ValueError, match=named):
        Use(**given)


def test_a_week_of_casts_is_so_much_line() -> None:
    assert Use(casts=10.0, distance=40.0).cast_line == 400.0


def test_dry_and_gritty_wear_faster_and_salt_too() -> None:
    def middle(use: Use) -> float:
        return float(np.median(metal_rate("pawl", "brass", use, DRAWS)))

    clean = middle(Use(grit=0.0))
    assert clean < middle(Use(grit=0.0, salt=True)) < middle(Use(grit=0.0, oiled=False))
    assert clean < middle(Use(grit=0.01)) < middle(Use(grit=0.1))
    assert np.all(
        plastic_rate("worm-bush", Use(grit=0.1), DRAWS) > plastic_rate("worm-bush", Use(grit=0.0), DRAWS)
    )


def test_harder_metal_wears_less_under_the_same_draws() -> None:
    soft, hard = (metal_rate("pawl", name, Use(), DRAWS) for name in ("brass", "hardened stainless steel"))
    assert np.all(hard < soft)


def test_grit_that_does_not_arrive_does_not_count() -> None:
    kept_out = {**DRAWS, "grit_reach": np.zeros(400)}
    assert metal_rate("pawl", "brass", Use(grit=0.1), kept_out) == pytest.approx(
        metal_rate("pawl", "brass", Use(grit=0.0), DRAWS)
    )


def test_powers_of_ten_are_equally_likely() -> None:
    between = Sourced(1e-7, 1e-3, "nowhere", "judgement prior")
    found = spread_by_powers(between, np.linspace(0, 1, 401))
    assert float(np.median(found)) == pytest.approx(1e-5)
    assert wear_rates.face_wear(wear_rates.METAL).oiled.low < 1e-5
