"""A moment of inertia: the list of ways, or the form of one of them and its act."""

from __future__ import annotations

from django.http import HttpResponse, HttpResponseNotAllowed

from spoolwright.pages.diary import pen
from spoolwright.pages.diary.ask.inertia import InertiaForm, form_of
from spoolwright.pages.diary.desk import Desk
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.take_inertia import take_inertia


def inertia(desk: Desk) -> HttpResponse:
    form = form_of(desk)
    if not isinstance(form, InertiaForm):
        if desk.request.method == "POST":
            return HttpResponseNotAllowed(["GET", "HEAD"])
        return pen.asked(desk, form)
    if desk.request.method != "POST":
        return pen.asked(desk, InertiaForm(desk, form.method, sent=False))

    def act() -> Written:
        assert form.kept is not None
        form.remember_instrument()
        return take_inertia(
            hand=desk.hand,
            visit=desk.visit,
            kept=form.kept,
            conditions=form.conditions(),
            attachment=form.file.last,
            instrument=form.tool_row,
            beside=form.beside(),
        )

    return pen.write(desk, form, act)
