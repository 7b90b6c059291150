"""A text field that offers words and takes any other: the part in your own words, or one of the sheet's."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from django import forms
from django.utils.html import format_html, format_html_join
from django.utils.safestring import SafeString


class WordsInput(forms.TextInput):
    """An input with a list of offered words behind it."""

    def __init__(self, offered: Iterable[str] = (), attrs: dict[str, Any] | None = None) -> None:
        super().__init__({"autocomplete": "off"} | (attrs or {}))
        self.offered = list(dict.fromkeys(offered))

    def render(
        self, name: str, value: Any, attrs: dict[str, Any] | None = None, renderer: Any = None
    ) -> SafeString:
        given = attrs or {}
        if not self.offered:
            return super().render(name, value, given, renderer)
        words = f"{given.get('id', name)}-offered"
        drawn = super().render(name, value, given | {"list": words}, renderer)
        options = format_html_join("", '<option value="{}"></option>', ((word,) for word in self.offered))
        return format_html('{}<datalist id="{}">{}</datalist>', drawn, words, options)


class WordsField(forms.CharField):
    """Words, with some offered."""

    def __init__(self, offered: Iterable[str] = (), **kwargs: Any) -> None:
        super().__init__(widget=WordsInput(offered), **kwargs)
