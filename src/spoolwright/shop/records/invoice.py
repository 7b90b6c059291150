"""The invoice: numbered without gaps, with its lines, its tax and what is left to pay."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.answer import Answer
from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.money import PricedLine


class Invoice(Inked):
    """`answer` is the answer that allows this bill; `why_more` says why it is above what was quoted."""

    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="invoice", primary_key=True)
    number = models.PositiveIntegerField(unique=True)
    customer = models.ForeignKey(Customer, on_delete=models.PROTECT, related_name="invoices")
    bill_to = models.TextField()
    answer = models.ForeignKey(
        Answer, on_delete=models.PROTECT, null=True, blank=True, related_name="invoices"
    )
    currency = models.CharField(max_length=3)
    tax_rate = models.DecimalField(max_digits=7, decimal_places=5)
    prices_include_tax = models.BooleanField()
    net_minor = models.BigIntegerField()
    tax_minor = models.BigIntegerField()
    total_minor = models.BigIntegerField()
    deposit_minor = models.BigIntegerField()
    due_minor = models.BigIntegerField()
    issued_on = models.DateField()
    due_on = models.DateField()
    why_more = models.TextField(blank=True)

    class Meta:
        constraints = [
            models.CheckConstraint(
                condition=models.Q(total_minor=models.F("net_minor") + models.F("tax_minor")),
                name="shop_invoice_net_and_tax_make_total",
            ),
            models.CheckConstraint(
                condition=models.Q(due_minor=models.F("total_minor") - models.F("deposit_minor")),
                name="shop_invoice_due_is_total_less_deposit",
            ),
        ]


class InvoiceLine(PricedLine):
    invoice = models.ForeignKey(Invoice, on_delete=models.PROTECT, related_name="lines")

    class Meta:
        ordering = ["invoice_id", "position"]
        constraints = [
            models.CheckConstraint(
                condition=models.Q(gross_minor=models.F("net_minor") + models.F("tax_minor")),
                name="shop_invoice_line_adds_up",
            )
        ]
