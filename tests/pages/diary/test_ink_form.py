"""What every form of the diary shares."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.pages.diary.ask.finding import FindingForm
from spoolwright.shop.questions import choices
from spoolwright.shop.questions.diary import diary
from tests.pages.diary.at_the_desk import arrived, desk_of, send, way

pytestmark = pytest.mark.django_db


def test_it_says_what_the_writer_had_seen(torbal: Any) -> None:
    visit = arrived(torbal)
    assert FindingForm(desk_of(torbal, visit))["seen"].value() == visit.last_seq


def test_the_places_are_those_of_the_bench_without_the_one_it_lies_at(torbal: Any) -> None:
    visit = arrived(torbal)
    offered = [value for value, _ in FindingForm(desk_of(torbal, visit)).fields["moved_to"].choices]
    assert offered == ["", *(place for place in choices.PLACES if place != "mat")]


def test_its_name_in_the_browser_is_the_same_wherever_it_stands(torbal: Any) -> None:
    visit = arrived(torbal)
    assert FindingForm(desk_of(torbal, visit)).keep == f"diary {visit.tag} finding"


def test_a_look_writes_nothing_and_asks_for_nothing(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "finding"), "look", part="pawl")
    assert answer.status_code == 200
    assert not answer.context["open"].form.errors
    assert 'value="pawl"' in answer.content.decode()


@pytest.mark.parametrize("again", ["-4", "0", "9" * 30, "४"])
def test_a_strange_number_is_no_old_entry(bench: Client, torbal: Any, again: str) -> None:
    visit = arrived(torbal)
    assert bench.get(f"{way(visit, 'finding')}?again={again}").status_code == 200
    answer = send(bench, way(visit, "finding"), part="pawl", evidence="worn", again=again)
    assert answer.status_code == 302
    assert not any(block.is_struck for block in diary(visit.pk).blocks)


def test_the_form_is_kept_by_name_and_carries_its_guard(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    page = bench.get(way(visit, "finding")).content.decode()
    assert f'data-keep="diary {visit.tag} finding"' in page
    assert 'name="seen"' in page
    assert 'enctype="multipart/form-data"' in page
    assert 'hx-target="#next"' in page


def test_nothing_is_written_but_by_the_button_that_says_so(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = bench.post(way(visit, "finding"), {"part": "pawl", "evidence": "worn"})
    assert answer.status_code == 200
    assert len(diary(visit.pk).blocks) == 1
