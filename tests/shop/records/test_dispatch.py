"""How a reel went home is one of three ways, and one dispatch stands in one entry."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.acts.refused import FieldWasRefused
from spoolwright.shop.acts.send_home import WayHome, send_home
from spoolwright.shop.records.dispatch import Dispatch
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_there_are_three_ways_home(hand: Any) -> None:
    with pytest.raises(FieldWasRefused) as told:
        send_home(hand=hand, visit=walk.agreed(hand), way=WayHome(went_by="seagull"))
    assert told.value.field == "went_by"


def test_one_dispatch_an_entry(hand: Any) -> None:
    entry = walk.gone(hand, walk.agreed(hand)).entry
    with pytest.raises(IntegrityError), transaction.atomic():
        Dispatch(entry=entry, went_by="post").save()
