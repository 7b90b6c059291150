"""What is put away stays readable, and nothing more is written of it."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_instrument import Known
from spoolwright.shop.acts.change_instrument import InstrumentWasPutAway, change_instrument
from spoolwright.shop.acts.check_instrument import HeldAgainst, check_instrument
from spoolwright.shop.acts.refused import WordsWereMissing
from spoolwright.shop.acts.retire_instrument import retire_instrument
from spoolwright.shop.acts.write_gauge_study import write_gauge_study
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_put_away_with_a_reason(hand: Any) -> None:
    kept = walk.measured_with(hand)
    last = retire_instrument(hand=hand, instrument=kept, why="fell on the floor")
    assert (last.number, last.retired, last.words, last.limit_si) == (2, True, "fell on the floor", 3e-5)
    assert kept.checks.count() == 1


def test_without_a_reason_it_stays(hand: Any) -> None:
    kept = walk.caliper(hand)
    with pytest.raises(WordsWereMissing):
        retire_instrument(hand=hand, instrument=kept, why=" ")
    assert kept.versions.count() == 1


def test_nothing_more_is_written_of_it(hand: Any) -> None:
    kept = walk.caliper(hand)
    retire_instrument(hand=hand, instrument=kept, why="lost")
    for writing in (
        lambda: change_instrument(hand=hand, instrument=kept, known=Known("it", 1e-5)),
        lambda: check_instrument(hand=hand, instrument=kept, held=HeldAgainst("block", 1.0, 1.0, 0.0)),
        lambda: write_gauge_study(hand=hand, instrument=kept, studied=walk.studied()),
        lambda: retire_instrument(hand=hand, instrument=kept, why="again"),
    ):
        with pytest.raises(InstrumentWasPutAway, match="C1"):
            writing()
