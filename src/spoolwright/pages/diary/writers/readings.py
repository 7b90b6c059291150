"""Readings: one kind typed, a pull trace, a spin-down, or the list of kinds to choose from."""

from __future__ import annotations

from django.http import HttpResponse, HttpResponseNotAllowed

from spoolwright.pages.diary import pen
from spoolwright.pages.diary.ask import gauge, instrument
from spoolwright.pages.diary.ask.chooser import KindChooser
from spoolwright.pages.diary.ask.pull import PullForm
from spoolwright.pages.diary.ask.spin import SpinForm
from spoolwright.pages.diary.ask.typed_reading import TypedReadingForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.sheets.reading_kinds import ReadingKind
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.take_pull import take_pull
from spoolwright.shop.acts.take_reading import Signal, take_reading
from spoolwright.shop.acts.take_spin import take_spin


def choose(desk: Desk) -> HttpResponse:
    """The reading that comes next; or every kind in words, each leading to its own form."""
    if desk.request.method == "POST":
        return HttpResponseNotAllowed(["GET", "HEAD"])
    asks_for_one = desk.diary.next.act == "reading" and "all" not in desk.request.GET
    return pen.asked(desk, None if asks_for_one else KindChooser(desk))


def typed(desk: Desk, kind: ReadingKind) -> HttpResponse:
    form = TypedReadingForm(desk, kind)

    def act() -> Written:
        if form.tool_field:
            instrument.remember(desk.request, kind.dimension, form.data.get("instrument", ""))
        return take_reading(
            hand=desk.hand,
            visit=desk.visit,
            values=form.values_given(),
            conditions=form.conditions(),
            signal=Signal(instrument=form.tool.row) if form.tool else None,
            beside=form.beside(),
        )

    return pen.write(desk, form, act)


def pull(desk: Desk) -> HttpResponse:
    form = PullForm(desk)

    def act() -> Written:
        assert form.pulled is not None
        gauge.remember(desk.request, form)
        own = gauge.own_of(form)
        return take_pull(
            hand=desk.hand,
            visit=desk.visit,
            pulled=form.pulled,
            conditions=form.conditions(),
            attachment=form.file.last,
            instrument=own.row if own else None,
            beside=form.beside(),
        )

    return pen.write(desk, form, act)


def spin(desk: Desk) -> HttpResponse:
    form = SpinForm(desk)

    def act() -> Written:
        assert form.spun is not None
        form.remember_instrument()
        return take_spin(
            hand=desk.hand,
            visit=desk.visit,
            spin=form.spun,
            verdict=form.verdict,
            conditions=form.conditions(),
            heard=Signal(form.file.last, instrument=form.tool_row),
            beside=form.beside(),
        )

    return pen.write(desk, form, act)
