"""Words, places and promised days at their addresses."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import arrived, way

pytestmark = pytest.mark.django_db


@pytest.mark.parametrize(
    ("asked", "form"), [("word", "word"), ("move", "move"), ("promise", "promise"), ("nothing", "word")]
)
def test_each_form_stands_in_the_open_block(bench: Client, torbal: Any, asked: str, form: str) -> None:
    assert bench.get(way(arrived(torbal), asked)).context["open"].form.what == form
