"""Money that came in, or was given back."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.words.asked import MoneyField
from spoolwright.shop.questions import choices
from spoolwright.shop.questions.blocks import Block

IN, BACK = "in", "back"


class PaymentForm(InkForm):
    what = "payment"
    title = "A payment"
    button = "Write the payment"
    template = "diary/ask/_payment.html"
    own_move = False
    own_files = False

    amount_minor = MoneyField(label="The sum")
    way = forms.ChoiceField(
        label="It was",
        choices=((IN, "paid to us"), (BACK, "given back by us")),
        widget=forms.RadioSelect,
        initial=IN,
    )
    paid_by = forms.ChoiceField(
        label="By", choices=[(p, p) for p in choices.PAID_BY], widget=forms.RadioSelect, initial="transfer"
    )

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.part is None:
            return {}
        amount = old.part.amount_minor
        return {
            "amount_minor": abs(amount),
            "way": IN if amount > 0 else BACK,
            "paid_by": old.part.paid_by,
        }

    def amount(self) -> int:
        given = self.cleaned_data
        return given["amount_minor"] if given["way"] == IN else -given["amount_minor"]
