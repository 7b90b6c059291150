"""Cautions: short, and said in the same words wherever the same thing is done."""

from __future__ import annotations

import pytest

from spoolwright.pages.diary.ask.pull import PullForm
from spoolwright.pages.diary.ask.spin import SpinForm
from spoolwright.sheets import cautions


@pytest.mark.parametrize("words", [cautions.LINE_UNDER_LOAD, cautions.FAST_SPOOL])
def test_each_is_short_and_tells_what_to_cover(words: str) -> None:
    assert len(words.split()) < 30
    assert "eyes covered" in words


def test_the_forms_say_them() -> None:
    assert PullForm.cautions == (cautions.LINE_UNDER_LOAD,)
    assert SpinForm.cautions == (cautions.FAST_SPOOL,)
