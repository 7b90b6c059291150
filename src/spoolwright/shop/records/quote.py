"""A quote: the options offered, with works, prices and promised readings. An extra is a new quote."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.money import PricedLine

SURENESS = ("sure", "likely", "only if")


class Quote(Inked):
    """`extends` is the answer that stood when this extra was asked: it is kept, and this asks for more."""

    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="quote", primary_key=True)
    currency = models.CharField(max_length=3)
    tax_rate = models.DecimalField(max_digits=7, decimal_places=5)
    prices_include_tax = models.BooleanField()
    legal_ceiling = models.DecimalField(max_digits=6, decimal_places=4, null=True, blank=True)
    deposit_asked_minor = models.PositiveBigIntegerField(default=0)
    valid_until = models.DateField(null=True, blank=True)
    extends = models.ForeignKey(
        "shop.Answer", on_delete=models.PROTECT, null=True, blank=True, related_name="extended_by"
    )


class QuoteOption(Inked):
    """`total_minor` is what this option comes to; `whole_minor` is the bill with what was agreed before."""

    quote = models.ForeignKey(Quote, on_delete=models.PROTECT, related_name="options")
    position = models.PositiveSmallIntegerField()
    key = models.CharField(max_length=40)
    title = models.CharField(max_length=200)
    minutes = models.PositiveIntegerField()
    total_minor = models.PositiveBigIntegerField()
    whole_minor = models.PositiveBigIntegerField()
    left_undone = models.JSONField(default=list, blank=True)
    warnings = models.JSONField(default=list, blank=True)
    rests_on = models.JSONField(default=list, blank=True)
    compared_with_trade = models.TextField(blank=True)

    class Meta:
        ordering = ["quote_id", "position"]
        constraints = [models.UniqueConstraint(fields=["quote", "key"], name="shop_quote_option_once")]


class QuoteWork(Inked):
    option = models.ForeignKey(QuoteOption, on_delete=models.PROTECT, related_name="works")
    position = models.PositiveSmallIntegerField()
    work = models.CharField(max_length=60)
    title = models.CharField(max_length=200)
    minutes = models.PositiveIntegerField(null=True, blank=True)

    class Meta:
        ordering = ["option_id", "position"]


class QuoteLine(PricedLine):
    option = models.ForeignKey(QuoteOption, on_delete=models.PROTECT, related_name="lines")
    sureness = models.CharField(max_length=10, choices=[(s, s) for s in SURENESS], default="sure")

    class Meta:
        ordering = ["option_id", "position"]
        constraints = [
            models.CheckConstraint(
                condition=models.Q(gross_minor=models.F("net_minor") + models.F("tax_minor")),
                name="shop_quote_line_adds_up",
            )
        ]


class QuotePromise(Inked):
    """A reading that is promised: the range it will fall in, under which conditions, resting on what."""

    option = models.ForeignKey(QuoteOption, on_delete=models.PROTECT, related_name="promises")
    position = models.PositiveSmallIntegerField()
    kind = models.CharField(max_length=40)
    reading_kind = models.CharField(max_length=40, blank=True)
    words = models.CharField(max_length=300, blank=True)
    low_si = models.FloatField(null=True, blank=True)
    middle_si = models.FloatField(null=True, blank=True)
    high_si = models.FloatField(null=True, blank=True)
    dimension = models.CharField(max_length=40)
    conditions = models.JSONField(default=dict, blank=True)
    rests_on = models.TextField(blank=True)

    class Meta:
        ordering = ["option_id", "position"]
        constraints = [
            models.CheckConstraint(
                condition=models.Q(low_si__isnull=False) | models.Q(high_si__isnull=False),
                name="shop_promise_has_a_bound",
            )
        ]


class QuotePrediction(Inked):
    """What was expected of the reel after this option, SI: `values`, and the pull at turns of the star.

    `carried` is what would carry the pull then; null where no ladder was worked out.
    """

    option = models.OneToOneField(
        QuoteOption, on_delete=models.PROTECT, related_name="prediction", primary_key=True
    )
    values = models.JSONField(default=dict, blank=True)
    star_turns = models.JSONField(default=list, blank=True)
    limited_by = models.TextField(blank=True)
    carried = models.JSONField(null=True, blank=True)
