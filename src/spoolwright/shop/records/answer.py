"""What the customer answered, in the customer's own words, and what was paid."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.quote import Quote, QuoteOption

CHANNELS = ("in the shop", "telephone", "letter", "e-mail", "text message", "signed paper")
PAID_BY = ("cash", "card", "transfer", "other")


class Answer(Inked):
    """`option` is empty for a no. `cap_minor` is the most that the whole bill may come to."""

    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="answer", primary_key=True)
    quote = models.ForeignKey(Quote, on_delete=models.PROTECT, related_name="answers")
    option = models.ForeignKey(
        QuoteOption, on_delete=models.PROTECT, null=True, blank=True, related_name="answers"
    )
    who = models.CharField(max_length=200)
    channel = models.CharField(max_length=20, choices=[(c, c) for c in CHANNELS])
    answered_at = models.DateTimeField()
    exact_words = models.TextField()
    cap_minor = models.PositiveBigIntegerField(null=True, blank=True)

    @property
    def is_yes(self) -> bool:
        return self.option_id is not None


class Payment(Inked):
    """Money that came in, written in the diary as a word; a deposit is a payment before the bill."""

    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="payment", primary_key=True)
    amount_minor = models.BigIntegerField()
    currency = models.CharField(max_length=3)
    paid_by = models.CharField(max_length=20, choices=[(p, p) for p in PAID_BY])
