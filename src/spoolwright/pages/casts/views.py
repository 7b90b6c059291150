"""How the reel casts; the page comes at once, and the cast as soon as it is compiled."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from spoolwright.judgement.cast_case import WHY_NOT
from spoolwright.pages import doors
from spoolwright.pages.casts import kept, ready
from spoolwright.pages.casts.asked import CastsForm, starting_throw
from spoolwright.pages.casts.drawn import Drawn
from spoolwright.pages.gathered.subject import Subject

COMES_AGAIN = 3
"""Seconds after which a page whose cast was not ready asks again, with or without scripts."""


def casts(request: HttpRequest, subject: Subject) -> HttpResponse:
    why_not = WHY_NOT.get(subject.sheet.reel.kind, "")
    facts = {"subject": subject, "here": "casts", "why_not": why_not}
    if not why_not:
        is_ready = ready.is_ready()
        share = kept.case_of(subject, starting_throw(subject)).share if is_ready else None
        form = CastsForm(request.GET, subject, share) if is_ready else None
        facts |= {"form": form, "drawn": Drawn(subject, form) if form else None}
    answer = doors.page(request, "casts/casts.html", facts, piece="casts/_answer.html")
    if not why_not and not facts["form"]:
        answer["Refresh"] = str(COMES_AGAIN)
    return answer
