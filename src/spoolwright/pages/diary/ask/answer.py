"""The customer's answer: who, when, by which way, in the exact words, up to what sum, to which option."""

from __future__ import annotations

from functools import cached_property
from typing import Any

from django import forms
from django.utils import timezone

from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.words.asked import MoneyField
from spoolwright.pages.words.money import show
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.questions import choices
from spoolwright.shop.questions.blocks import Block

NO = "no"


class MomentField(forms.DateTimeField):
    """A day and an hour, with the browser's own picker."""

    def __init__(self, **kwargs: Any) -> None:
        picker = forms.DateTimeInput(format="%Y-%m-%dT%H:%M", attrs={"type": "datetime-local"})
        wrong = {"invalid": "This is no day with an hour. Accepted: such as 2025-06-03 13:22."}
        super().__init__(
            widget=picker,
            input_formats=["%Y-%m-%dT%H:%M", "%Y-%m-%d %H:%M", "%Y-%m-%dT%H:%M:%S"],
            error_messages=wrong,
            **kwargs,
        )


class AnswerForm(InkForm):
    what = "answer"
    title = "The customer’s answer"
    button = "Write the answer"
    template = "diary/ask/_answer.html"

    quote = forms.ChoiceField(label="The answer is to")
    option = forms.ChoiceField(label="Which way was chosen", widget=forms.RadioSelect)
    exact_words = forms.CharField(
        label="The exact words",
        max_length=4000,
        help_text="As they were said or written, nothing left out. Silence is not a yes.",
        widget=forms.Textarea({"rows": 2}),
    )
    cap_minor = MoneyField(
        label="Up to what sum, for the whole bill",
        required=False,
        help_text="The customer’s own cap. Left empty, the law’s holds where there is one.",
    )
    who = forms.CharField(label="Who answered", max_length=200)
    channel = forms.ChoiceField(label="By which way", choices=[(c, c) for c in choices.CHANNELS])
    answered_at = MomentField(label="When", required=False)

    def lay_out(self) -> None:
        quotes = [(str(q.part.pk), f"the quote of {self._when(q)}") for q in reversed(self.quotes)]
        self.fields["quote"].choices = quotes
        if len(quotes) < 2:
            self.fields["quote"].widget = forms.HiddenInput()
        chosen = self.chosen
        ways = [(str(option.pk), self._way(option)) for option in chosen.part.options.all()] if chosen else []
        self.fields["option"].choices = [*ways, (NO, "No: nothing is done")]

    def _when(self, quote: Block) -> str:
        return timezone.localtime(quote.entry.written_at).strftime("%d.%m. %H:%M")

    def _way(self, option: Any) -> str:
        shop = self.desk.shop
        total = show(option.total_minor, shop.currency_mark or shop.currency, shop.minor_digits)
        whole = show(option.whole_minor, shop.currency_mark or shop.currency, shop.minor_digits)
        more = f"; the whole bill then {whole}" if option.whole_minor != option.total_minor else ""
        return f"{option.title}, {total}{more}"

    @cached_property
    def quotes(self) -> tuple[Block, ...]:
        """The quotes of this diary that are not struck."""
        return self.desk.diary.of_kind("quote")

    @property
    def chosen(self) -> Block | None:
        """The quote that is answered: the one chosen, else the one of the old answer, else the last."""
        asked = self.data.get("quote") if self.is_bound else self.desk.request.GET.get("quote")
        if not asked and self.old and self.old.kind == "answer":
            asked = str(self.old.part.quote_id)
        by_number = {str(quote.part.pk): quote for quote in self.quotes}
        return by_number.get(asked or "") or (self.quotes[-1] if self.quotes else None)

    def started(self) -> dict[str, Any]:
        place = "mat" if self.desk.visit.place == "asked shelf" else ""
        return {
            "quote": str(self.chosen.part.pk) if self.chosen else "",
            "who": self.desk.visit.reel.customer.name,
            "channel": "telephone",
            "answered_at": timezone.localtime(),
            "moved_to": place,
        }

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "answer":
            return super().started_again(old)
        names = ("who", "channel", "answered_at", "exact_words", "cap_minor")
        written = {name: getattr(old.part, name) for name in names}
        return super().started_again(old) | written | {"option": str(old.part.option_id or NO)}

    def option_given(self) -> Any:
        """The option that was said yes to, or None for a no."""
        assert self.chosen is not None
        key = self.cleaned_data["option"]
        return next((option for option in self.chosen.part.options.all() if str(option.pk) == key), None)

    def said(self) -> Said:
        given = self.cleaned_data
        cap = given["cap_minor"] if given["option"] != NO else None
        return Said(given["who"], given["channel"], given["exact_words"], cap, given["answered_at"])
