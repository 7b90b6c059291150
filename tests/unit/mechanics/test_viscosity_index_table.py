"""The table of ASTM D2270 is whole and in order."""

from __future__ import annotations

import numpy as np

from spoolwright.mechanics import viscosity_index_table as table


def test_it_runs_from_two_to_seventy_without_a_gap() -> None:
    assert table.Y[0] == 2.0
    assert table.Y[-1] == 70.0
    assert len(table.Y) == len(table.L) == len(table.H) == 311
    assert np.all(np.diff(table.Y) > 0)


def test_both_columns_rise_and_the_poorer_oil_is_always_thicker_in_the_cold() -> None:
    assert np.all(np.diff(table.L) > 0)
    assert np.all(np.diff(table.H) > 0)
    assert np.all(table.L > table.H)


def test_no_digit_is_out_of_line() -> None:
    """Each row lies between its neighbours to 0.6 %: a slipped digit would stand out."""
    for column in (table.L, table.H):
        middle = (column[:-2] + column[2:]) / 2
        even = np.isclose(np.diff(table.Y)[1:], np.diff(table.Y)[:-1])
        assert np.max(np.abs(column[1:-1] / middle - 1)[even]) < 0.006
