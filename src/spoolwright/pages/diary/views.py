"""The diary of one visit: read from top to bottom, its last block the next thing to do."""

from django.http import Http404, HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods, require_safe

from spoolwright.pages import doors
from spoolwright.pages.diary import pen
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.diary.told import pictures, promised_band
from spoolwright.pages.diary.told.blocks import told
from spoolwright.pages.diary.writers import WRITERS, readings
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.questions import blocks
from spoolwright.shop.questions.kept_inertia import inertia_of
from spoolwright.shop.questions.kept_noise import drawn_noise_of
from spoolwright.shop.questions.kept_series import series_of
from spoolwright.shop.questions.signals import pull_of, spin_of


@require_safe
def diary(request: HttpRequest, tag: int) -> HttpResponse:
    return pen.asked(Desk(request, tag), None)


@require_http_methods(["GET", "HEAD", "POST"])
def write(request: HttpRequest, tag: int, what: str) -> HttpResponse:
    """The form of one kind of entry in the open block, and the entry once it is written."""
    writer = WRITERS.get(what)
    if writer is None:
        raise Http404("There is no such kind of entry.")
    return writer(Desk(request, tag))


@require_http_methods(["GET", "HEAD", "POST"])
def typed(request: HttpRequest, tag: int, kind: str) -> HttpResponse:
    """A reading of one kind of the registry, typed."""
    known = doors.found(reading_kinds.kinds().get(kind), "There is no such kind of reading.")
    return readings.typed(Desk(request, tag), known)


@require_safe
def trace(request: HttpRequest, tag: int, entry: int) -> HttpResponse:
    """The chart of one reading, with its numbers, what its uncertainty is made of, and how it was read."""
    desk = Desk(request, tag)
    block = doors.found(blocks.block(entry), "There is no such entry.")
    if block.entry.visit_id != desk.visit.pk or block.kind != "reading":
        raise Http404("This diary has no such reading.")
    signals = (pull_of, spin_of, inertia_of, series_of, drawn_noise_of)
    found = (kept_of(block.part) for kept_of in signals)
    kept = doors.found(next(filter(None, found), None), "No signal was kept with this reading.")
    hard_on = any(value.kind == "pull_full" for value in block.part.values.all())
    chart = pictures.chart_of(
        kept, desk.system, promised_band.of_full_pull(desk) if hard_on else None, setting_of(desk.sheet)
    )
    facts = {
        "desk": desk,
        "told": told(desk, [block])[0],
        "chart": chart,
        "notes": kept.notes,
        "budget": pictures.budget_rows(
            kept.budget, desk.system, per_inertia=pictures.is_per_inertia(block.part)
        ),
    }
    return doors.page(request, "diary/trace.html", facts)
