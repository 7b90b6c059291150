"""What goes with the question: words, a deposit, how long it holds, and where the reel lies meanwhile."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

from django import forms

from spoolwright.pages.quote.desk import Desk
from spoolwright.pages.words import when
from spoolwright.pages.words.asked import DayField, MoneyField, ask_in
from spoolwright.shop.questions import choices

HOLDS = timedelta(days=30)


class SendForm(forms.Form):
    """`inside_cap` says that the extra lies inside what the customer allowed: then the work goes on."""

    words = forms.CharField(
        label="A word to the customer",
        required=False,
        widget=forms.Textarea({"rows": 3}),
        help_text="Stands in the diary and on the customer's page.",
    )
    deposit = MoneyField(label="A deposit that is asked for", required=False)
    valid_until = DayField(label="The quote holds until", required=False)
    moved_to = forms.ChoiceField(label="Meanwhile the reel lies", choices=[(p, p) for p in choices.PLACES])
    seen = forms.IntegerField(required=False, widget=forms.HiddenInput)

    def __init__(self, data: Any, desk: Desk, *, inside_cap: bool) -> None:
        place = desk.visit.place if inside_cap else "asked shelf"
        initial = {
            "valid_until": when.today() + HOLDS,
            "moved_to": place,
            "seen": desk.diary.last_seq,
        }
        super().__init__(data, initial=initial)
        if desk.is_extra:
            del self.fields["deposit"]
        ask_in(self, desk.system, desk.shop)
