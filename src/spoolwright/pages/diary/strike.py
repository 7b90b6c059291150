"""Striking an entry out: it stays readable, with the reason beside it."""

from __future__ import annotations

from django import forms
from django.http import Http404, HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods

from spoolwright.pages import doors
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.diary.told.blocks import told
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.questions import blocks


class StrikeForm(forms.Form):
    reason = forms.CharField(
        label="Why it is struck out",
        max_length=1000,
        help_text="It stays readable, with this reason beside it.",
        error_messages={"required": "The reason is missing: write it in your own words."},
    )


@require_http_methods(["GET", "HEAD", "POST"])
def strike(request: HttpRequest, tag: int, entry: int) -> HttpResponse:
    desk = Desk(request, tag)
    block = doors.found(blocks.block(entry), "There is no such entry.")
    if block.entry.visit_id != desk.visit.pk:
        raise Http404("This diary has no such entry.")
    form = StrikeForm(doors.posted(request))
    if form.is_bound and form.is_valid():
        try:
            strike_entry(hand=request.user, entry=block.entry, reason=form.cleaned_data["reason"])
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(request, "Struck out.", f"{desk.address}#entry-{entry}")
    facts = {"desk": desk, "told": told(desk, [block])[0]}
    return doors.asked(request, "diary/strike.html", form, facts)
