"""The kinds of reading, in words."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.sheets import reading_kinds
from tests.pages.diary.at_the_desk import arrived, form, send, typed_way, way

pytestmark = pytest.mark.django_db


def test_every_kind_of_the_registry_can_be_chosen(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    shown = form(bench.get(way(visit, "reading") + "?all=1"))
    assert [kind.title for kind in shown.kinds] == [k.title for k in reading_kinds.kinds().values()]
    assert {kind.address for kind in shown.kinds} == {typed_way(visit, k) for k in reading_kinds.kinds()}


def test_what_was_taken_is_said(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    send(bench, typed_way(visit, "mass"), values="338 g", line="on")
    shown = form(bench.get(way(visit, "reading") + "?all=1"))
    assert [kind.title for kind in shown.kinds if kind.taken] == ["Mass"]


def test_nothing_is_sent_to_it(bench: Client, torbal: Any) -> None:
    assert send(bench, way(arrived(torbal), "reading")).status_code == 405
