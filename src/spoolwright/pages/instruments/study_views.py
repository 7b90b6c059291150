"""A repeatability study: written down try by try or from a file, and read with its picture."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods, require_safe

from spoolwright.pages import doors
from spoolwright.pages.instruments.study_form import StudyForm
from spoolwright.pages.instruments.study_told import told
from spoolwright.pages.instruments.views import shelved
from spoolwright.pages.words import shown
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.write_gauge_study import write_gauge_study
from spoolwright.shop.questions import instruments


@require_http_methods(["GET", "HEAD", "POST"])
def add(request: HttpRequest, number: int) -> HttpResponse:
    found = shelved(number)
    files = request.FILES if request.method == "POST" else None
    form = StudyForm(doors.posted(request), files, of=found, system=shown.system_of(request.user))
    if form.is_written and form.is_valid():
        try:
            written = write_gauge_study(hand=request.user, instrument=found.row, studied=form.studied())
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(request, "The study is written.", "instruments:study", written.pk)
    refused = form.is_bound and not form.is_valid()
    return doors.page(
        request,
        "instruments/add_study.html",
        {"form": form, "one": found},
        status=doors.REFUSED if refused else 200,
    )


@require_safe
def study(request: HttpRequest, number: int) -> HttpResponse:
    of, found = doors.found(instruments.study(number), "The shop has no such study.")
    counts = of.studies[0].row.pk == found.row.pk
    facts = {
        "one": of,
        "study": found,
        "told": told(found, shown.system_of(request.user)),
        "counts": counts,
    }
    return doors.page(request, "instruments/study.html", facts)
