"""A reel that is only written down: nothing has come in."""

from __future__ import annotations

from typing import Any

from django import forms
from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods

from spoolwright.pages import doors
from spoolwright.shop.acts.add_reel import NewReel, add_reel
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions import customers, reel_sheets

HANDS = (("", "not seen"), ("right", "right hand"), ("left", "left hand"), ("either", "either hand"))
LONGEST = 200


class ReelForm(forms.Form):
    sheet = forms.ChoiceField(label="Its reel sheet", required=False)
    described = forms.CharField(
        label="What stands on it",
        required=False,
        max_length=200,
        help_text="Such as Tarvak 58R. Not needed if a sheet is chosen.",
    )
    winding_hand = forms.ChoiceField(
        label="Wound with the", choices=HANDS, required=False, widget=forms.RadioSelect
    )
    serial = forms.CharField(
        label="Serial", required=False, max_length=300, help_text="Under the foot, inside the side plate."
    )
    twin_mark = forms.CharField(
        label="What tells it from its twin",
        required=False,
        max_length=300,
        help_text="Only if this customer has two of one model: a dot of removable paint under the foot.",
    )

    def __init__(self, data: Any = None) -> None:
        super().__init__(data)
        known = [(one.sheet.slug, one.sheet.shown) for one in reel_sheets.all_sheets()]
        self.fields["sheet"].choices = [("", "not known yet"), *known]

    def reel(self) -> NewReel:
        given = dict(self.cleaned_data)
        sheet = given.pop("sheet")
        return NewReel(sheet_version=reel_sheets.version(sheet) if sheet else None, **given)


@require_http_methods(["GET", "HEAD", "POST"])
def add(request: HttpRequest) -> HttpResponse:
    """First whose it is; then what it is."""
    owner = owner_asked(request.GET.get("customer", ""))
    if owner is None:
        return whose(request)
    form = ReelForm(doors.posted(request))
    if form.is_bound and form.is_valid():
        try:
            reel = add_reel(hand=request.user, customer=owner, reel=form.reel())
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            words = f"{reel.described} of {owner.name} is written down."
            return doors.written(request, words, "passport:passport", reel.pk)
    return doors.asked(request, "passport/add.html", form, {"owner": owner})


def whose(request: HttpRequest) -> HttpResponse:
    text = request.GET.get("who", "").replace("\x00", "")[:LONGEST]
    facts = {"text": text, "known": customers.known_as(text), "new_customer": doors.way_to("customer:add")}
    return doors.page(request, "passport/whose.html", facts)


def owner_asked(text: str) -> Any:
    is_number = text.isascii() and text.isdigit() and len(text) < 19
    return doors.found(customers.customer(int(text)), "No such customer.") if is_number else None
