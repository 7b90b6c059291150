"""One view, three routes; a picture is only looked at."""

from __future__ import annotations

from django.http import HttpResponse
from django.test import RequestFactory

from spoolwright.pages.gathered.three_addresses import looked_at, three_addresses


def test_the_words_of_the_address_are_those_of_its_door() -> None:
    routes = three_addresses("carries", lambda request, subject: HttpResponse())
    assert {route.name: str(route.pattern) for route in routes} == {
        "sheet": "sheets/<slug:slug>/carries/",
        "reel": "reels/<int:number>/carries/",
        "visit": "diary/<int:tag>/carries/",
    }


def test_the_view_gets_what_its_finder_found() -> None:
    view = looked_at(lambda request, subject: HttpResponse(str(subject)), lambda request, key: f"reel {key}")
    assert view(RequestFactory().get("/"), number=7).content == b"reel 7"
    assert view(RequestFactory().post("/"), number=7).status_code == 405
