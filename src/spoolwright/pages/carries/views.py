"""What the reel carries, part by part, and how its pull grows as the line goes."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse

from spoolwright.pages import doors
from spoolwright.pages.carries.asked import CarriesForm
from spoolwright.pages.carries.drawn import Drawn
from spoolwright.pages.gathered.subject import Subject


def carries(request: HttpRequest, subject: Subject) -> HttpResponse:
    form = CarriesForm(request.GET, subject)
    facts = {"subject": subject, "here": "carries", "form": form, "drawn": Drawn(subject, form)}
    return doors.page(request, "carries/carries.html", facts, piece="carries/_answer.html")
