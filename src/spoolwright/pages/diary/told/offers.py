"""Quotes and invoices as they stand in the diary: the options with their sums, and where their papers are."""

from __future__ import annotations

from typing import Any

from spoolwright.pages.diary import ways
from spoolwright.pages.words.conditions import COUNTS


def of_quote(quote: Any) -> dict[str, Any]:
    options = list(quote.options.all())
    return {
        "options": options,
        "ways": COUNTS[len(options)] if len(options) < len(COUNTS) else str(len(options)),
        "is_extra": quote.extends_id is not None,
        "as_the_customer_sees_it": ways.to_customers_view(quote.entry),
        "paper": ways.to_paper("quote", quote.pk),
    }


def of_invoice(invoice: Any) -> dict[str, Any]:
    return {"lines": list(invoice.lines.all()), "paper": ways.to_paper("invoice", invoice.number)}
