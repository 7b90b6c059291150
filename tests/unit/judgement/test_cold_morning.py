"""The free spool in the cold."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.cold_morning import cold_morning
from spoolwright.judgement.narrowing import know
from spoolwright.sheets import reel_sheet

PIER = reel_sheet.load("tarvak-58r")
KNOWN = know(PIER, {}, samples=300, seed=1)
COLD = cold_morning(PIER, {}, morning=268.15, known=KNOWN)


def test_the_colder_the_shorter_it_spins() -> None:
    for curve in (COLD.spin_low, COLD.spin, COLD.spin_high):
        assert np.all(np.diff(curve) > 0)
    assert np.all(np.diff(COLD.viscosity) < 0)
    assert np.all(np.array(COLD.spin_low) < COLD.spin_high)


def test_a_morning_beside_the_bench() -> None:
    assert COLD.share_left.high < 1.0  # type: ignore[union-attr]
    assert COLD.kappa[0] > COLD.kappa[1] > 0
    assert "At -5 °C" in COLD.words
    assert 90 < COLD.index < 130


def test_the_bench_itself_loses_nothing() -> None:
    warm = cold_morning(PIER, {}, morning=293.15, temperatures=(), known=KNOWN)
    assert warm.share_left.middle == pytest.approx(1.0)  # type: ignore[union-attr]
    assert warm.spin == ()


def test_grease_is_told_of_and_a_roller_clutch_too() -> None:
    bearings = tuple(b.model_copy(update={"lubricant": "Fjølvatn 2"}) for b in PIER.bearings)
    clutch = PIER.anti_reverse.model_copy(update={"roller_clutch": True})  # type: ignore[union-attr]
    greased = PIER.model_copy(update={"bearings": bearings, "anti_reverse": clutch})
    notes = " ".join(cold_morning(greased, {}).notes)
    assert "NLGI class 2 holds" in notes
    assert "freezer bag" in notes


@pytest.mark.parametrize("slug", ["lumvik-4000", "brekkas-9-10"])
def test_where_no_spool_runs_free_it_says_why_not(slug: str) -> None:
    found = cold_morning(reel_sheet.load(slug), {})
    assert "no spool runs free" in found.why_not
    assert found.at_morning is None


def test_colder_than_oil_flows_is_refused() -> None:
    with pytest.raises(ValueError, match="temperature"):
        cold_morning(PIER, {}, morning=200.0)
