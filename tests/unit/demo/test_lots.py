"""Oil and grease by kind of reel, each with the lot of its month; the bad tub belongs to one week only."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from spoolwright.demo.lots import BAD_LOT, lot, usual
from spoolwright.sheets import lubricants

KINDS = ("round multiplier", "low-profile multiplier", "lever drag", "fixed spool", "fly")


@pytest.mark.parametrize("kind", KINDS)
def test_what_is_used_stands_on_the_houses_shelf(kind: str) -> None:
    for used in usual(kind, date(2026, 6, 2)):
        assert lubricants.lubricant(used.lubricant).title
        assert used.amount
        assert used.lot


def test_no_month_draws_from_the_bad_tub() -> None:
    days = [date(2026, 1, 15) + timedelta(days=31 * n) for n in range(24)]
    assert BAD_LOT not in {lot("G2", day) for day in days}


def test_grease_stays_out_of_the_roller_clutch() -> None:
    clutch = [used for used in usual("fixed spool", date(2026, 6, 2)) if used.point == "roller clutch"]
    assert [used.lubricant for used in clutch] == ["Tysna clutch"]
