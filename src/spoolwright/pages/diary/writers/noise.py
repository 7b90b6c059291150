"""A bearing's noise or the gears': the form and its act."""

from __future__ import annotations

from django.http import HttpResponse

from spoolwright.pages.diary import pen
from spoolwright.pages.diary.ask.bearing import BearingForm
from spoolwright.pages.diary.ask.gears import GearsForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.take_noise import take_noise


def bearing(desk: Desk) -> HttpResponse:
    return _write(desk, BearingForm(desk))


def gears(desk: Desk) -> HttpResponse:
    return _write(desk, GearsForm(desk))


def _write(desk: Desk, form: BearingForm | GearsForm) -> HttpResponse:
    def act() -> Written:
        assert form.kept is not None
        form.remember_instrument()
        return take_noise(
            hand=desk.hand,
            visit=desk.visit,
            kept=form.kept,
            conditions=form.conditions(),
            attachment=form.file.last,
            instrument=form.tool_row,
            beside=form.beside(),
        )

    return pen.write(desk, form, act)
