"""A customer: how to reach them, the reels they have with us, and what is written about them."""

from __future__ import annotations

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods, require_safe

from spoolwright.pages import doors
from spoolwright.pages.customer.forms import ChangeForm, NewCustomerForm
from spoolwright.pages.customer.reels import reels_of
from spoolwright.shop.acts.add_customer import NewCustomer, add_customer
from spoolwright.shop.acts.change_customer import change_customer
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions import customers as ask

NOBODY = "No customer of ours has this number."


@require_safe
def customer(request: HttpRequest, number: int) -> HttpResponse:
    whom = doors.found(ask.customer(number), NOBODY)
    facts = {"whom": whom, "reels": reels_of(whom), "add_reel": doors.way_to("passport:add")}
    return doors.page(request, "customer/customer.html", facts)


@require_http_methods(["GET", "HEAD", "POST"])
def add(request: HttpRequest) -> HttpResponse:
    form = NewCustomerForm(doors.posted(request))
    if form.is_bound and form.is_valid():
        told: NewCustomer = form.told()
        try:
            added = add_customer(hand=request.user, **vars(told))
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(request, f"{added.name} is written down.", "customer:customer", added.pk)
    return doors.asked(request, "customer/add.html", form)


@require_http_methods(["GET", "HEAD", "POST"])
def change(request: HttpRequest, number: int) -> HttpResponse:
    whom = doors.found(ask.customer(number), NOBODY)
    form = ChangeForm(doors.posted(request), customer=whom)
    if form.is_bound and form.is_valid():
        version = form.cleaned_data["version"]
        try:
            change_customer(hand=request.user, customer=whom, to=form.told(), version=version)
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(
                request, "What is known of this customer is written.", "customer:customer", number
            )
    return doors.asked(request, "customer/change.html", form, {"whom": whom})
