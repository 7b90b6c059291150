"""A plain word with photos, a move to another place, the promised days."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.words.asked import DayField
from spoolwright.shop.questions import choices
from spoolwright.shop.questions.blocks import Block


class WordForm(InkForm):
    what = "word"
    title = "A word"
    button = "Write it"
    template = "diary/ask/_word.html"
    own_move = False
    files_open = True

    words = forms.CharField(label="In your own words", max_length=4000, widget=forms.Textarea({"rows": 3}))

    def started_again(self, old: Block) -> dict[str, Any]:
        return {"words": old.entry.words}


class MoveForm(InkForm):
    what = "move"
    title = "Carry it to another place"
    button = "Write where it is"
    template = "diary/ask/_move.html"
    own_files = False

    version = forms.IntegerField(widget=forms.HiddenInput)

    def lay_out(self) -> None:
        here = self.desk.visit.place
        self.fields["moved_to"] = forms.ChoiceField(
            label=f"From the {here}",
            choices=[(place, f"to the {place}") for place in choices.PLACES if place != here],
            widget=forms.RadioSelect,
        )

    def started(self) -> dict[str, Any]:
        return {"version": self.desk.visit.version}


class PromiseForm(InkForm):
    what = "promise"
    title = "The days it is promised for"
    button = "Write the promise"
    template = "diary/ask/_promise.html"
    own_move = False
    own_files = False

    p50 = DayField(label="Ready one time in two by", help_text="The likely day.")
    p90 = DayField(label="Ready nine times in ten by", help_text="The safe day: the one to tell.")
    version = forms.IntegerField(widget=forms.HiddenInput)

    def started(self) -> dict[str, Any]:
        visit = self.desk.visit
        return {"p50": visit.promised_p50, "p90": visit.promised_p90, "version": visit.version}
