"""Signing in with a password or with a link that works once; signing out."""

from typing import Any

from django.contrib.auth import authenticate, login, logout
from django.contrib.auth.decorators import login_not_required
from django.http import HttpRequest, HttpResponse, HttpResponseRedirect
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods, require_POST

from spoolwright.pages import doors
from spoolwright.pages.sign_in.forms import SignInForm
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.use_sign_in_link import use_sign_in_link

NOT_KNOWN = (
    "That name and that password do not belong together. After five wrong tries the door stays shut "
    "for 15 minutes."
)
LINKED = "django.contrib.auth.backends.ModelBackend"


@login_not_required
@sensitive_post_parameters("password")
@require_http_methods(["GET", "HEAD", "POST"])
def sign_in(request: HttpRequest) -> HttpResponse:
    if request.user.is_authenticated:
        return HttpResponseRedirect(doors.back_to(request))
    form = SignInForm(doors.posted(request))
    if form.is_bound and form.is_valid():
        person = authenticate(request, **form.cleaned_data)
        if person is not None:
            login(request, person)
            return HttpResponseRedirect(doors.back_to(request))
        form.add_error(None, NOT_KNOWN)
    return doors.secret(doors.asked(request, "sign_in/sign_in.html", form, {"next": doors.back_to(request)}))


@login_not_required
@require_http_methods(["GET", "HEAD", "POST"])
def once(request: HttpRequest, token: str) -> HttpResponse:
    """Opening the link only shows a button: a mail program that looks at every link must not use it up."""
    facts: dict[str, Any] = {}
    if request.method == "POST":
        try:
            person = use_sign_in_link(token=token)
        except Refused as refusal:
            facts = {"refusal": refusal}
        else:
            login(request, person, backend=LINKED)
            return doors.secret(HttpResponseRedirect(doors.back_to(request)))
    status = doors.REFUSED if facts else 200
    return doors.secret(doors.page(request, "sign_in/once.html", facts, status=status))


@require_POST
def sign_out(request: HttpRequest) -> HttpResponse:
    logout(request)
    response = doors.written(request, "You are signed out.", "sign_in:page")
    response["Clear-Site-Data"] = '"cache"'
    return response
