"""Files that came with a form: chosen once, kept through every refusal, and nobody else's."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.pages.diary.ask.kept_files import MOST
from spoolwright.shop.acts.attach_file import attach_file
from tests.pages.diary.at_the_desk import arrived, file, form, last, photo, send, way

pytestmark = pytest.mark.django_db
FOUND = {"part": "pawl", "evidence": "tip worn"}


def brought(client: Client, visit: Any, *files: Any, **sent: Any) -> Any:
    return form(send(client, way(visit, "finding"), "look", photos=list(files), **sent)).files_beside


def test_a_photo_chosen_once_is_written_with_its_words(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    kept = brought(bench, visit, file(photo(), "a.jpg"), file(photo("PNG"), "b.png"))
    first, second = kept.attachments
    sent = {
        "photos_kept": [first.pk, second.pk],
        f"photos_caption_{first.pk}": "tip beside a scale",
        f"photos_caption_{second.pk}": "",
    }
    send(bench, way(visit, "finding"), **FOUND, **sent)
    written = last(visit).attached
    assert [(f.attachment, f.caption) for f in written] == [(first, "tip beside a scale"), (second, "")]


def test_the_caption_is_the_words_for_who_cannot_see(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    kept = brought(bench, visit, file(photo(), "a.jpg"))
    pk = kept.last.pk
    send(bench, way(visit, "finding"), photos_kept=pk, **{f"photos_caption_{pk}": "the tip"}, **FOUND)
    page = bench.get(f"/diary/{visit.tag}/").content.decode()
    assert 'alt="the tip"' in page


def test_a_photo_without_words_says_at_least_who_took_it(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    pk = brought(bench, visit, file(photo(), "a.jpg")).last.pk
    send(bench, way(visit, "finding"), photos_kept=pk, **FOUND)
    assert 'alt="Photo without words, by Torbal Kvie' in bench.get(f"/diary/{visit.tag}/").content.decode()


def test_one_can_be_left_out_again(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    kept = brought(bench, visit, file(photo(), "a.jpg"), file(photo(), "b.jpg"))
    first, second = (a.pk for a in kept.attachments)
    send(bench, way(visit, "finding"), photos_kept=[first, second], photos_left_out=first, **FOUND)
    assert [f.attachment.pk for f in last(visit).attached] == [second]


def test_files_of_another_hand_are_not_taken_by_their_number(
    bench: Client, torbal: Any, ingjerd: Any
) -> None:
    visit = arrived(torbal)
    hers = attach_file(hand=ingjerd, data=photo(), original_name="private.jpg")
    send(bench, way(visit, "finding"), photos_kept=hers.pk, **FOUND)
    assert last(visit).attached == ()


@pytest.mark.parametrize("number", ["-1", "1e3", "९", "9" * 30, "x"])
def test_a_strange_number_is_no_file(bench: Client, torbal: Any, number: str) -> None:
    visit = arrived(torbal)
    assert send(bench, way(visit, "finding"), photos_kept=number, **FOUND).status_code == 302


def test_more_than_twelve_are_said_to_be_too_many(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    files = [file(photo(size=(20, 20)), f"{k}.jpg") for k in range(MOST + 1)]
    kept = brought(bench, visit, *files)
    assert len(kept.attachments) == MOST
    assert "12.jpg" in kept.faults[0]


def test_any_other_file_is_kept_as_it_is(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    pk = brought(bench, visit, file(b"%PDF-1.7", "letter.pdf")).last.pk
    send(bench, way(visit, "finding"), photos_kept=pk, **FOUND)
    assert "letter.pdf" in bench.get(f"/diary/{visit.tag}/").content.decode()
