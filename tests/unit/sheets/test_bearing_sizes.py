"""Looking up standard bearings by their three sizes."""

from __future__ import annotations

from itertools import combinations

import pytest

from spoolwright.sheets.bearing_sizes import CLOSE, bearing_size, sizes


def test_a_caliper_reading_finds_its_bearing() -> None:
    found = bearing_size(3.01e-3, 9.98e-3, 4.02e-3)
    assert found.name == "3 x 10 x 4 mm"
    assert found.balls == 7
    assert found.dynamic_rating.low <= found.dynamic_rating.high


def test_open_and_shielded_widths_are_two_entries() -> None:
    assert not bearing_size(4e-3, 8e-3, 2e-3).shielded
    assert bearing_size(4e-3, 8e-3, 3e-3).shielded


def test_what_is_no_standard_size_names_the_nearest() -> None:
    with pytest.raises(KeyError, match=r"nearest: 3 x 10 x 4 mm"):
        bearing_size(3e-3, 10e-3, 4.4e-3)


def test_no_two_sizes_can_be_taken_for_one_another() -> None:
    for a, b in combinations(sizes(), 2):
        sides = zip((a.bore, a.outer, a.width), (b.bore, b.outer, b.width), strict=True)
        assert max(abs(x - y) for x, y in sides) > 2 * CLOSE, (a.name, b.name)


def test_every_rating_has_its_source_and_no_catalogues_name() -> None:
    assert len(sizes()) > 90
    for bearing in sizes():
        assert bearing.dynamic_rating.how == "opened"
        assert "general rolling-bearing catalogues" in bearing.dynamic_rating.source
        assert bearing.balls_source
        assert bearing.static_rating.low < bearing.dynamic_rating.high
