"""The shop's instruments: read by everybody here; added, changed, checked and put away by any hand."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from django.forms import Form
from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods, require_safe

from spoolwright.pages import doors
from spoolwright.pages.instruments import told
from spoolwright.pages.instruments.forms import CheckForm, InstrumentForm, PutAwayForm, kinds
from spoolwright.pages.words import shown
from spoolwright.sheets import instrument_kinds
from spoolwright.shop.acts.add_instrument import add_instrument
from spoolwright.shop.acts.change_instrument import change_instrument
from spoolwright.shop.acts.check_instrument import check_instrument
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.retire_instrument import retire_instrument
from spoolwright.shop.questions import instruments
from spoolwright.shop.questions.instruments import Shelved

NO_SUCH = "The shop has no such instrument."


def shelved(number: int) -> Shelved:
    return doors.found(instruments.numbered(number), NO_SUCH)


@require_safe
def every(request: HttpRequest) -> HttpResponse:
    system = shown.system_of(request.user)
    lines = [told.on_the_list(one, system) for one in instruments.every()]
    facts = {
        "in_use": [line for line in lines if not line.shelved.is_put_away],
        "put_away": [line for line in lines if line.shelved.is_put_away],
        "kinds": kinds(),
    }
    return doors.page(request, "instruments/every.html", facts)


@require_safe
def one(request: HttpRequest, number: int) -> HttpResponse:
    found = shelved(number)
    facts = {
        "one": found,
        "leaf": told.leaf(found, shown.system_of(request.user)),
        "readings": instruments.taken_with(number),
    }
    return doors.page(request, "instruments/one.html", facts)


@require_http_methods(["GET", "HEAD", "POST"])
def add(request: HttpRequest, kind: str) -> HttpResponse:
    known = doors.found(instrument_kinds.kinds().get(kind), "There is no such kind of instrument.")
    asked = request.POST.get("dimension") or request.GET.get("dimension", "")
    dimension = asked if asked in known.dimensions else known.dimensions[0]
    form = InstrumentForm(
        doors.posted(request), kind=known, dimension=dimension, system=shown.system_of(request.user)
    )
    if form.is_bound and form.is_valid():
        try:
            added = add_instrument(
                hand=request.user,
                mark=form.cleaned_data["mark"],
                kind=known.id,
                known=form.known(),
                dimension=dimension,
            )
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(request, f"{added.mark} is on the list.", "instruments:one", added.pk)
    return doors.asked(request, "instruments/add.html", form, {"kind": known})


@require_http_methods(["GET", "HEAD", "POST"])
def change(request: HttpRequest, number: int) -> HttpResponse:
    found = shelved(number)
    form = InstrumentForm(
        doors.posted(request),
        kind=found.kind,
        dimension=found.row.dimension,
        system=shown.system_of(request.user),
        known=found.known,
    )
    return _written(
        request,
        found,
        form,
        "instruments/change.html",
        lambda: change_instrument(
            hand=request.user,
            instrument=found.row,
            known=form.known(),
            after=form.cleaned_data["version"],
        ),
    )


@require_http_methods(["GET", "HEAD", "POST"])
def check(request: HttpRequest, number: int) -> HttpResponse:
    found = shelved(number)
    form = CheckForm(doors.posted(request), of=found, system=shown.system_of(request.user))
    return _written(
        request,
        found,
        form,
        "instruments/check.html",
        lambda: check_instrument(hand=request.user, instrument=found.row, held=form.held()),
    )


@require_http_methods(["GET", "HEAD", "POST"])
def put_away(request: HttpRequest, number: int) -> HttpResponse:
    found = shelved(number)
    form = PutAwayForm(doors.posted(request))
    return _written(
        request,
        found,
        form,
        "instruments/put_away.html",
        lambda: retire_instrument(hand=request.user, instrument=found.row, why=form.cleaned_data["why"]),
    )


def _written(
    request: HttpRequest, found: Shelved, form: Form, template: str, act: Callable[[], Any]
) -> HttpResponse:
    """Let the act write what the form holds; whatever it refuses stands beside its field."""
    if form.is_bound and form.is_valid():
        try:
            act()
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(request, "It is written.", "instruments:one", found.row.pk)
    return doors.asked(request, template, form, {"one": found})
