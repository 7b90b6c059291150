"""What is found and what is done at the bench."""

from __future__ import annotations

from django.http import HttpResponse

from spoolwright.pages.diary import pen
from spoolwright.pages.diary.ask.finding import FindingForm
from spoolwright.pages.diary.ask.work import WorkForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.acts.write_work import write_work


def finding(desk: Desk) -> HttpResponse:
    form = FindingForm(desk)

    def act() -> Written:
        return write_finding(hand=desk.hand, visit=desk.visit, beside=form.beside(), **form.given())

    return pen.write(desk, form, act)


def work(desk: Desk) -> HttpResponse:
    form = WorkForm(desk)

    def act() -> Written:
        return write_work(hand=desk.hand, visit=desk.visit, labour=form.labour(), beside=form.beside())

    return pen.write(desk, form, act)
