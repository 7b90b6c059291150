"""Pieces of the arrival page that change while somebody types."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_safe

from spoolwright.pages import doors
from spoolwright.pages.arrival import mat
from spoolwright.pages.arrival.forms import Around, ArrivalForm
from spoolwright.pages.arrival.photos import Photos
from spoolwright.pages.words import shown

LONGEST = 200


@require_safe
def known(request: HttpRequest) -> HttpResponse:
    """Customers whom the words typed so far may mean."""
    return piece(request, "arrival/_known.html", empty_form(request, 1))


@require_safe
def reels(request: HttpRequest) -> HttpResponse:
    """The reels of the customer just chosen, for every reel on the page."""
    rows = mat.reels_counted(request.GET)
    return piece(request, "arrival/_every_which.html", empty_form(request, rows))


@require_safe
def reel(request: HttpRequest) -> HttpResponse:
    """The questions about one more reel."""
    rows = mat.reels_counted(request.GET)
    form = empty_form(request, rows)
    return piece(request, "arrival/_reel.html", form, {"reel": form.rows[-1]})


def piece(request: HttpRequest, template: str, form: ArrivalForm, more: dict | None = None) -> HttpResponse:
    """These pieces mean nothing alone: whoever asks for one as a page is shown the whole."""
    if not doors.fragment_wanted(request):
        return redirect("arrival:arrive")
    return doors.page(request, template, {"form": form} | (more or {}))


def empty_form(request: HttpRequest, rows: int) -> ArrivalForm:
    asked = {name: request.GET.get(name, "").replace("\x00", "")[:LONGEST] for name in ("who", "customer")}
    around = Around(shown.system_of(request.user), doors.shop(request), [Photos()] * rows)
    return ArrivalForm(rows=rows, around=around, initial=asked)
