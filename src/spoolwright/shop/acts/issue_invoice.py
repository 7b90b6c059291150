"""Issue an invoice: priced line by line, capped by what was answered, numbered without a gap."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from django.db import transaction

from spoolwright.judgement import money
from spoolwright.judgement.cap import CapRuling
from spoolwright.judgement.price import Charge, Priced, price
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, OpenDiary, Written, open_diary
from spoolwright.shop.acts.put import put, put_all
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.send_quote import line_columns
from spoolwright.shop.acts.take_number import take_number
from spoolwright.shop.questions.agreed import Agreed, agreed, may_be_billed
from spoolwright.shop.questions.owed import paid_ahead
from spoolwright.shop.records.invoice import Invoice, InvoiceLine
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.shop_settings import ShopSettings, standing
from spoolwright.shop.records.visit import Visit


class NothingWasBilled(Refused):
    def __init__(self) -> None:
        super().__init__("An invoice needs at least one line and a sum above nothing.", "charges")


class BillWasAboveTheCap(Refused):
    """More than the customer's answer allows; `ruling` has the limit and by how much it was passed."""

    def __init__(self, ruling: CapRuling) -> None:
        super().__init__(ruling.words, "charges")
        self.ruling = ruling


class WhyMoreWasMissing(Refused):
    def __init__(self, more: str) -> None:
        super().__init__(f"The bill is {more} more than what was quoted: write why.", "why_more")


@transaction.atomic
def issue_invoice(
    *,
    hand: Person,
    visit: Visit,
    charges: Sequence[Charge],
    why_more: str = "",
    due_on: date | None = None,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """What was paid before counts as the deposit. A refusal takes the number back with all else: no gap."""
    if not charges:
        raise NothingWasBilled
    diary = open_diary(hand, visit)
    shop, held = standing(), agreed(visit.pk)
    priced = price(charges, shop.rates())
    _refuse_sum(diary.visit, priced, shop, held, why_more)
    number = take_number("invoice")
    written = diary.write("invoice", beside, [f"invoice {number}", why_more, *(c.title for c in charges)])
    invoice = _invoice(diary, shop, priced)
    invoice.entry, invoice.answer, invoice.why_more = written.entry, held.answer, why_more
    invoice.due_on = due_on or clock.today() + timedelta(days=shop.payment_days)
    invoice.number = number
    put(invoice)
    put_all(InvoiceLine(invoice=invoice, **line_columns(i, line)) for i, line in enumerate(priced.lines))
    return written


def _refuse_sum(visit: Visit, priced: Priced, shop: ShopSettings, held: Agreed, why_more: str) -> None:
    if priced.total_minor <= 0:
        raise NothingWasBilled
    ruling = may_be_billed(visit, priced.total_minor, shop, held=held)
    if not ruling.allowed:
        raise BillWasAboveTheCap(ruling)
    more = held.billed_minor + priced.total_minor - held.total_minor
    if held.answers and more > 0 and not why_more.strip():
        raise WhyMoreWasMissing(money.show(more, shop.currency_mark or shop.currency, 10**shop.minor_digits))


def _invoice(diary: OpenDiary, shop: ShopSettings, priced: Priced) -> Invoice:
    customer = diary.visit.reel.customer
    deposit = min(paid_ahead(diary.visit.pk), priced.total_minor)
    return Invoice(
        customer=customer,
        bill_to=f"{customer.name}\n{customer.address}".strip(),
        currency=shop.currency,
        tax_rate=shop.tax_rate,
        prices_include_tax=shop.prices_include_tax,
        net_minor=priced.net_minor,
        tax_minor=priced.tax_minor,
        total_minor=priced.total_minor,
        deposit_minor=deposit,
        due_minor=priced.total_minor - deposit,
        issued_on=clock.today(),
    )
