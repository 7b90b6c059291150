"""The row of links: only to pictures that are there, the one that is open marked."""

from __future__ import annotations

import pytest

from spoolwright.pages.gathered import picture_links as links


def test_every_link_leads_to_the_same_subject_and_takes_its_fill_along() -> None:
    found = links.picture_links("visit", 68, "carries", "fill=60+%25")
    here = next(link for link in found if link.is_here)
    assert here.address == "/diary/68/carries/?fill=60+%25"
    assert all(link.address.startswith("/diary/68/") for link in found)


def test_a_picture_whose_folder_is_not_there_is_left_out(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(links, "PICTURES", (("carries", "what it carries"), ("no_such_page", "nothing")))
    assert [link.words for link in links.picture_links("sheet", "tarvak-52")] == ["what it carries"]
