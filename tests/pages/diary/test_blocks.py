"""How an entry is told: its day once, its way to be written again, its files."""

from __future__ import annotations

from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from django.template.loader import get_template

from spoolwright.pages.diary.told.blocks import told
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.write_word import write_word
from spoolwright.shop.questions import choices
from spoolwright.shop.questions.diary import diary
from tests.pages.diary.at_the_desk import arrived, desk_of
from tests.shop import walk

OSLO = ZoneInfo("Europe/Oslo")


def test_every_kind_of_entry_has_its_template() -> None:
    for kind in choices.ENTRY_KINDS:
        assert get_template(f"diary/told/_{kind}.html")


@pytest.mark.django_db
def test_a_day_is_said_once(torbal: Any) -> None:
    with clock.as_of(datetime(2026, 3, 2, 9, 0, tzinfo=OSLO)):
        visit = arrived(torbal)
        write_word(hand=torbal, visit=visit, words="one")
    with clock.as_of(datetime(2026, 3, 3, 0, 30, tzinfo=OSLO)):
        write_word(hand=torbal, visit=visit, words="two")
    days = [one.day for one in told(desk_of(torbal, visit), diary(visit.pk).blocks)]
    assert [day.day if day else None for day in days] == [2, None, 3]


@pytest.mark.django_db
def test_only_others_are_news_and_only_after_what_was_seen(torbal: Any, ingjerd: Any) -> None:
    visit = arrived(torbal)
    write_word(hand=ingjerd, visit=visit, words="hers")
    write_word(hand=torbal, visit=visit, words="mine")
    blocks = diary(visit.pk).blocks
    desk = desk_of(torbal, visit)
    assert [one.meanwhile for one in told(desk, blocks, seen=1)] == ["", "Ingjerd Vannes", ""]
    assert [one.meanwhile for one in told(desk, blocks)] == ["", "", ""]


@pytest.mark.django_db
def test_each_kind_leads_to_its_own_form_again(torbal: Any) -> None:
    visit = walk.everything(torbal)
    ways = {one.block.kind: one.again for one in told(desk_of(torbal, visit), diary(visit.pk).blocks)}
    assert ways["finding"] == ""
    assert ways["dispatch"].startswith(f"/diary/{visit.tag}/write/dispatch/?again=")
    home = diary(visit.pk).of_kind("dispatch")[0].entry
    from spoolwright.shop.acts.strike_entry import strike_entry

    strike_entry(hand=torbal, entry=home, reason="not yet")
    ways = {one.block.kind: one.again for one in told(desk_of(torbal, visit), diary(visit.pk).blocks)}
    assert ways["finding"].startswith(f"/diary/{visit.tag}/write/finding/?again=")
    assert ways["reading"].startswith(f"/diary/{visit.tag}/reading/pull_full/?again=")
    assert ways["arrival"] == ways["quote"] == ways["proof"] == ""
