"""Quotes and invoices in the diary, with the ways to their pages."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.diary.told import offers
from spoolwright.shop.questions.diary import diary
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_quote_shows_every_option_and_whether_it_is_an_extra(torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.quoted(torbal, visit, walk.option(walk.COG, key="cog"))
    first, extra = (offers.of_quote(block.part) for block in diary(visit.pk).of_kind("quote"))
    assert [option.key for option in first["options"]] == ["put right"]
    assert (first["is_extra"], extra["is_extra"]) == (False, True)


def test_an_invoice_shows_its_lines(torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.billed(torbal, visit)
    facts = offers.of_invoice(diary(visit.pk).of_kind("invoice")[0].part)
    assert [line.what for line in facts["lines"]] == [charge.title for charge in walk.CHARGES]
