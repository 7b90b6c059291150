"""One picture at three addresses: under a sheet, under a reel, under a visit."""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.urls import URLPattern, path
from django.views.decorators.http import require_safe

from spoolwright.pages.gathered import subject
from spoolwright.pages.gathered.subject import Finder, Subject

Picture = Callable[[HttpRequest, Subject], HttpResponse]


def three_addresses(word: str, view: Picture) -> list[URLPattern]:
    """The routes `sheet`, `reel` and `visit` of a picture whose last word in the address is `word`."""
    return [
        path(f"sheets/<slug:slug>/{word}/", looked_at(view, subject.of_sheet), name="sheet"),
        path(f"reels/<int:number>/{word}/", looked_at(view, subject.of_reel), name="reel"),
        path(f"diary/<int:tag>/{word}/", looked_at(view, subject.of_visit), name="visit"),
    ]


def looked_at(view: Picture, find: Finder) -> Callable[..., HttpResponse]:
    """The view with its subject found; a picture is only ever looked at."""

    @require_safe
    @wraps(view)
    def found(request: HttpRequest, **words: Any) -> HttpResponse:
        (key,) = words.values()
        return view(request, find(request, key))

    return found
