"""Work in ink by hand: works with their cautions, parts, lubricants, and nothing left over without a word."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.judgement.works import all_works
from tests.pages.diary.at_the_desk import arrived, form, last, send, text, way
from tests.shop import walk

pytestmark = pytest.mark.django_db
DONE = {"done": ["service", "fit pawl"], "minutes": "74", "left": "nothing"}


def agreed(hand: Any, sheet: str = "tarvak-58r") -> Any:
    visit = arrived(hand, sheet=sheet)
    walk.answered(hand, walk.quoted(hand, visit))
    return visit


def test_what_was_agreed_stands_first_with_the_minutes_planned(bench: Client, torbal: Any) -> None:
    page = bench.get(way(agreed(torbal), "work"))
    assert [row["title"] for row in form(page).agreed_rows] == ["Strip, wash, regrease", "Fit a pawl"]
    assert "1 h 8 min planned" in text(page)


def test_what_is_done_is_not_offered_as_agreed_again(bench: Client, torbal: Any) -> None:
    visit = agreed(torbal)
    send(bench, way(visit, "work"), **DONE | {"done": ["service"]})
    assert [row["id"] for row in form(bench.get(way(visit, "work"))).agreed_rows] == ["fit pawl"]


def test_every_work_of_the_list_stands_there_with_its_caution(bench: Client, torbal: Any) -> None:
    shown = form(bench.get(way(agreed(torbal), "work"))).other_rows
    mine = [w for w in all_works().values() if "round multiplier" in w.kinds]
    assert [row["id"] for row in shown] == [work.id for work in mine]
    assert [row["caution"] for row in shown] == [work.caution for work in mine]
    page = text(bench.get(way(agreed(torbal, sheet=""), "work")))
    assert "Solvents: gloves, extraction, away from flame" in page
    assert "the product’s safety data sheet and licensed practice come before these words" in page


def test_it_is_written_with_parts_and_lubricants(bench: Client, torbal: Any) -> None:
    visit = agreed(torbal)
    parts = {
        "part-0-what": "pawl",
        "part-0-source": "new",
        "part-1-what": "check spring",
        "part-1-count": "2",
        "part-1-source": "own-made",
        "part-1-made_from": "0.8 mm wire",
        "oil-0-point": "spool bearings",
        "oil-0-lubricant": "O1",
        "oil-0-amount": "1 needle drop",
        "oil-0-lot": "G2-07",
    }
    assert send(bench, way(visit, "work"), **DONE, **parts).status_code == 302
    work = last(visit).part
    assert [d.title for d in work.done.all()] == ["Strip, wash, regrease", "Fit a pawl"]
    made = [(p.what, p.count, p.source, p.made_from) for p in work.parts.all()]
    assert made == [("pawl", 1, "new", ""), ("check spring", 2, "own-made", "0.8 mm wire")]
    used = work.lubricants.get()
    assert (used.point, used.lubricant, used.amount, used.lot) == (
        "spool bearings", "O1", "1 needle drop", "G2-07",
    )  # fmt: skip


def test_an_own_made_part_says_from_what(bench: Client, torbal: Any) -> None:
    visit = agreed(torbal)
    answer = send(bench, way(visit, "work"), **DONE, **{"part-0-what": "spring", "part-0-source": "own-made"})
    assert answer.status_code == 422
    assert "write from what, such as the wire and its size" in text(answer)
    assert 'value="spring"' in answer.content.decode()


def test_work_of_ones_own_words(bench: Client, torbal: Any) -> None:
    visit = agreed(torbal)
    sent = {"own_words": "Straightened the foot", "minutes": "12", "left": "nothing"}
    assert send(bench, way(visit, "work"), **sent).status_code == 302
    assert last(visit).part.done.get().title == "Straightened the foot"


def test_what_is_left_over_is_written_and_read(bench: Client, torbal: Any) -> None:
    visit = agreed(torbal)
    sent = DONE | {"left": "something", "left_over": "one thrust washer"}
    assert send(bench, way(visit, "work"), **sent).status_code == 302
    assert last(visit).part.left_over == "one thrust washer"
    assert "Left over on the mat: one thrust washer" in text(bench.get(f"/diary/{visit.tag}/"))


def test_a_reel_that_lies_open_is_counted_later(bench: Client, torbal: Any) -> None:
    visit = agreed(torbal)
    send(bench, way(visit, "work"), **DONE | {"left": "open"}, words="Drying over night.")
    assert last(visit).entry.words.startswith("Drying over night. The reel lies open still")


def test_the_sheet_says_how_many_pieces_there_are_to_count(bench: Client, torbal: Any) -> None:
    assert "The sheet lists 118 pieces" in text(bench.get(way(agreed(torbal), "work")))


def test_before_a_yes_nothing_is_done(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "work"), own_words="washed", minutes="5", left="nothing")
    assert answer.status_code == 422
    assert "silence is not a yes" in text(answer)


def test_more_lines_keep_what_was_typed(bench: Client, torbal: Any) -> None:
    visit = agreed(torbal)
    answer = send(bench, way(visit, "work"), "look", **{"part-0-what": "pawl", "part-1-what": "worm"})
    assert answer.status_code == 200
    assert len(form(answer).parts) == 4
    assert 'value="worm"' in answer.content.decode()


def test_written_again_everything_is_there(bench: Client, torbal: Any) -> None:
    visit = agreed(torbal)
    send(bench, way(visit, "work"), **DONE, **{"part-0-what": "pawl"})
    fresh = form(bench.get(f"{way(visit, 'work')}?again={last(visit).entry.pk}"))
    assert fresh["minutes"].value() == 74
    assert fresh.parts[0]["what"].value() == "pawl"
    assert [row["id"] for row in [*fresh.agreed_rows, *fresh.other_rows] if row["checked"]] == [
        "service",
        "fit pawl",
    ]


def test_another_of_the_model_that_lies_open_is_told_before_the_work(bench: Client, torbal: Any) -> None:
    other = agreed(torbal)
    send(bench, way(other, "work"), moved_to="mat", **DONE)
    page = text(bench.get(way(arrived(torbal, sheet="tarvak-58r"), "work")))
    assert f"Number {other.tag}, Tarvak 58R, lies open too, on the mat" in page
