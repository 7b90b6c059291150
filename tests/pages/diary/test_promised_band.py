"""The promise behind a pull with the drag hard on."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.diary.told.promised_band import of_full_pull
from spoolwright.shop.acts.send_quote import OfferedPromise
from tests.pages.diary.at_the_desk import arrived, desk_of
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_what_was_agreed_is_drawn(torbal: Any) -> None:
    visit = walk.agreed(torbal)
    band = of_full_pull(desk_of(torbal, visit))
    assert band is not None
    assert (band.low, band.middle, band.high) == pytest.approx((6 * walk.G, 7 * walk.G, 8 * walk.G))


def test_before_a_yes_there_is_no_band(torbal: Any) -> None:
    visit = arrived(torbal)
    walk.quoted(torbal, visit)
    assert of_full_pull(desk_of(torbal, visit)) is None


def test_a_promise_with_one_end_has_no_band(torbal: Any) -> None:
    visit = walk.arrived(torbal)
    promise = OfferedPromise("pull_full", "force", low=6 * walk.G, reading_kind="pull_full")
    walk.answered(torbal, walk.quoted(torbal, visit, walk.option(promises=(promise,))))
    assert of_full_pull(desk_of(torbal, visit)) is None
