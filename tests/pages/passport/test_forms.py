"""What can be written into a passport by hand."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.pages.passport.forms import MarkForm, SheetForm
from spoolwright.shop.questions.choices import MARK_KINDS

pytestmark = pytest.mark.django_db


def test_every_kind_of_mark_is_offered() -> None:
    assert [value for value, _ in MarkForm().fields["kind"].choices] == list(MARK_KINDS)


def test_the_sheets_of_the_shop_are_offered_in_the_version_that_stands(visit: Any) -> None:
    form = SheetForm({"sheet": "tarvak-58r", "version": "1"}, reel=visit.reel)
    assert form.fields["sheet"].choices == [("tarvak-58r", "Tarvak 58R, version 1")]
    assert form.is_valid()
    assert form.chosen()["sheet_version"].number == 1


@pytest.mark.parametrize("sent", [{"sheet": "no-such"}, {"sheet": "tarvak-58r", "version": "new"}, {}])
def test_another_sheet_is_refused(visit: Any, sent: dict[str, str]) -> None:
    assert not SheetForm(sent, reel=visit.reel).is_valid()
