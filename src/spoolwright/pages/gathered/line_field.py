"""A field for a line in the words of an angler: "nylon 0.40 mm", "braid 0.25 mm 20 kg"."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright import quantities
from spoolwright.judgement.line_said import read_line
from spoolwright.pages.gathered.subject import LONGEST_LINE


class LineField(forms.CharField):
    """Text in, the same text out once it is a line that we know; empty where none is to be reckoned."""

    def __init__(self, **words: Any) -> None:
        words.setdefault("label", "Line on it")
        words.setdefault("initial", "")
        words.setdefault("help_text", "such as nylon 0.40 mm, or braid 0.25 mm 20 kg")
        super().__init__(
            max_length=LONGEST_LINE, required=False, widget=forms.TextInput({"autocomplete": "off"}), **words
        )

    def clean(self, value: Any) -> str:
        text = str(super().clean(value))
        if text:
            try:
                read_line(text)
            except quantities.NotAQuantity as fault:
                raise forms.ValidationError(str(fault), code="not-a-line") from fault
        return text
