"""What every request and every answer passes on its way: the size limit and the device features."""

from collections.abc import Callable

from django.conf import settings
from django.http import HttpRequest, HttpResponse
from django.shortcuts import render

Answer = Callable[[HttpRequest], HttpResponse]

OPEN_TO_US = "microphone=(self)"
SHUT = ", ".join(
    f"{feature}=()" for feature in ("camera", "geolocation", "gyroscope", "payment", "usb", "midi")
)


def shut_device_features(answer: Answer) -> Answer:
    """No page looks or asks where you are, and none listens but at a press of a button: see recorder.js."""

    def passed(request: HttpRequest) -> HttpResponse:
        response = answer(request)
        response.setdefault("Permissions-Policy", f"{OPEN_TO_US}, {SHUT}")
        return response

    return passed


def refuse_large_uploads(answer: Answer) -> Answer:
    """Refuse what says that it is too large before a byte of it is read, and say so in words."""

    def passed(request: HttpRequest) -> HttpResponse:
        if declared_size(request) <= settings.LARGEST_UPLOAD:
            return answer(request)
        template = "_too_large.html" if request.headers.get("HX-Request") else "too_large.html"
        facts = {"largest_mb": megabytes(settings.LARGEST_FILE), "sent_mb": megabytes(declared_size(request))}
        return render(request, template, facts, status=413)

    return passed


def megabytes(size: int) -> int:
    return size // (1024 * 1024)


def declared_size(request: HttpRequest) -> int:
    said = str(request.META.get("CONTENT_LENGTH") or "0")
    return int(said) if said.isascii() and said.isdigit() else 0
