"""Who owes the shop money, and since when?"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from django.db.models import Sum

from spoolwright.shop.records.answer import Payment
from spoolwright.shop.records.invoice import Invoice


@dataclass(frozen=True)
class Owed:
    """What is still to pay for one visit; days overdue are 0 until the due date has passed."""

    visit_id: int
    tag: int
    customer: str
    reel: str
    numbers: tuple[int, ...]
    billed_minor: int
    paid_minor: int
    owed_minor: int
    due_on: date
    days_overdue: int


def paid(visit_id: int) -> int:
    """What was paid in this visit, deposits included, struck payments left out."""
    rows = Payment.objects.filter(entry__visit=visit_id, entry__strike=None)
    return rows.aggregate(sum=Sum("amount_minor"))["sum"] or 0


def paid_ahead(visit_id: int) -> int:
    """What was paid and is not used up by bills that stand: the deposit for the next bill."""
    billed = Invoice.objects.filter(entry__visit=visit_id, entry__strike=None)
    return max(0, paid(visit_id) - (billed.aggregate(sum=Sum("total_minor"))["sum"] or 0))


def owed(today: date) -> tuple[Owed, ...]:
    """Every visit with money still to come, longest overdue first."""
    bills = Invoice.objects.filter(entry__strike=None).select_related("entry__visit__reel", "customer")
    by_visit: dict[int, list[Invoice]] = {}
    for bill in bills.order_by("number"):
        by_visit.setdefault(bill.entry.visit_id, []).append(bill)
    payments = Payment.objects.filter(entry__strike=None, entry__visit__in=by_visit)
    paid_in = dict(payments.values_list("entry__visit").annotate(sum=Sum("amount_minor")))
    rows = [_owed(bills, paid_in.get(visit, 0), today) for visit, bills in by_visit.items()]
    return tuple(sorted((r for r in rows if r.owed_minor > 0), key=lambda r: r.due_on))


def _owed(bills: list[Invoice], paid_minor: int, today: date) -> Owed:
    visit = bills[0].entry.visit
    billed = sum(bill.total_minor for bill in bills)
    due_on = min(bill.due_on for bill in bills)
    return Owed(
        visit_id=visit.pk,
        tag=visit.tag,
        customer=bills[0].customer.name,
        reel=visit.reel.described,
        numbers=tuple(bill.number for bill in bills),
        billed_minor=billed,
        paid_minor=paid_minor,
        owed_minor=billed - paid_minor,
        due_on=due_on,
        days_overdue=max(0, (today - due_on).days),
    )
