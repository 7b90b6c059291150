"""The customer's answer: exact words, a cap of its own, a yes to one option or a no to all."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import form, last, send, text, way
from tests.shop import walk

pytestmark = pytest.mark.django_db
SAID = {"exact_words": "yes, up to 1,200", "who": "Ragna Solbu", "channel": "telephone"}


def quoted(hand: Any, **told: Any) -> Any:
    visit = walk.arrived(hand, **told)
    walk.quoted(hand, visit)
    return visit


def option(client: Client, visit: Any) -> str:
    return form(client.get(way(visit, "answer"))).fields["option"].choices[0][0]


def test_a_yes_with_its_cap_in_the_customers_words(bench: Client, torbal: Any) -> None:
    visit = quoted(torbal)
    sent = SAID | {"option": option(bench, visit), "cap_minor": "1 200", "answered_at": "2026-03-02T13:22"}
    sent["quote"] = str(visit.entries.get(kind="quote").pk)
    assert send(bench, way(visit, "answer"), **sent).status_code == 302
    answer = last(visit).part
    assert (answer.cap_minor, answer.exact_words, answer.is_yes) == (1200_00, "yes, up to 1,200", True)
    assert "“yes, up to 1,200”" in text(bench.get(f"/diary/{visit.tag}/"))


def test_a_no_has_no_cap(bench: Client, torbal: Any) -> None:
    visit = quoted(torbal)
    sent = SAID | {"quote": str(visit.entries.get(kind="quote").pk), "option": "no", "cap_minor": "500"}
    assert send(bench, way(visit, "answer"), **sent).status_code == 302
    assert (last(visit).part.option, last(visit).part.cap_minor) == (None, None)


def test_silence_is_not_a_yes(bench: Client, torbal: Any) -> None:
    visit = quoted(torbal)
    sent = SAID | {"quote": str(visit.entries.get(kind="quote").pk), "option": option(bench, visit)}
    assert send(bench, way(visit, "answer"), **sent | {"exact_words": ""}).status_code == 422


def test_a_cap_below_the_option_is_refused_beside_its_field(bench: Client, torbal: Any) -> None:
    visit = quoted(torbal)
    sent = SAID | {"quote": str(visit.entries.get(kind="quote").pk), "option": option(bench, visit)}
    answer = send(bench, way(visit, "answer"), **sent, cap_minor="900 kr")
    assert answer.status_code == 422
    assert "cap_minor" in form(answer).errors
    assert "Choose a smaller option" in text(answer)


def test_a_reel_that_waits_for_its_answer_goes_back_to_the_mat(bench: Client, torbal: Any) -> None:
    visit = quoted(torbal)
    assert form(bench.get(way(visit, "answer")))["moved_to"].value() == "mat"


def test_the_law_is_said_before_the_answer(bench: Client, torbal: Any) -> None:
    assert "By law the bill may not pass" in text(bench.get(way(quoted(torbal), "answer")))


def test_without_a_quote_there_is_nothing_to_answer(bench: Client, torbal: Any) -> None:
    visit = walk.arrived(torbal)
    answer = bench.get(way(visit, "answer"))
    assert answer.status_code == 302
    assert answer.headers["Location"] == f"/diary/{visit.tag}/"


def test_an_extra_is_answered_for_itself(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    walk.quoted(torbal, visit, walk.option(walk.COG, key="cog"))
    fresh = form(bench.get(way(visit, "answer")))
    assert len(fresh.fields["quote"].choices) == 2
    assert fresh["quote"].value() == str(visit.entries.filter(kind="quote").latest("seq").pk)
    assert "the whole bill then 1,169.00" in fresh.fields["option"].choices[0][1].replace("\u00a0", " ")


def test_another_quotes_option_is_not_taken(bench: Client, torbal: Any) -> None:
    visit = quoted(torbal)
    other = quoted(torbal, name="Aslak Rein")
    sent = SAID | {"quote": str(visit.entries.get(kind="quote").pk), "option": option(bench, other)}
    assert send(bench, way(visit, "answer"), **sent).status_code == 422


def test_written_again_the_words_stand_there(bench: Client, torbal: Any) -> None:
    visit = walk.agreed(torbal)
    old = last(visit).entry
    fresh = form(bench.get(f"{way(visit, 'answer')}?again={old.pk}"))
    assert fresh["exact_words"].value() == "yes, up to 1,200"
    assert fresh["cap_minor"].value() == "1,200.00 kr"
