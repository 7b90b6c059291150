"""Setting a proof aside: from which coefficient, and why."""

from __future__ import annotations

from typing import Any

from django import forms


class AsideForm(forms.Form):
    """One form for each proof on the page; only the one that was sent carries what was typed."""

    reason = forms.CharField(
        label="Why it does not count",
        help_text="It stays on this page, with this reason beside it.",
        widget=forms.TextInput({"maxlength": 1000, "autocomplete": "off"}),
        error_messages={"required": "A reason is needed: write it in your own words."},
    )
    everywhere = forms.BooleanField(label="Leave it out of every other coefficient too", required=False)
    entry = forms.IntegerField(widget=forms.HiddenInput)

    def __init__(self, data: Any, entry: int) -> None:
        super().__init__(data, initial={"entry": entry}, auto_id=f"aside-{entry}-%s")
        self.number = entry
