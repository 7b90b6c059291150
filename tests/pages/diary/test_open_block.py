"""The words of the open block."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.judgement.what_next import MINUTES
from spoolwright.pages.diary import open_block
from spoolwright.pages.diary.ask.word import WordForm
from spoolwright.pages.diary.due import FORMS
from tests.pages.diary.at_the_desk import arrived, desk_of

pytestmark = pytest.mark.django_db


def test_what_comes_next_is_said_with_its_minutes(torbal: Any) -> None:
    block = open_block.laid_out(desk_of(torbal, arrived(torbal)), None)
    assert block.title == "Next: mass"
    assert block.is_next
    assert block.minutes == MINUTES["reading"]


def test_a_chosen_form_stands_there_in_its_own_name(torbal: Any) -> None:
    desk = desk_of(torbal, arrived(torbal))
    block = open_block.laid_out(desk, WordForm(desk))
    assert (block.title, block.is_next, block.says) == ("A word", False, "")


def test_every_act_of_judgement_has_words_for_it() -> None:
    assert set(MINUTES) <= {*FORMS, *open_block.TITLES, "reading"}
