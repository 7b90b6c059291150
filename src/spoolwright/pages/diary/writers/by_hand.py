"""A part measured by hand: the list of guides, or the form of one."""

from __future__ import annotations

from django.http import HttpResponse

from spoolwright.pages import doors
from spoolwright.pages.diary import pen
from spoolwright.pages.diary.ask import instrument
from spoolwright.pages.diary.ask.by_hand import ByHandForm, HandChooser
from spoolwright.pages.diary.desk import Desk
from spoolwright.sheets import hand_guides
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.take_by_hand import take_by_hand
from spoolwright.shop.questions import blocks
from spoolwright.shop.questions.by_hand import by_hand_of


def hand(desk: Desk) -> HttpResponse:
    asked = desk.request.GET.get("guide") or _of_the_old(desk)
    if not asked:
        return pen.asked(desk, HandChooser(desk, sent=False))
    guide = doors.found(hand_guides.guides().get(asked), "There is no such guide.")
    form = ByHandForm(desk, guide)

    def act() -> Written:
        instrument.remember(desk.request, form.kind.dimension, form.data.get("instrument", ""))
        return take_by_hand(
            hand=desk.hand,
            visit=desk.visit,
            taken=form.taken(),
            conditions=form.conditions(),
            beside=form.beside(),
        )

    return pen.write(desk, form, act)


def _of_the_old(desk: Desk) -> str:
    """The guide of an entry that is written again."""
    again = desk.request.GET.get("again", "")
    found = blocks.block(int(again)) if again.isascii() and again.isdigit() and len(again) < 19 else None
    kept = by_hand_of(found.part) if found and found.kind == "reading" else None
    return kept.guide if kept else ""
