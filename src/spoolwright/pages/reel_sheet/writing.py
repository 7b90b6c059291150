"""A further version of a sheet, or a new sheet: looked through first, written when it is in order."""

from __future__ import annotations

from typing import Any

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods

from spoolwright.pages import doors
from spoolwright.pages.reel_sheet.checked import Checked, check
from spoolwright.pages.reel_sheet.forms import SheetForm
from spoolwright.pages.reel_sheet.shelf import not_ours
from spoolwright.pages.reel_sheet.views import NO_SHEET
from spoolwright.pages.words import shown
from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions import reel_sheets as ask


@require_http_methods(["GET", "HEAD", "POST"])
def new_version(request: HttpRequest, slug: str) -> HttpResponse:
    last = doors.found(ask.version(slug), NO_SHEET)
    form = SheetForm(doors.posted(request), request.FILES or None, start=last.toml, after=last.number)
    return _answer(request, form, last)


@require_http_methods(["GET", "HEAD", "POST"])
def new_sheet(request: HttpRequest) -> HttpResponse:
    start = start_from(request.GET.get("from", ""))
    return _answer(request, SheetForm(doors.posted(request), request.FILES or None, start=start), None)


def start_from(slug: str) -> str:
    """The text to begin with: a sheet that the shop holds, or one that comes with us."""
    held = ask.version(slug) if slug else None
    return held.toml if held else reel_sheet.shipped().get(slug, "")


def _answer(request: HttpRequest, form: SheetForm, last: Any) -> HttpResponse:
    if not (form.is_bound and form.is_valid()):
        return _page(request, form, last)
    found, last = _looked_through(request, form, last)
    unseen = last is not None and last.number != form.cleaned_data["after"]
    if found.sheet is None:
        form.say_faulty(len(found.found))
    elif not unseen and "look" not in request.POST:
        try:
            return _write(request, form, found)
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
            last, unseen = ask.version(found.sheet.reel.slug), True
    return _page(request, form, last, found, unseen=unseen)


def _looked_through(request: HttpRequest, form: SheetForm, last: Any) -> tuple[Checked, Any]:
    """The text checked against the version that stands, also where a new sheet has an old one's name."""
    text, system = form.cleaned_data["text"], shown.system_of(request.user)
    if last is not None:
        return check(text, last=last.toml, system=system, slug=last.sheet.slug), last
    found = check(text, last="", system=system)
    last = ask.version(found.sheet.reel.slug) if found.sheet else None
    return (check(text, last=last.toml, system=system), last) if last else (found, None)


def _write(request: HttpRequest, form: SheetForm, found: Checked) -> HttpResponse:
    after, said = form.cleaned_data["after"], form.cleaned_data["words"].strip()
    written = add_sheet_version(hand=request.user, toml=found.text, after=after, words=said)
    words = f"Version {written.number} of the {written.sheet.shown} is written."
    if written.number == after:
        words = f"This is the very text of version {after}, which stands: nothing was written."
    return doors.written(request, words, "reel_sheet:sheet", written.sheet.slug)


def _page(
    request: HttpRequest, form: SheetForm, last: Any, found: Checked | None = None, *, unseen: bool = False
) -> HttpResponse:
    text = found.text if found else form.typed
    facts = {
        "form": form,
        "last": last,
        "found": found,
        "unseen": unseen,
        "text": text,
        "put_aside": form.put_aside(text, last.toml if last else ""),
        "others": [] if last else not_ours(),
    }
    refused = bool(form.is_bound and form.errors) or (unseen and "look" not in request.POST)
    return doors.page(request, "reel_sheet/write.html", facts, status=doors.REFUSED if refused else 200)
