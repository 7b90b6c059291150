"""What was asked and answered, and the money: the answer, a payment, the invoice."""

from __future__ import annotations

from django.http import HttpResponse, HttpResponseRedirect

from spoolwright.pages.diary import pen, ways
from spoolwright.pages.diary.ask.answer import AnswerForm
from spoolwright.pages.diary.ask.invoice import InvoiceForm
from spoolwright.pages.diary.ask.payment import PaymentForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.shop.acts.issue_invoice import issue_invoice
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.record_answer import record_answer
from spoolwright.shop.acts.take_payment import take_payment


def quote(desk: Desk) -> HttpResponse:
    """The quote has a page of its own."""
    return HttpResponseRedirect(ways.to_quote(desk.visit.tag) or desk.address)


def answer(desk: Desk) -> HttpResponse:
    form = AnswerForm(desk)
    if form.chosen is None:
        return HttpResponseRedirect(desk.address)
    asked = form.chosen.part

    def act() -> Written:
        return record_answer(
            hand=desk.hand, quote=asked, option=form.option_given(), said=form.said(), beside=form.beside()
        )

    return pen.write(desk, form, act)


def payment(desk: Desk) -> HttpResponse:
    form = PaymentForm(desk)

    def act() -> Written:
        given = form.cleaned_data
        return take_payment(
            hand=desk.hand,
            visit=desk.visit,
            amount_minor=form.amount(),
            paid_by=given["paid_by"],
            words=given["words"],
            seen=given["seen"],
        )

    return pen.write(desk, form, act)


def invoice(desk: Desk) -> HttpResponse:
    form = InvoiceForm(desk)

    def act() -> Written:
        given = form.cleaned_data
        return issue_invoice(
            hand=desk.hand,
            visit=desk.visit,
            charges=form.charges(),
            why_more=given["why_more"],
            due_on=given["due_on"],
            beside=form.beside(),
        )

    return pen.write(desk, form, act)
