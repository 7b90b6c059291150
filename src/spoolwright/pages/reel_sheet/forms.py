"""What is asked of somebody who writes a sheet: its text, typed or from a file, and what is new in it."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.sheets.reel_sheet import LONGEST

LARGEST_FILE = 4 * LONGEST
"""Bytes: a letter of UTF-8 takes up to four."""
TEXT = {"rows": 26, "spellcheck": "false", "autocapitalize": "none", "autocomplete": "off", "wrap": "off"}


class SheetForm(forms.Form):
    """`after` is the number of the version that was on the screen, 0 where there was none."""

    file = forms.FileField(
        required=False,
        allow_empty_file=True,
        label="A file",
        help_text="A TOML file. Let it fall here or choose it; its text comes into the field below.",
        widget=forms.FileInput({"accept": ".toml,.txt,text/plain,application/toml"}),
    )
    toml = forms.CharField(
        required=False,
        strip=False,
        label="The sheet’s text",
        widget=forms.Textarea({**TEXT, "class": "sheet-text"}),
    )
    words = forms.CharField(
        required=False,
        max_length=300,
        label="What is new in it, and how it is known",
        help_text="such as: line level measured on three reels",
    )
    after = forms.IntegerField(widget=forms.HiddenInput, min_value=0)

    def __init__(self, data: Any = None, files: Any = None, *, start: str = "", after: int = 0) -> None:
        super().__init__(data, files, initial={"toml": start, "after": after})

    def clean_toml(self) -> str:
        # A browser sends a text field with the line ends of another age.
        return str(self.cleaned_data["toml"]).replace("\r\n", "\n").replace("\r", "\n")

    def clean_file(self) -> str | None:
        """The file's text, None where no file came."""
        file = self.cleaned_data["file"]
        if not file:
            return None
        if file.size > LARGEST_FILE:
            raise forms.ValidationError(
                f"“{file.name}” is too large for a sheet. Accepted: text of at most {LONGEST} characters."
            )
        if not file.size:
            raise forms.ValidationError(
                f"“{file.name}” is empty. Accepted: a TOML file with a reel sheet in it."
            )
        try:
            return file.read().decode("utf-8-sig").replace("\r\n", "\n")
        except UnicodeDecodeError:
            raise forms.ValidationError(
                f"“{file.name}” is not text in UTF-8. Accepted: a TOML file saved as UTF-8."
            ) from None

    def clean(self) -> dict[str, Any]:
        """The text that counts, as `text`: the file's where one came, else what was typed."""
        given = super().clean() or {}
        file = given.get("file")
        given["text"] = given.get("toml", "") if file is None else file
        if not given["text"].strip() and "file" not in self.errors:
            self.add_error("toml", "There is no text. Accepted: a reel sheet in TOML, typed or from a file.")
        return given

    def say_faulty(self, count: int) -> None:
        """Each fault stands beside the text; the summary says that there are some."""
        self.add_error("toml", f"{'One fault' if count == 1 else f'{count} faults'}, said beside the text.")

    @property
    def typed(self) -> str:
        """The text field as it was sent, or as it was at the beginning."""
        sent = self.data.get("toml", "") if self.is_bound else self.initial["toml"]
        return str(sent).replace("\r\n", "\n")

    def put_aside(self, text: str, last: str) -> str:
        """What had been typed where a file's text took its place; nothing where that stands anyway."""
        typed = self.typed if self.is_bound else ""
        return typed if typed.strip() and typed not in (text, last) else ""
