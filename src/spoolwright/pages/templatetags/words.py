"""{% load words %}: values in the reader's units and words. The work is done in pages/words."""

from __future__ import annotations

from datetime import date, datetime
from decimal import Decimal
from typing import Any

from django import template
from django.utils.html import format_html
from django.utils.safestring import SafeString

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages import doors
from spoolwright.pages.words import money as sums
from spoolwright.pages.words import shown, when

register = template.Library()

Context = dict[str, Any]


def system_in(context: Context) -> str:
    request = context.get("request")
    return shown.system_of(getattr(request, "user", None))


@register.simple_tag(takes_context=True)
def quantity(context: Context, value: float | None, dimension: str, uncertainty: float | None = None) -> str:
    return shown.quantity(value, dimension, system_in(context), uncertainty)


@register.simple_tag(takes_context=True)
def interval(context: Context, low: float, high: float, dimension: str) -> str:
    return shown.interval(low, high, dimension, system_in(context))


@register.simple_tag(takes_context=True)
def measured(context: Context, reading: Measured) -> SafeString:
    """The value, and its expanded uncertainty in the smaller size."""
    value, spread = shown.measured(reading, system_in(context))
    if not spread:
        return format_html("{}", value)
    return format_html('{} <span class="uncertainty">±\u00a0{}</span>', value, spread)


@register.simple_tag(takes_context=True)
def money(context: Context, minor: int | None) -> str:
    shop = doors.shop(context.get("request"))
    return sums.show(minor, shop.currency_mark or shop.currency, shop.minor_digits)


@register.filter
def day(moment: date | datetime) -> str:
    return when.day(moment)


@register.filter
def plain_day(moment: date | datetime) -> str:
    return when.plain_day(when.local_day(moment))


@register.filter
def hour(moment: datetime) -> str:
    return when.hour(moment)


@register.filter
def since(moment: datetime) -> str:
    return when.since(moment)


@register.filter
def together(sentence: str) -> str:
    return shown.together(sentence)


@register.filter
def minutes(count: int) -> str:
    return when.minutes(count)


@register.simple_tag
def spread(likely: date | None, late: date | None) -> str:
    return when.spread(likely, late)


@register.filter
def percent(share: Decimal) -> str:
    """ "25 %" of 0.25."""
    return f"{(share * 100).normalize():f}\u00a0%"
