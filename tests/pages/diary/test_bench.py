"""Findings and work at their addresses; what a second hand wrote meanwhile is never lost."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.questions.diary import diary
from tests.pages.diary.at_the_desk import arrived, send, way

pytestmark = pytest.mark.django_db


def test_two_hands_who_write_at_once_both_keep_what_they_wrote(
    bench: Client, post: Client, torbal: Any
) -> None:
    visit = arrived(torbal)
    seen = visit.last_seq
    send(bench, way(visit, "finding"), part="pawl", evidence="worn", seen=seen)
    send(post, way(visit, "finding"), part="worm", evidence="notched", seen=seen)
    written = [(b.part.part, b.entry.author.username) for b in diary(visit.pk).of_kind("finding")]
    assert written == [("pawl", "torbal"), ("worm", "ingjerd")]


@pytest.mark.parametrize("what", ["finding", "work"])
def test_each_form_stands_in_the_open_block(bench: Client, torbal: Any, what: str) -> None:
    assert bench.get(way(arrived(torbal), what)).context["open"].form.what == what
