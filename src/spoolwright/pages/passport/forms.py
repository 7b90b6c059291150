"""What can be written into a passport by hand: another mark, the sheet that describes the reel."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.shop.questions import choices, reel_sheets


class MarkForm(forms.Form):
    """Marks are added and never changed: an old one may be what a reel is known by one day."""

    kind = forms.ChoiceField(label="What it is", choices=[(kind, kind) for kind in choices.MARK_KINDS])
    words = forms.CharField(
        label="The mark",
        max_length=300,
        help_text="As it stands there, or where it is and what it looks like.",
        widget=forms.TextInput({"autocomplete": "off"}),
    )


class SheetForm(forms.Form):
    """The sheets of the shop, each in the version that stands now."""

    sheet = forms.ChoiceField(label="The sheet that describes it")
    version = forms.IntegerField(widget=forms.HiddenInput)

    def __init__(self, data: Any = None, *, reel: Any) -> None:
        own = reel.sheet_version.sheet.slug if reel.sheet_version else ""
        super().__init__(data, initial={"sheet": own, "version": reel.version})
        every = [
            (one.sheet.slug, f"{one.sheet.shown}, version {one.latest}") for one in reel_sheets.all_sheets()
        ]
        self.fields["sheet"].choices = every

    def chosen(self) -> dict[str, Any]:
        """What the act is told."""
        given = self.cleaned_data
        return {"sheet_version": reel_sheets.version(given["sheet"]), "version": given["version"]}
