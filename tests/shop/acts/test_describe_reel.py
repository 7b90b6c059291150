"""A reel's sheet can be said later, by one hand at a time."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.acts.add_reel import NewReel, add_reel
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.acts.describe_reel import describe_reel
from spoolwright.shop.acts.refused import SomeoneElseWroteFirst

pytestmark = pytest.mark.django_db


@pytest.fixture
def aslak(hand: Any) -> Any:
    return add_customer(hand=hand, name="Aslak Rein")


def test_its_sheet_can_be_said_later_by_one_hand_at_a_time(hand: Any, owner: Any, aslak: Any) -> None:
    reel = add_reel(hand=hand, customer=aslak, reel=NewReel(described="Tarvak, old"))
    version = add_sheet_version(hand=hand, toml=reel_sheet.shipped()["tarvak-52"])
    described = describe_reel(hand=hand, reel=reel, sheet_version=version, version=reel.version)
    assert (described.sheet_version, described.version) == (version, 2)
    with pytest.raises(SomeoneElseWroteFirst):
        describe_reel(hand=owner, reel=reel, sheet_version=version, version=reel.version)
