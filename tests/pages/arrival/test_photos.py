"""Photos: known by their first bytes, put away at once, and only one's own can be taken up again."""

from __future__ import annotations

import pytest
from django.test import Client

from spoolwright.shop.acts.attach_file import attach_file
from tests.pages.arrival.sending import arrival, photo, refused, send
from tests.people import owner
from tests.shop.walk import PHOTO

pytestmark = pytest.mark.django_db


@pytest.mark.parametrize(("name", "data"), [("notes.jpg", b"plain words"), ("spin.wav", b"RIFF0000WAVEfmt ")])
def test_what_is_no_picture_is_refused_by_its_bytes(desk: Client, name: str, data: bytes) -> None:
    response = send(desk, r0_photos=photo(name, data))
    assert refused(response, "r0_photos")
    assert "is no picture. Accepted" in str(response.context["form"].errors)


def test_an_empty_file_is_refused_in_words(desk: Client) -> None:
    assert refused(send(desk, r0_photos=photo("slate.jpg", b"")), "r0_photos")


def test_several_photos_stand_in_the_order_in_which_they_came(desk: Client) -> None:
    send(desk, r0_photos=[photo("a.jpg"), photo("b.jpg", PHOTO + b"1")])
    assert [a.attachment.original_name for a in arrival(1).attached] == ["a.jpg", "b.jpg"]


def test_each_reel_has_its_own(desk: Client) -> None:
    send(desk, count_0="2", r1_described="Pellmar 70", r1_photos=photo("b.jpg"))
    assert [len(arrival(tag).attached) for tag in (1, 2)] == [0, 1]


def test_somebody_elses_file_is_not_handed_over_by_its_number(desk: Client) -> None:
    hers = attach_file(hand=owner(), data=PHOTO, original_name="hers.jpg")
    for kept in (str(hers.pk), "x", "9" * 30, f"{hers.pk},²"):
        form = send(desk, step="look", r0_photos_kept=kept).context["form"]
        assert form.around.photos[0].kept == []
