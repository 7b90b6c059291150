"""What a fish's long run does to the drag."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from spoolwright.pages import doors
from spoolwright.pages.gathered.subject import Subject
from spoolwright.pages.long_run.asked import LongRunForm
from spoolwright.pages.long_run.drawn import Drawn


def long_run(request: HttpRequest, subject: Subject) -> HttpResponse:
    form = LongRunForm(request.GET, subject)
    facts = {"subject": subject, "here": "long_run", "form": form, "drawn": Drawn(subject, form)}
    return doors.page(request, "long_run/long_run.html", facts, piece="long_run/_answer.html")
