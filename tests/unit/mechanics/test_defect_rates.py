"""Rates of a damaged bearing live in their own chapter and are called by the old name too."""

from __future__ import annotations

from spoolwright.mechanics import defect_rates, rolling


def test_one_function_under_both_names() -> None:
    assert rolling.defect_frequencies is defect_rates.defect_frequencies
    assert rolling.DefectFrequencies is defect_rates.DefectFrequencies


def test_standing_still_nothing_knocks() -> None:
    assert set(defect_rates.defect_frequencies(0.0, 7, 1e-3, 6e-3).values()) == {0.0}
