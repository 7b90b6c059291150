"""The doors: headers of an answer, where one may be sent back to, refusals beside their field."""

from __future__ import annotations

from types import SimpleNamespace

import pytest
from django import forms
from django.core.exceptions import PermissionDenied
from django.http import Http404, HttpResponse
from django.test import RequestFactory
from django_htmx.middleware import HtmxDetails

from spoolwright.pages import doors
from spoolwright.shop.acts.refused import Refused

ASK = RequestFactory()


def asked_by_htmx(**headers: str) -> object:
    request = ASK.get("/", headers={"HX-Request": "true"} | headers)
    request.htmx = HtmxDetails(request)
    return request


def test_what_is_not_there_is_not_found_and_what_is_there_is_itself() -> None:
    assert doors.found(7) == 7
    with pytest.raises(Http404):
        doors.found(None)


def test_a_piece_is_wanted_by_htmx_but_not_by_the_browsers_history() -> None:
    assert doors.fragment_wanted(asked_by_htmx())
    assert not doors.fragment_wanted(asked_by_htmx(**{"HX-History-Restore-Request": "true"}))
    assert not doors.fragment_wanted(ASK.get("/"))


@pytest.mark.parametrize(
    ("sent", "back"),
    [
        ("/diary/417/", "/diary/417/"),
        ("/find/?q=a", "/find/?q=a"),
        ("https://elsewhere.example/", "/"),
        ("//elsewhere.example", "/"),
        ("/\\elsewhere.example", "/"),
        ("javascript:alert(1)", "/"),
        ("", "/"),
    ],
)
def test_one_is_sent_back_only_inside_the_house(sent: str, back: str) -> None:
    assert doors.back_to(ASK.post("/look/", {"back": sent})) == back


def test_an_empty_form_that_was_sent_is_still_sent() -> None:
    assert doors.posted(ASK.post("/")) is not None
    assert doors.posted(ASK.get("/")) is None


def test_the_owners_door_opens_to_the_owner_alone() -> None:
    view = doors.owner_only(lambda request: HttpResponse("in"))
    request = ASK.get("/")
    request.user = SimpleNamespace(is_owner=True)
    assert view(request).content == b"in"
    request.user = SimpleNamespace(is_owner=False)
    with pytest.raises(PermissionDenied):
        view(request)


def test_each_person_has_their_own_page_and_the_owner_all() -> None:
    request = ASK.get("/")
    for who, owner in ((7, False), (1, True)):
        request.user = SimpleNamespace(pk=who, is_owner=owner)
        doors.themself_or_owner(request, SimpleNamespace(pk=7))
    request.user = SimpleNamespace(pk=2, is_owner=False)
    with pytest.raises(PermissionDenied):
        doors.themself_or_owner(request, SimpleNamespace(pk=7))


class Weighing(forms.Form):
    mass = forms.CharField()


@pytest.mark.parametrize(("field", "where"), [("mass", "mass"), ("elsewhere", "__all__"), ("", "__all__")])
def test_a_refusal_stands_beside_its_field_or_above_all(field: str, where: str) -> None:
    form = Weighing({"mass": "338 g"})
    form.full_clean()
    doors.put_refusal_on(form, Refused("It was weighed already.", field))
    assert form.errors[where] == ["It was weighed already."]


def test_a_way_to_a_page_that_is_not_there_is_no_way() -> None:
    assert doors.way_to("sign_in:page") == "/sign-in/"
    assert doors.way_to("no_such:page", 7) == ""


def test_a_secret_is_kept_nowhere() -> None:
    assert doors.secret(HttpResponse())["Cache-Control"] == "no-store"


@pytest.mark.parametrize(("user", "look"), [(None, "device"), (SimpleNamespace(look="dark"), "dark")])
def test_the_look_is_the_persons_and_a_strangers_device_decides(user: object, look: str) -> None:
    request = ASK.get("/")
    request.user = user
    assert doors.look(request) == look
    assert doors.look(None) == "device"


def test_the_house_says_that_it_is_here() -> None:
    response = doors.here(ASK.head("/here/"))
    assert (response.status_code, response["Cache-Control"]) == (204, "no-store")
