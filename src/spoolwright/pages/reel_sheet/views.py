"""The shelf of sheets, one sheet drawn and told, its parts list, its versions, its text to take away."""

from __future__ import annotations

from typing import Any

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.views.decorators.http import require_safe

from spoolwright.pages import doors
from spoolwright.pages.reel_sheet import lubricants_in_words, shelf
from spoolwright.pages.reel_sheet.history import history
from spoolwright.pages.reel_sheet.leaf import Leaf
from spoolwright.pages.reel_sheet.parts_off import parts_off
from spoolwright.sheets import reel_sheet
from spoolwright.shop.questions import reel_sheets as ask

NO_SHEET = "There is no reel sheet of this name, or not in this version."
PIECES = {
    "drawing": "reel_sheet/_drawing.html",
    "known": "reel_sheet/_known.html",
    "line-answer": "reel_sheet/_line_answer.html",
    "target-answer": "reel_sheet/_target_answer.html",
}
"""What htmx may ask for alone, by the place it goes to."""


@require_safe
def sheets(request: HttpRequest) -> HttpResponse:
    return doors.page(request, "reel_sheet/sheets.html", {"kinds": shelf.kinds(), "others": shelf.not_ours()})


@require_safe
def sheet(request: HttpRequest, slug: str) -> HttpResponse:
    leaf = Leaf(request, version_asked(request, slug))
    target = request.htmx.target if doors.fragment_wanted(request) else ""  # type: ignore[attr-defined]
    return doors.page(request, "reel_sheet/sheet.html", {"leaf": leaf}, piece=PIECES.get(target, ""))


@require_safe
def parts(request: HttpRequest, slug: str) -> HttpResponse:
    leaf = Leaf(request, version_asked(request, slug))
    points = lubricants_in_words.explained((part.lubricant for part in leaf.sheet.parts), leaf.system)
    facts = {"leaf": leaf, "lines": parts_off(leaf.sheet), "points": points}
    return doors.page(request, "reel_sheet/parts.html", facts)


@require_safe
def versions(request: HttpRequest, slug: str) -> HttpResponse:
    leaf = Leaf(request, version_asked(request, slug))
    return doors.page(request, "reel_sheet/versions.html", {"leaf": leaf, "history": history(leaf)})


@require_safe
def toml(request: HttpRequest, slug: str, number: int) -> HttpResponse:
    version = doors.found(ask.version(slug, number), NO_SHEET)
    answer = HttpResponse(version.toml, content_type="application/toml; charset=utf-8")
    return taken_away(answer, f"{slug}-{number}.toml")


@require_safe
def schema(request: HttpRequest) -> HttpResponse:
    answer = JsonResponse(reel_sheet.json_schema(), json_dumps_params={"indent": 2, "ensure_ascii": False})
    answer["Content-Type"] = "application/schema+json"
    return taken_away(answer, "reel-sheet.schema.json")


def version_asked(request: HttpRequest, slug: str) -> Any:
    """The version that the address names, or the one that stands."""
    asked = request.GET.get("version", "").strip()
    number = int(asked) if asked.isascii() and asked.isdigit() and len(asked) < 9 else None
    return doors.found(ask.version(slug, number), NO_SHEET)


def taken_away(answer: HttpResponse, name: str) -> HttpResponse:
    answer["Content-Disposition"] = f'attachment; filename="{name}"'
    answer["Cache-Control"] = "private, no-cache"
    return answer
