"""Files out of the record, for signed-in hands only: pictures to look at, everything else as a download."""

from __future__ import annotations

from typing import Any

from django.http import FileResponse, Http404, HttpRequest, HttpResponse
from django.http.response import HttpResponseBase
from django.views.decorators.http import require_safe

from spoolwright.pages import doors
from spoolwright.pages.diary.photos import SHOWN, can_be_shown, small_copy
from spoolwright.shop.questions import by_number

A_YEAR = "private, max-age=31536000, immutable"
"""A file is named by a number that never means another one, so a browser may keep it."""

LOCKED = "default-src 'none'; sandbox"


@require_safe
def file(request: HttpRequest, number: int) -> HttpResponseBase:
    """The file itself. Shown in the page only if it really is a picture; its name is never believed."""
    found, path = _there(number)
    inline = found.media_type in SHOWN and _is_picture(path)
    response = FileResponse(
        path.open("rb"),
        as_attachment=not inline,
        filename=found.original_name,
        content_type=found.media_type if inline else "application/octet-stream",
    )
    return _guarded(response)


@require_safe
def small(request: HttpRequest, number: int) -> HttpResponseBase:
    """A small copy of a picture, made anew so that only the picture is in it."""
    found, path = _there(number)
    with path.open("rb") as data:
        copy = small_copy(data) if found.media_type in SHOWN else None
    if copy is None:
        raise Http404("There is no picture in this file.")
    return _guarded(HttpResponse(copy, content_type="image/jpeg"))


def _there(number: int) -> tuple[Any, Any]:
    found = doors.found(by_number.attachment(number), "There is no such file.")
    path = by_number.path_of(found)
    if not path.is_file():
        raise Http404("The file is written in the record, but it is not in the folder of files.")
    return found, path


def _is_picture(path: Any) -> bool:
    with path.open("rb") as data:
        return can_be_shown(data)


def _guarded(response: HttpResponseBase) -> HttpResponseBase:
    response["X-Content-Type-Options"] = "nosniff"
    response["Content-Security-Policy"] = LOCKED
    response["Cache-Control"] = A_YEAR
    return response
