"""What wears, how deep in so many years, and what a cold morning takes from the spin."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from spoolwright.pages import doors
from spoolwright.pages.gathered.subject import Subject
from spoolwright.pages.wears.asked import WearsForm
from spoolwright.pages.wears.drawn import Drawn


def wears(request: HttpRequest, subject: Subject) -> HttpResponse:
    form = WearsForm(request.GET, subject)
    facts = {"subject": subject, "here": "wears", "form": form, "drawn": Drawn(subject, form)}
    return doors.page(request, "wears/wears.html", facts, piece="wears/_answer.html")
