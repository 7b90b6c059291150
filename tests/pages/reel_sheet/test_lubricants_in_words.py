"""The letters of the lubrication points are words to somebody who does not know them."""

from __future__ import annotations

from typing import get_args

import pytest

from spoolwright.pages.reel_sheet.lubricants_in_words import SHORT, explained, in_full, short
from spoolwright.sheets.sheet_tables import LubricantClass


def test_every_letter_that_a_sheet_may_use_has_words() -> None:
    assert set(SHORT) == set(get_args(LubricantClass))


@pytest.mark.parametrize("point", SHORT)
@pytest.mark.parametrize("system", ["metric", "imperial"])
def test_every_letter_is_explained_in_full(point: str, system: str) -> None:
    said = in_full(point, system)
    assert len(said) > 20
    assert ("NLGI" in said) == (point in ("G1", "G2", "G3", "AS"))


def test_a_point_is_short_words_letters_and_amount() -> None:
    assert short("G2", "0.3 g on the flanks") == "gear grease (G2), 0.3 g on the flanks"
    assert short("O1", None) == "very thin oil (O1)"
    assert short("DRY", "anything") == "left dry"


def test_only_the_letters_in_use_are_explained_in_their_order() -> None:
    assert [row[0] for row in explained(["TL", "O1", "O1"], "metric")] == ["O1", "TL"]


def test_a_viscosity_stands_with_its_temperature_in_the_readers_units() -> None:
    assert "at 40\u00a0°C" in in_full("O1", "metric")
    assert "at 104\u00a0°F" in in_full("O1", "imperial")
