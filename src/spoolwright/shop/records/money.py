"""A line with its price: whole minor units, net and tax adding up to gross."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.ink import Inked

LINE_KINDS = ("tier", "labour", "part", "consumables", "post", "discount", "other")
"""The kinds of charge that `judgement.price` knows, in the order of the paper."""


class PricedLine(Inked):
    """`cost_minor` is what it cost the shop; it never stands on a customer's paper."""

    position = models.PositiveSmallIntegerField()
    kind = models.CharField(max_length=20, choices=[(k, k) for k in LINE_KINDS])
    what = models.CharField(max_length=300)
    quantity = models.DecimalField(max_digits=9, decimal_places=3, default=1)
    net_minor = models.BigIntegerField()
    tax_minor = models.BigIntegerField()
    gross_minor = models.BigIntegerField()
    minutes = models.PositiveIntegerField(default=0)
    cost_minor = models.BigIntegerField(default=0)

    class Meta:
        abstract = True
