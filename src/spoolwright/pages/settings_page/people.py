"""The people of the shop: who holds a pen, and how each of them comes in."""

from django.http import HttpRequest, HttpResponse
from django.urls import reverse
from django.views.decorators.debug import sensitive_post_parameters
from django.views.decorators.http import require_http_methods, require_POST

from spoolwright.pages import doors
from spoolwright.pages.settings_page.people_forms import NewPersonForm, PersonForm
from spoolwright.shop.acts.add_person import add_person
from spoolwright.shop.acts.change_person import change_person
from spoolwright.shop.acts.make_sign_in_link import make_sign_in_link
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions import people as ask


@require_http_methods(["GET", "HEAD", "POST"])
def people(request: HttpRequest) -> HttpResponse:
    form = NewPersonForm(doors.posted(request))
    if form.is_bound and form.is_valid():
        try:
            added = add_person(hand=request.user, **form.cleaned_data)
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            words = f"{added.shown} has a hand in the diary."
            return doors.written(request, words, "settings_page:person", added.username)
    return doors.asked(request, "settings_page/people.html", form, {"people": ask.people()})


@sensitive_post_parameters("password")
@require_http_methods(["GET", "HEAD", "POST"])
def person(request: HttpRequest, username: str) -> HttpResponse:
    whom = doors.found(ask.person(username), "Nobody here has this name.")
    doors.themself_or_owner(request, whom)
    form = PersonForm(doors.posted(request), person=whom, by_owner=request.user.is_owner)
    if form.is_bound and form.is_valid():
        try:
            fresh = change_person(hand=request.user, person=whom, **form.changes())
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            doors.stay_signed_in(request, fresh)
            return doors.written(request, f"Written for {fresh.shown}.", "settings_page:people")
    return doors.asked(request, "settings_page/person.html", form, {"whom": whom})


@require_POST
def link(request: HttpRequest, username: str) -> HttpResponse:
    """A link for somebody: shown on this page and never again; only its hash is kept."""
    whom = doors.found(ask.person(username), "Nobody here has this name.")
    try:
        token = make_sign_in_link(hand=request.user, person=whom)
    except Refused as refusal:
        return doors.page(request, "refused.html", {"refusal": refusal}, status=doors.REFUSED)
    address = request.build_absolute_uri(reverse("sign_in:once", args=[token]))
    return doors.secret(doors.page(request, "settings_page/link.html", {"whom": whom, "address": address}))
