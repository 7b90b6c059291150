"""The bearing of a sheet, or typed: refused where its balls are not known or cannot be."""

import pytest

from spoolwright.bench import bearing_on_sheet
from spoolwright.bench.unreadable import Unreadable
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")


def test_it_has_the_balls_of_its_standard_size_and_says_where_they_come_from() -> None:
    found, remarks = bearing_on_sheet.at(SHEET, "spool shaft, gear side")
    assert found.balls == 7
    assert 0 < found.ball_diameter < found.pitch_diameter < 11e-3
    assert remarks[0].startswith("Balls of a 4 x 11 x 4 mm")


@pytest.mark.parametrize("place", [None, "the moon"])
def test_a_place_that_is_not_on_the_sheet_is_refused_with_those_that_are(place: str | None) -> None:
    with pytest.raises(Unreadable, match="spool shaft, off side"):
        bearing_on_sheet.at(SHEET, place)


@pytest.mark.parametrize("sizes", [(2, 1e-3, 9e-3), (9, 7e-3, 7e-3), (12, 7.9e-3, 20e-3), (7, 0.0, 9e-3)])
def test_sizes_that_cannot_be_are_refused(sizes: tuple[int, float, float]) -> None:
    with pytest.raises(Unreadable):
        bearing_on_sheet.typed(*sizes)


def test_sizes_that_can_be_are_taken() -> None:
    assert bearing_on_sheet.typed(9, 7.94e-3, 39.04e-3).pitch_diameter == 39.04e-3
