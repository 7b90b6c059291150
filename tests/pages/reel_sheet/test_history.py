"""Versions newest first, each with what it changed."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from tests.people import bench_hand

pytestmark = pytest.mark.django_db


def test_each_version_says_who_when_why_and_what_changed(desk: Client, shelf: Any, hand: Any) -> None:
    first = shelf["tarvak-54c"]
    second = first.toml.replace('line_level = "2.0 mm"', 'line_level = "2.5 mm"')
    add_sheet_version(hand=bench_hand(), toml=second, after=1, words="measured on three reels")
    add_sheet_version(hand=hand, toml=second + "\n# tidied\n", after=2)
    page = desk.get("/sheets/tarvak-54c/versions/").content.decode()
    assert page.index("Version 3, which stands") < page.index("Version 2") < page.index("Version 1")
    assert "Spool, line level: 2.5 mm in place of 2 mm." in page
    assert "measured on three reels" in page
    assert "Torbal Kvie" in page
    assert "Nothing but the wording of the file is different from version 2." in page
    assert "The first that was written." in page


def test_an_older_version_is_drawn_and_says_that_another_stands(desk: Client, shelf: Any, hand: Any) -> None:
    first = shelf["tarvak-54c"]
    add_sheet_version(hand=hand, toml=first.toml.replace('width = "32 mm"', 'width = "30 mm"'), after=1)
    old = desk.get("/sheets/tarvak-54c/?version=1&part=spool").content.decode()
    assert "The one that stands is version 2" in old
    assert "32\u00a0mm" in old
    assert "30\u00a0mm" in desk.get("/sheets/tarvak-54c/?part=spool").content.decode()
    assert desk.get("/sheets/tarvak-54c/?version=9").status_code == 404
