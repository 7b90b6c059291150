"""What was set aside counts again, and is taken back once."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.set_aside import set_aside
from spoolwright.shop.acts.take_back import WasTakenBackAlready, take_back
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_it_is_taken_back_once(hand: Any, owner: Any) -> None:
    entry = walk.read(hand, walk.arrived(hand), "pull_full", 60.0, 0.5, "force").entry
    aside = set_aside(hand=hand, entry=entry, reason="gauge not at zero")
    back = take_back(hand=owner, set_aside=aside, words="it was: looked again")
    assert (back.set_aside, back.author, back.words) == (aside, owner, "it was: looked again")
    with pytest.raises(WasTakenBackAlready, match=owner.shown):
        take_back(hand=hand, set_aside=aside)
