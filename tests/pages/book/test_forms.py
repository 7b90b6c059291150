"""A reason is needed, in words."""

from __future__ import annotations

import pytest

from spoolwright.pages.book.forms import AsideForm


@pytest.mark.parametrize(("reason", "valid"), [("wet felt", True), ("", False), ("   ", False)])
def test_the_reason(reason: str, valid: bool) -> None:
    assert AsideForm({"entry": "3", "reason": reason}, 3).is_valid() is valid


def test_each_form_has_names_of_its_own_on_the_page() -> None:
    assert AsideForm(None, 3)["reason"].id_for_label != AsideForm(None, 4)["reason"].id_for_label
