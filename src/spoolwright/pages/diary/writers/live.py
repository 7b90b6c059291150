"""A pull that is typed as it goes."""

from __future__ import annotations

from django.http import HttpResponse

from spoolwright.pages.diary import pen
from spoolwright.pages.diary.ask import gauge
from spoolwright.pages.diary.ask.live_pull import LivePullForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.take_live_pull import take_live_pull


def live(desk: Desk) -> HttpResponse:
    form = LivePullForm(desk)

    def act() -> Written:
        assert form.pulled is not None
        gauge.remember(desk.request, form)
        return take_live_pull(
            hand=desk.hand,
            visit=desk.visit,
            pulled=form.pulled,
            conditions=form.conditions(),
            instrument=form.instrument,
            beside=form.beside(),
        )

    return pen.write(desk, form, act)
