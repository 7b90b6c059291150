"""A series of pulls: the form, the act, nothing else."""

from __future__ import annotations

from django.http import HttpResponse

from spoolwright.pages.diary import pen
from spoolwright.pages.diary.ask import gauge
from spoolwright.pages.diary.ask.series import SeriesForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.take_series import take_series


def series(desk: Desk) -> HttpResponse:
    form = SeriesForm(desk)

    def act() -> Written:
        assert form.kept is not None
        gauge.remember(desk.request, form)
        own = gauge.own_of(form)
        return take_series(
            hand=desk.hand,
            visit=desk.visit,
            kept=form.kept,
            conditions=form.conditions(),
            attachment=form.file.last,
            instrument=own.row if own else None,
            beside=form.beside(),
        )

    return pen.write(desk, form, act)
