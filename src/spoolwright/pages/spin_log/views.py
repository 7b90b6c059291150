"""The spin log as it is read: its picture, its sentences; a file is looked at and not kept."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods

from spoolwright.bench import spin_log as bench
from spoolwright.bench.spin_log import Spin
from spoolwright.bench.unreadable import Unreadable
from spoolwright.judgement.spin_log_words import in_words
from spoolwright.pages import doors
from spoolwright.pages.spin_log.forms import LogForm
from spoolwright.papers.charts.spin_log_chart import spin_log as drawn
from spoolwright.shop.questions import spin_log as questions


@require_http_methods(["GET", "HEAD", "POST"])
def spin_log(request: HttpRequest) -> HttpResponse:
    posted = request.method == "POST"
    form = LogForm(request.POST, request.FILES) if posted else LogForm()
    of_file: dict[str, Any] = {}
    if posted and form.is_valid():
        of_file = _told(form.spins)
        if of_file["why_not"]:
            form.add_error("file", of_file["why_not"])
    refused = bool(posted and form.errors)
    facts = {"form": form, "own": _told(questions.own_spins()), "of_file": {} if refused else of_file}
    return doors.page(request, "spin_log/log.html", facts, status=doors.REFUSED if refused else 200)


def _told(spins: Sequence[Spin]) -> dict[str, Any]:
    """The picture and the sentences, or why there are none."""
    try:
        log = bench.analyse(spins)
    except Unreadable as fault:
        return {"spins": len(spins), "why_not": fault.words}
    sentences = in_words(log)
    chart = drawn(log, spins, sentences[0])
    return {"spins": len(spins), "why_not": "", "chart": chart, "sentences": sentences[1:]}
