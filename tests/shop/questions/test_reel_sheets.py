"""Sheets in use, and what each version says."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.acts.add_reel import NewReel, add_reel
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.questions import reel_sheets

pytestmark = pytest.mark.django_db


def test_every_shipped_sheet_can_be_kept_and_read_back(hand: Any) -> None:
    for text in reel_sheet.shipped().values():
        add_sheet_version(hand=hand, toml=text)
    assert {row.sheet.slug for row in reel_sheets.all_sheets()} == set(reel_sheet.shipped())
    for slug, text in reel_sheet.shipped().items():
        assert reel_sheets.read(reel_sheets.version(slug)) == reel_sheet.read(text)


def test_the_newest_version_stands_and_the_reels_are_counted_over_all_versions(hand: Any) -> None:
    text = reel_sheet.shipped()["tarvak-58r"]
    first = add_sheet_version(hand=hand, toml=text)
    second = add_sheet_version(hand=hand, toml=text + "\n# measured again\n", after=1)
    add_sheet_version(hand=hand, toml=reel_sheet.shipped()["tarvak-52"])
    owner = add_customer(hand=hand, name="Ragna Solbu")
    for version in (first, second, None):
        add_reel(
            hand=hand,
            customer=owner,
            reel=NewReel(described="Tarvak 58R", sheet_version=version, twin_mark=f"dot {version}"),
        )
    rows = {row.sheet.slug: (row.latest, row.reels) for row in reel_sheets.all_sheets()}
    assert rows == {"tarvak-58r": (2, 2), "tarvak-52": (1, 0)}
    assert {s: v.number for s, v in reel_sheets.newest_versions().items()} == {
        "tarvak-58r": 2,
        "tarvak-52": 1,
    }
    assert len(reel_sheets.reels_of("tarvak-58r")) == 2
    assert reel_sheets.reels_of("tarvak-52") == ()
