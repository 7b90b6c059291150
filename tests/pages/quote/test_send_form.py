"""What goes with the question."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from spoolwright.pages.quote.send_form import SendForm
from spoolwright.pages.words import when
from tests.pages import pier_reel

pytestmark = pytest.mark.django_db


def test_a_first_question_sends_the_reel_to_the_asked_shelf_for_a_month(visit: Any, sit_down: Any) -> None:
    form = SendForm(None, sit_down(visit), inside_cap=False)
    assert form["moved_to"].value() == "asked shelf"
    assert form["valid_until"].value() == when.today() + timedelta(days=30)
    assert form["seen"].value() == sit_down(visit).diary.last_seq
    assert "deposit" in form.fields


def test_inside_the_cap_the_reel_stays_where_it_is(
    hand: Any, desk_client: Any, visit: Any, sit_down: Any
) -> None:
    pier_reel.answered(hand, pier_reel.quoted(desk_client, visit, moved_to=["bath"]))
    desk = sit_down(visit)
    form = SendForm(None, desk, inside_cap=True)
    assert form["moved_to"].value() == "bath"
    assert "deposit" not in form.fields, "it was asked with the first question"


def test_money_and_days_are_read_as_typed(visit: Any, sit_down: Any) -> None:
    data = {"deposit": "200 kr", "valid_until": "2030-01-31", "moved_to": "shelf", "seen": "3"}
    form = SendForm(data, sit_down(visit), inside_cap=False)
    assert form.is_valid(), form.errors
    assert (form.cleaned_data["deposit"], form.cleaned_data["seen"]) == (200_00, 3)
