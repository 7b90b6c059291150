"""Sheets in use, and what each version says."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.questions import reel_sheets

pytestmark = pytest.mark.django_db


def test_every_shipped_sheet_can_be_kept_and_read_back(hand: Any) -> None:
    for text in reel_sheet.shipped().values():
        add_sheet_version(hand=hand, toml=text)
    assert {row.sheet.slug for row in reel_sheets.all_sheets()} == set(reel_sheet.shipped())
    for slug, text in reel_sheet.shipped().items():
        assert reel_sheets.read(reel_sheets.version(slug)) == reel_sheet.read(text)
