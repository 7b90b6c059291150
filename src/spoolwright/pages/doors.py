"""The doors: who may come in, what is found behind them, and how an answer leaves the house.

A view reads like a form at a counter: door, form, act, answer.

    @doors.owner_only                         the one mark a view may carry; every page is for signed-in hands
    visit = doors.found(questions...)         the record, or 404 in words
    doors.page(request, "x/x.html", facts)    the answer, with the headers that every page has
    doors.asked(request, "x/x.html", form)    the same with a form: 422 when it was refused
    doors.written(request, "Written.", "/")   after an act: says so once, and leads on
    doors.put_refusal_on(form, refusal)       an act that refused, beside the field it is about
"""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Any, TypeVar

from django.contrib import messages
from django.contrib.auth import update_session_auth_hash
from django.contrib.auth.decorators import login_not_required
from django.core.exceptions import PermissionDenied
from django.forms import BaseForm
from django.http import Http404, HttpRequest, HttpResponse, HttpResponseRedirect, QueryDict
from django.shortcuts import render, resolve_url
from django.urls import NoReverseMatch, reverse
from django.utils.cache import patch_vary_headers
from django.utils.http import url_has_allowed_host_and_scheme
from django.views.decorators.http import require_safe

from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions.shop_settings import shop_settings

Found = TypeVar("Found")
View = Callable[..., HttpResponse]

REFUSED = 422
"""What a form that was not accepted answers with: htmx shows it, and keeps what was typed."""


def owner_only(view: View) -> View:
    """A bench hand is told plainly that this is the owner's; a stranger never gets so far."""

    @wraps(view)
    def guarded(request: HttpRequest, *args: Any, **kwargs: Any) -> HttpResponse:
        if not getattr(request.user, "is_owner", False):
            raise PermissionDenied("Only the owner changes this.")
        return view(request, *args, **kwargs)

    return guarded


def themself_or_owner(request: HttpRequest, whom: Any) -> None:
    """Each person has a page of their own; the owner has everybody's."""
    if request.user.pk != whom.pk and not getattr(request.user, "is_owner", False):
        raise PermissionDenied("Only this person and the owner change this.")


def stay_signed_in(request: HttpRequest, person: Any) -> None:
    """Somebody who changed their own password is not shown out for it."""
    if request.user.pk == person.pk:
        update_session_auth_hash(request, person)


def found(record: Found | None, what: str = "There is nothing here.") -> Found:
    """The record itself, or the page that says there is none."""
    if record is None:
        raise Http404(what)
    return record


def fragment_wanted(request: HttpRequest) -> bool:
    """Whether htmx asked for a piece; a page restored from the browser's history is wanted whole."""
    htmx = getattr(request, "htmx", False)
    return bool(htmx) and not htmx.history_restore_request


def page(
    request: HttpRequest,
    template: str,
    facts: dict[str, Any] | None = None,
    *,
    piece: str = "",
    status: int = 200,
) -> HttpResponse:
    """The page, or its `piece` alone when htmx asks. Kept by no cache: it shows the shop's own business."""
    name = piece if piece and fragment_wanted(request) else template
    response = render(request, name, facts, status=status)
    patch_vary_headers(response, ["HX-Request"])
    response.setdefault("Cache-Control", "private, no-cache")
    return response


def asked(
    request: HttpRequest, template: str, form: BaseForm, facts: dict[str, Any] | None = None
) -> HttpResponse:
    """The page with its form: empty, or as it was sent with the faults beside the fields."""
    status = REFUSED if form.is_bound else 200
    return page(request, template, {"form": form} | (facts or {}), status=status)


def secret(response: HttpResponse) -> HttpResponse:
    """An answer that no browser may keep, not even for its way back."""
    response["Cache-Control"] = "no-store"
    return response


def written(request: HttpRequest, words: str, to: Any, *args: Any) -> HttpResponse:
    """After an act: the words are said once on the next page, and the browser forgets what was typed."""
    messages.success(request, words)
    address = resolve_url(to, *args)
    if fragment_wanted(request):
        return HttpResponse(status=204, headers={"HX-Redirect": address, "X-Written": "1"})
    return HttpResponseRedirect(address)


def put_refusal_on(form: BaseForm, refusal: Refused) -> None:
    """The shop's own words beside the field that they are about, or above them all."""
    form.add_error(refusal.field if refusal.field in form.fields else None, refusal.words)


def posted(request: HttpRequest) -> QueryDict | None:
    """What a form was sent with; None when it is only looked at. Sent empty is still sent."""
    return request.POST if request.method == "POST" else None


def way_to(name: str, *args: Any) -> str:
    """The address of another page by its name: pages do not know one another. Empty while there is none."""
    try:
        return reverse(name, args=args)
    except NoReverseMatch:
        return ""


def back_to(request: HttpRequest, otherwise: str = "/") -> str:
    """Where the person came from, if that is in this house."""
    asked = request.POST.get("back") or request.POST.get("next") or request.GET.get("next") or ""
    inside = url_has_allowed_host_and_scheme(asked, {request.get_host()}, require_https=request.is_secure())
    return asked if inside else otherwise


def shop(request: HttpRequest | None) -> Any:
    """The shop's settings, asked for once a request."""
    kept = getattr(request, "shop_settings", None)
    if kept is None:
        kept = shop_settings()
        if request is not None:
            request.shop_settings = kept  # type: ignore[attr-defined]
    return kept


def look(request: HttpRequest | None) -> str:
    """ "light", "dark" or "device"; a stranger's device decides for itself."""
    return getattr(getattr(request, "user", None), "look", "device")


@login_not_required
@require_safe
def here(request: HttpRequest) -> HttpResponse:
    """Whether the house answers at all: asked by a form before it leaves."""
    return HttpResponse(status=204, headers={"Cache-Control": "no-store"})
