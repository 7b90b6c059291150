"""Writing: the piece that comes back, what others wrote meanwhile, and the page without scripts."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.acts.write_word import write_word
from tests.pages.diary.at_the_desk import arrived, count, send, text, way

pytestmark = pytest.mark.django_db
FOUND = {"part": "pawl", "evidence": "tip worn to a hook"}


def seen(client: Client, visit: Any) -> int:
    return client.get(way(visit, "finding")).context["open"].form["seen"].value()


def test_the_answer_is_the_entry_and_the_block_open_for_the_next(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "finding"), htmx=True, seen=seen(bench, visit), **FOUND)
    assert answer.status_code == 200
    assert answer.headers["X-Written"] == "1"
    assert answer.headers["HX-Replace-Url"] == f"/diary/{visit.tag}/"
    page = answer.content.decode()
    assert page.count('<li class="leaf entry"') == 1
    assert page.count('id="next"') == 1
    assert "the parcel" not in text(answer)


def test_where_the_reel_lies_and_what_it_waits_for_is_told_anew(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    moved = send(bench, way(visit, "finding"), htmx=True, seen=seen(bench, visit), moved_to="jig", **FOUND)
    assert '<div id="where" hx-swap-oob="true">' in moved.content.decode()
    assert "On the jig since" in text(moved)


def test_what_others_wrote_meanwhile_is_shown_before_it(bench: Client, torbal: Any, ingjerd: Any) -> None:
    visit = arrived(torbal)
    before = seen(bench, visit)
    write_word(hand=ingjerd, visit=visit, words="she rang about Friday")
    answer = send(bench, way(visit, "finding"), htmx=True, seen=before, **FOUND)
    said = text(answer)
    assert "Ingjerd Vannes wrote this while you were writing." in said
    assert said.index("she rang about Friday") < said.index("tip worn to a hook")
    assert count(visit) == 3


def test_the_page_without_scripts_says_so_too(bench: Client, torbal: Any, ingjerd: Any) -> None:
    visit = arrived(torbal)
    before = seen(bench, visit)
    write_word(hand=ingjerd, visit=visit, words="she rang about Friday")
    answer = send(bench, way(visit, "finding"), seen=before, **FOUND)
    assert answer.status_code == 302
    page = bench.get(answer.headers["Location"].partition("#")[0])
    said = text(page)
    assert "Written." in said
    assert said.count("wrote this while you were writing") == 1


def test_ones_own_entries_are_never_news(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    before = seen(bench, visit)
    write_word(hand=torbal, visit=visit, words="from the other window")
    answer = send(bench, way(visit, "finding"), htmx=True, seen=before, **FOUND)
    assert "while you were writing" not in text(answer)
    assert "from the other window" in text(answer)


def test_a_refusal_keeps_what_was_typed_and_writes_nothing(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "finding"), htmx=True, part="pawl", evidence="", words="later")
    assert answer.status_code == 422
    assert 'value="pawl"' in answer.content.decode()
    assert "later" in answer.content.decode()
    assert count(visit) == 1


def test_the_place_goes_along_with_the_entry(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    send(bench, way(visit, "finding"), moved_to="bath", **FOUND)
    visit.refresh_from_db()
    assert visit.place == "bath"


def test_a_stranger_writes_nothing(torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(Client(), way(visit, "finding"), **FOUND)
    assert answer.status_code == 302
    assert answer.headers["Location"].startswith("/sign-in/")
    assert count(visit) == 1


def test_a_reel_that_has_gone_home_takes_only_words_and_money(bench: Client, torbal: Any) -> None:
    from tests.shop import walk

    visit = walk.agreed(torbal)
    walk.gone(torbal, visit)
    answer = send(bench, way(visit, "finding"), **FOUND)
    assert answer.status_code == 422
    assert "has gone home" in text(answer)
    assert send(bench, way(visit, "word"), words="she rang: it runs well").status_code == 302
    page = bench.get(f"/diary/{visit.tag}/")
    offered = [way.words for way in page.context["open"].others]
    assert offered == ["a word or photos", "a payment"]
