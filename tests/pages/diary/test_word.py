"""Plain words, another place, the promised days."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import arrived, file, form, last, photo, send, text, way

pytestmark = pytest.mark.django_db


def test_a_word_with_a_photo(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "word"), words="she rang", photos=[file(photo(), "slate.jpg")])
    assert answer.status_code == 302
    assert last(visit).entry.words == "she rang"
    assert last(visit).attached[0].attachment.original_name == "slate.jpg"


def test_another_place_in_words(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    fresh = form(bench.get(way(visit, "move")))
    places = [value for value, _ in fresh.fields["moved_to"].choices]
    assert "mat" not in places
    assert "asked shelf" in places
    version = fresh["version"].value()
    assert send(bench, way(visit, "move"), moved_to="bath", version=version).status_code == 302
    assert "In the bath since" in text(bench.get(f"/diary/{visit.tag}/"))


def test_two_that_carry_it_at_once_are_told(bench: Client, post: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    version = form(bench.get(way(visit, "move")))["version"].value()
    send(post, way(visit, "move"), moved_to="bath", version=version)
    answer = send(bench, way(visit, "move"), moved_to="jig", version=version)
    assert answer.status_code == 422
    assert "(now: bath)" in text(answer)


def test_a_promise_is_two_days(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    version = form(bench.get(way(visit, "promise")))["version"].value()
    sent = {"p50": "2026-06-07", "p90": "2026-06-14", "version": version}
    assert send(bench, way(visit, "promise"), **sent).status_code == 302
    visit.refresh_from_db()
    assert (visit.promised_p50, visit.promised_p90) == (date(2026, 6, 7), date(2026, 6, 14))
    assert "likely by 7 June 2026, almost surely by 14 June 2026" in last(visit).entry.words
