"""Plain words, another place, promised days."""

from __future__ import annotations

from django.http import HttpResponse

from spoolwright.pages.diary import pen
from spoolwright.pages.diary.ask.word import MoveForm, PromiseForm, WordForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.shop.acts.move_reel import move_reel
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.promise_date import promise_date
from spoolwright.shop.acts.write_word import write_word


def word(desk: Desk) -> HttpResponse:
    form = WordForm(desk)

    def act() -> Written:
        beside = form.beside()
        return write_word(
            hand=desk.hand,
            visit=desk.visit,
            words=beside.words,
            attached=beside.attached,
            seen=beside.seen,
        )

    return pen.write(desk, form, act)


def move(desk: Desk) -> HttpResponse:
    form = MoveForm(desk)

    def act() -> Written:
        given = form.cleaned_data
        return move_reel(
            hand=desk.hand,
            visit=desk.visit,
            to=given["moved_to"],
            version=given["version"],
            words=given["words"],
            seen=given["seen"],
        )

    return pen.write(desk, form, act)


def promise(desk: Desk) -> HttpResponse:
    form = PromiseForm(desk)

    def act() -> Written:
        given = form.cleaned_data
        return promise_date(
            hand=desk.hand,
            visit=desk.visit,
            p50=given["p50"],
            p90=given["p90"],
            version=given["version"],
            words=given["words"],
            seen=given["seen"],
        )

    return pen.write(desk, form, act)
