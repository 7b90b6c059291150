"""The papers of a visit, set when they are asked for; the same bytes as long as nothing else is written."""

from __future__ import annotations

from typing import Any

from django.http import HttpRequest, HttpResponse
from django.urls import reverse
from django.views.decorators.http import require_safe

from spoolwright.pages import doors
from spoolwright.pages.gathered import bag_tag as tag_of
from spoolwright.pages.gathered import invoice as invoice_of
from spoolwright.pages.gathered import proof as proof_of
from spoolwright.pages.gathered import quote as quote_of
from spoolwright.pages.gathered import reading_sheet as reading_of
from spoolwright.pages.gathered.units import units_of_paper
from spoolwright.papers import bag_tag as tag_paper
from spoolwright.papers import invoice as invoice_paper
from spoolwright.papers import proof_sheet, reading_sheet
from spoolwright.papers import quote as quote_paper
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions.diary import Diary, diary

STRUCK = "This was struck through in the diary: no paper is made of it."


@require_safe
def bag_tag(request: HttpRequest, tag: int) -> HttpResponse:
    visit = doors.found(by_number.visit_tagged(tag), "No reel of ours carries this tag.")
    opens = doors.way_to("passport:passport", visit.reel_id) or f"{reverse('finder:find')}?q={tag}"
    told = tag_of.gathered(_diary(visit.pk), doors.shop(request), request.build_absolute_uri(opens))
    return paper(f"tag-{tag}", tag_paper.render(told))


@require_safe
def quote(request: HttpRequest, entry: int) -> HttpResponse:
    asked, held = _written(entry, "quote")
    told = quote_of.gathered(held, asked, doors.shop(request), units_of_paper(request))
    return paper(f"quote-{told.number}", quote_paper.render(told))


@require_safe
def proof(request: HttpRequest, entry: int) -> HttpResponse:
    proved, held = _written(entry, "proof")
    told = proof_of.gathered(held, proved, doors.shop(request), units_of_paper(request))
    return paper(f"proof-{told.number}", proof_sheet.render(told))


@require_safe
def reading(request: HttpRequest, entry: int) -> HttpResponse:
    taken, held = _written(entry, "reading")
    told = reading_of.gathered(held, taken, doors.shop(request), units_of_paper(request))
    return paper(f"reading-{told.number}", reading_sheet.render(told))


@require_safe
def invoice(request: HttpRequest, number: int) -> HttpResponse:
    bill = doors.found(by_number.invoice(number), "No invoice of ours has this number.")
    _, held = _written(bill.entry_id, "invoice")
    told = invoice_of.gathered(held, bill, doors.shop(request))
    return paper(f"invoice-{number}", invoice_paper.render(told))


def paper(name: str, pdf: bytes) -> HttpResponse:
    """Shown by the browser, and saved under a plain name."""
    disposition = f'inline; filename="{name}.pdf"'
    headers = {"Content-Disposition": disposition, "Cache-Control": "private, no-cache"}
    return HttpResponse(pdf, content_type="application/pdf", headers=headers)


def _written(entry_id: int, kind: str) -> tuple[Any, Diary]:
    """The entry and its diary; what is of another kind is not here, what was struck makes no paper."""
    entry = by_number.entry(entry_id)
    doors.found(entry if entry and entry.kind == kind else None)
    doors.found(None if hasattr(entry, "strike") else entry, STRUCK)
    return entry, _diary(entry.visit_id)


def _diary(visit_id: int) -> Diary:
    return doors.found(diary(visit_id))
