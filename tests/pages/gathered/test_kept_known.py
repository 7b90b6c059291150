"""What is known of a reel is worked out once; works change what is predicted of it."""

from __future__ import annotations

from spoolwright.pages.gathered import kept_known
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")


def test_the_draws_are_made_once_for_all_works() -> None:
    assert kept_known.known(SHEET, ()) is kept_known.known(SHEET, ())


def test_works_change_the_prediction() -> None:
    before = kept_known.prediction(SHEET, (), (), "metric").values["start_up_ratio"].middle
    after = kept_known.prediction(SHEET, (), ("carbon-drag-set",), "metric").values["start_up_ratio"].middle
    assert after < before
