"""A gauge on a serial line of the computer that the shop runs on, heard in the page while it is pulled.

The answer is a line of JSON a number, as it comes; nothing is kept here. The browser makes the file of it,
and that goes the way of every file. A hand that walks away leaves nothing behind but a port that is shut.
"""

from __future__ import annotations

import json
import time
from collections.abc import Iterator
from typing import Any

from django.http import HttpRequest, HttpResponse, JsonResponse, StreamingHttpResponse
from django.http.response import HttpResponseBase
from django.views.decorators.http import require_http_methods

from spoolwright import quantities
from spoolwright.bench import gauge_protocol
from spoolwright.bench.gauge_lines import GaugeLog
from spoolwright.bench.unreadable import Unreadable
from spoolwright.pages.words import shown
from spoolwright.shop.errands import gauge_port

LONGEST = 120
"""Seconds that one pull may take; one of the server's few threads listens for so long."""

KEPT = "how the gauge talks"
USUAL = 'unit = "kg"\nbaud = 9600\n'
MOST_LETTERS = 2000
NO_PORT = (
    "The computer that the shop runs on has no serial port just now. Is the gauge plugged in there, or "
    "paired with it? A phone’s own plug is not asked."
)


@require_http_methods(["GET", "HEAD", "POST"])
def gauge_line(request: HttpRequest) -> HttpResponseBase:
    """Which ports there are and how the gauge talked last time; or, asked to listen, what comes."""
    if request.method != "POST":
        like = request.session.get(KEPT, USUAL)
        return JsonResponse({"ports": gauge_port.ports(), "like": like, "none": NO_PORT, "most": LONGEST})
    name, like = request.POST.get("port", ""), request.POST.get("like", "")[:MOST_LETTERS]
    try:
        protocol = gauge_protocol.read_toml(like, "how the gauge talks")
        if name not in gauge_port.ports():
            return _refused("That port is not there any more. " + NO_PORT)
        port = gauge_port.open_port(name, protocol)
    except (Unreadable, gauge_port.NoGauge) as fault:
        return _refused(str(fault))
    request.session[KEPT] = like
    answer = StreamingHttpResponse(
        _heard(port, GaugeLog(protocol), shown.system_of(request.user)), content_type="application/x-ndjson"
    )
    answer["Cache-Control"] = "no-store"
    answer["X-Accel-Buffering"] = "no"
    return answer


def _refused(words: str) -> HttpResponse:
    return JsonResponse({"end": words}, status=422)


def _heard(port: Any, log: GaugeLog, system: str) -> Iterator[bytes]:
    """Each number as it comes, a sign of life between them, and at the end why it ended."""
    began, sent, words = time.monotonic(), 0, ""
    with port:
        while time.monotonic() - began < LONGEST and not words:
            ends = time.monotonic() + 0.2
            words = gauge_port.listen(port, log, lambda ends=ends: time.monotonic() < ends)
            rows = [_row(log, k, system) for k in range(sent, len(log.pulls))]
            sent = len(log.pulls)
            silent = gauge_port.silence(log, time.monotonic() - began)
            yield b"".join(rows) or _line({"wait": silent})
    yield _line({"end": words or f"It stopped by itself after {LONGEST} s.", "left_out": log.unread})


def _row(log: GaugeLog, k: int, system: str) -> bytes:
    since, pull = log.times[k] - log.times[0], log.pulls[k]
    return _line({"t": round(since, 4), "n": round(pull, 4), "s": quantities.show(pull, "force", system)})


def _line(told: dict[str, Any]) -> bytes:
    return json.dumps(told, ensure_ascii=False).encode() + b"\n"
