"""The end of a visit: the proof, which has a page of its own, and the way home."""

from __future__ import annotations

from django.http import HttpResponse, HttpResponseRedirect

from spoolwright.pages.diary import pen, ways
from spoolwright.pages.diary.ask.dispatch import DispatchForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.send_home import send_home


def proof(desk: Desk) -> HttpResponse:
    """Readings that the proof still needs are taken in the open block; its page sets them side by side."""
    return (
        pen.asked(desk, None)
        if desk.diary.next.act == "proof"
        else HttpResponseRedirect(ways.to_proof(desk.visit.tag) or desk.address)
    )


def dispatch(desk: Desk) -> HttpResponse:
    form = DispatchForm(desk)

    def act() -> Written:
        return send_home(hand=desk.hand, visit=desk.visit, way=form.way(), beside=form.beside())

    return pen.write(desk, form, act)
