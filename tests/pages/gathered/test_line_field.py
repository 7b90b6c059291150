"""A line in an angler's words: kept as typed, refused with what is accepted."""

from __future__ import annotations

import pytest
from django import forms

from spoolwright.pages.gathered.line_field import LineField


@pytest.mark.parametrize("text", ["", "nylon 0.40 mm", "braid 0.25 mm 20 kg"])
def test_a_line_that_we_know_comes_back_as_it_was_typed(text: str) -> None:
    assert LineField().clean(text) == text


@pytest.mark.parametrize("text", ["spaghetti 2 mm", "nylon", "braid 40 mm"])
def test_another_is_refused_with_what_is_accepted(text: str) -> None:
    with pytest.raises(forms.ValidationError, match="Accepted"):
        LineField().clean(text)
