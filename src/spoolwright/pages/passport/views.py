"""The passport of one reel: everything that was ever written about it, and its marks and its sheet."""

from __future__ import annotations

from typing import Any

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_POST, require_safe

from spoolwright.pages import doors
from spoolwright.pages.passport.forms import MarkForm, SheetForm
from spoolwright.pages.passport.life import life_of
from spoolwright.pages.words import shown
from spoolwright.shop.acts.describe_reel import describe_reel
from spoolwright.shop.acts.mark_reel import mark_reel
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions import passport as ask

NO_REEL = "No reel of ours has this number."


@require_safe
def passport(request: HttpRequest, reel_id: int) -> HttpResponse:
    return read(request, reel_id)


@require_POST
def mark(request: HttpRequest, reel_id: int) -> HttpResponse:
    reel = doors.found(by_number.reel(reel_id), NO_REEL)
    form = MarkForm(request.POST)
    if form.is_valid():
        try:
            mark_reel(hand=request.user, reel=reel, **form.cleaned_data)
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(request, "The mark is written.", "passport:passport", reel_id)
    return read(request, reel_id, mark=form)


@require_POST
def describe(request: HttpRequest, reel_id: int) -> HttpResponse:
    reel = doors.found(by_number.reel(reel_id), NO_REEL)
    form = SheetForm(request.POST, reel=reel)
    if form.is_valid():
        try:
            describe_reel(hand=request.user, reel=reel, **form.chosen())
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(request, "Its sheet is written.", "passport:passport", reel_id)
    return read(request, reel_id, sheet=form)


def read(request: HttpRequest, reel_id: int, **sent: Any) -> HttpResponse:
    """The passport with its two forms, either of them as it was sent."""
    found = doors.found(ask.passport(reel_id), NO_REEL)
    forms = {"mark_form": sent.get("mark") or MarkForm()}
    forms["sheet_form"] = sent.get("sheet") or SheetForm(reel=found.reel)
    facts = {"life": life_of(found, shown.system_of(request.user))} | forms
    return doors.page(request, "passport/passport.html", facts, status=doors.REFUSED if sent else 200)
