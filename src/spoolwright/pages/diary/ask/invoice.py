"""The invoice: the lines that were said yes to, what came on top and why, and what the cap allows."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from django import forms
from django.core.exceptions import NON_FIELD_ERRORS

from spoolwright.judgement.cap import CapRuling
from spoolwright.judgement.price import Charge, Priced, price
from spoolwright.pages.diary import ways
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.ask.offered import WordsField
from spoolwright.pages.diary.ask.rows import RowForm, rows
from spoolwright.pages.words.asked import DayField, MoneyField, ask_in
from spoolwright.shop.questions import choices, owed
from spoolwright.shop.questions.agreed import may_be_billed
from spoolwright.shop.questions.blocks import Block

KINDS = {
    "tier": "fixed price",
    "labour": "work",
    "part": "part",
    "consumables": "consumables",
    "post": "post",
    "discount": "taken off",
    "other": "other",
}


class LineRow(RowForm):
    """One line of the bill. `line` is the line of the quote that it comes from, where it comes from one."""

    noun = "Line"
    typed_in = ("what", "amount")
    line = forms.IntegerField(required=False, widget=forms.HiddenInput)
    what = WordsField(label="What for", max_length=300)
    amount = MoneyField(label="Sum")
    kind = forms.ChoiceField(
        label="It is", choices=[(k, KINDS[k]) for k in choices.LINE_KINDS], required=False
    )
    off = forms.BooleanField(label="Leave it off", required=False)

    @property
    def is_blank(self) -> bool:
        return super().is_blank or self["off"].data in ("on", "true", "True", True)


@dataclass(frozen=True)
class Reckoned:
    """What the lines come to, what was paid before, and whether the bill may go out."""

    priced: Priced
    deposit_minor: int
    due_minor: int
    ruling: CapRuling
    more_minor: int


class InvoiceForm(InkForm):
    what = "invoice"
    title = "The invoice"
    button = "Write the invoice"
    template = "diary/ask/_invoice.html"
    looks_at = (NON_FIELD_ERRORS,)

    why_more = forms.CharField(
        label="Why the bill is more than what was quoted",
        required=False,
        max_length=2000,
        help_text="Needed where it is more; it stands on the invoice.",
        widget=forms.Textarea({"rows": 2}),
    )
    due_on = DayField(label="To be paid by", required=False)

    def lay_out(self) -> None:
        sent = self.data if self.is_bound else None
        self.lines = rows(LineRow, "line", sent, started=self.proposed)
        for row in self.lines:
            ask_in(row, self.desk.system, self.desk.shop)
            row.fields["what"].widget.offered = [tier.title for tier in self.desk.shop.rates().tiers]

    @cached_property
    def agreed_lines(self) -> dict[int, Any]:
        """Lines of the options that stand agreed, by their number."""
        answers = self.desk.diary.agreed.answers
        return {line.pk: line for answer in answers for line in answer.option.lines.all()}

    @cached_property
    def told_lines(self) -> dict[int, Any]:
        """Lines of extras that were told and not asked, because they stay within the customer's own cap."""
        held, book = self.desk.diary.agreed, self.desk.diary
        answered = {block.part.quote_id for block in book.of_kind("answer")}
        extras = [b.part for b in book.of_kind("quote") if b.part.extends_id and b.entry.pk not in answered]
        options = [option for quote in extras for option in quote.options.all()]
        if held.cap_minor is None or any(option.whole_minor > held.cap_minor for option in options):
            return {}
        return {line.pk: line for option in options for line in option.lines.all()}

    @cached_property
    def proposed(self) -> list[dict[str, Any]]:
        if self.old and self.old.kind == "invoice":
            return [self._as_row(line, None) for line in self.old.part.lines.all()]
        if self.desk.diary.agreed.billed_minor:
            return []
        return [self._as_row(line, pk) for pk, line in (self.agreed_lines | self.told_lines).items()]

    def _as_row(self, line: Any, pk: int | None) -> dict[str, Any]:
        stated = line.gross_minor if self.desk.shop.prices_include_tax else line.net_minor
        many = "" if line.quantity == 1 else f", {line.quantity.normalize():f}"
        return {
            "line": pk,
            "what": f"{line.what}{many}",
            "amount": abs(stated) if line.kind == "discount" else stated,
            "kind": line.kind,
        }

    def started_again(self, old: Block) -> dict[str, Any]:
        if old.kind != "invoice":
            return super().started_again(old)
        return super().started_again(old) | {"why_more": old.part.why_more}

    def clean(self) -> dict[str, Any]:
        given = super().clean() or self.cleaned_data
        for row in self.lines:
            for fault in row.faults():
                self.add_error(None, fault)
        return given

    def charges(self) -> list[Charge]:
        return [self._charge(row.cleaned_data) for row in self.lines if not row.is_blank and row.is_valid()]

    def _charge(self, given: dict[str, Any]) -> Charge:
        kind = given["kind"] or "other"
        amount = -given["amount"] if kind == "discount" else given["amount"]
        from_quote = (self.agreed_lines | self.told_lines).get(given["line"] or 0)
        return Charge(
            kind,
            given["what"],
            amount,
            minutes=from_quote.minutes if from_quote else 0,
            cost_minor=from_quote.cost_minor if from_quote else 0,
        )

    def _as_proposed(self) -> Iterable[Charge]:
        for row in self.proposed:
            amount = -row["amount"] if row["kind"] == "discount" else row["amount"]
            yield Charge(row["kind"], row["what"], amount)

    @cached_property
    def reckoned(self) -> Reckoned | None:
        """The sum of what stands in the lines now, before anything is written."""
        charges = self.charges() if self.is_bound else list(self._as_proposed())
        if not charges:
            return None
        visit, shop, held = self.desk.visit, self.desk.shop, self.desk.diary.agreed
        priced = price(charges, shop.rates())
        deposit = min(owed.paid_ahead(visit.pk), max(priced.total_minor, 0))
        return Reckoned(
            priced=priced,
            deposit_minor=deposit,
            due_minor=priced.total_minor - deposit,
            ruling=may_be_billed(visit, priced.total_minor, shop, held=held),
            more_minor=max(0, held.billed_minor + priced.total_minor - held.total_minor),
        )

    @property
    def tiers(self) -> list[tuple[str, int]]:
        """The shop's fixed prices, where nothing was quoted to take lines from."""
        if self.agreed_lines:
            return []
        return [(tier.title, tier.price_minor) for tier in self.desk.shop.rates().tiers]

    @property
    def quote_way(self) -> str:
        """Where more is asked for, when the cap does not allow the bill."""
        return ways.to_quote(self.desk.visit.tag)
