"""The reels of a customer, with where each is and when it was here."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.customer.reels import reels_of
from spoolwright.shop.acts.add_reel import NewReel, add_reel
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_reel_at_home_and_one_that_never_came(settings: Any, tmp_path: Any) -> None:
    settings.MEDIA_ROOT = tmp_path
    gone = walk.everything(bench_hand())
    owner = gone.reel.customer
    add_reel(hand=bench_hand(), customer=owner, reel=NewReel("Pellmar 70"))
    never, home = reels_of(owner)
    assert (never.reel.described, never.visits, never.there) == ("Pellmar 70", [], "")
    assert [(visit.tag, diary) for visit, diary, _ in home.visits] == [(gone.tag, f"/diary/{gone.tag}/")]
    assert (home.there, home.marks, home.passport) == ("", "5801", f"/reels/{gone.reel_id}/")


def test_a_reel_that_is_here_says_where() -> None:
    visit = walk.arrived(bench_hand())
    assert reels_of(visit.reel.customer)[0].there == "on the mat"
