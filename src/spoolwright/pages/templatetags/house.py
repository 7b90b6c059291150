"""{% load house %}: the pieces that every page is put together from."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from django import forms, template
from django.forms.boundfield import BoundField
from django.urls import resolve
from django.urls.exceptions import Resolver404

from spoolwright.pages import doors

register = template.Library()

Context = dict[str, Any]

# The line of words at the top: the route it leads to, its word, its key.
WAY_ROUND = (
    ("on_the_bench:bench", "On the bench", "b"),
    ("arrival:arrive", "Arrival", "a"),
    ("finder:find", "Find", "/"),
    ("reel_sheet:sheets", "Sheets", "s"),
    ("settings_page:shop", "Shop", "h"),
)
ROUND_ABOUT = (forms.RadioSelect, forms.CheckboxSelectMultiple)


@register.inclusion_tag("_way_round.html", takes_context=True)
def way_round(context: Context) -> Context:
    here = route_of(context)
    ways = [(doors.way_to(name), word, key, name == here) for name, word, key in WAY_ROUND]
    rows = [way for way in ways if way[0]]
    return {"rows": rows, "shop": doors.shop(context.get("request"))}


@register.inclusion_tag("_title_block.html", takes_context=True)
def title_block(context: Context) -> Context:
    request = context.get("request")
    return {
        "request": request,
        "user": getattr(request, "user", None),
        "csrf_token": context.get("csrf_token"),
        "shop": doors.shop(request),
        "here": request.get_full_path() if request and request.method == "GET" else "/",
    }


def route_of(context: Context) -> str:
    request = context.get("request")
    try:
        return resolve(request.path_info).view_name if request else ""
    except Resolver404:
        return ""


@register.simple_tag(takes_context=True)
def look(context: Context) -> str:
    """ "light", "dark" or "device": what this person has chosen."""
    return doors.look(context.get("request"))


@register.simple_tag(takes_context=True)
def shop_name(context: Context) -> str:
    return doors.shop(context.get("request")).name


@register.inclusion_tag("_field.html")
def field(bound: BoundField, digits: bool = False, drop: bool = False) -> Context:
    """One question with its hint, its faults and what was typed. `digits` sets it large."""
    widget = bound.field.widget
    many = isinstance(widget, ROUND_ABOUT)
    single = isinstance(widget, forms.CheckboxInput)
    return {
        "field": bound,
        "digits": digits,
        "drop": drop,
        "many": many,
        "single": single,
        "may_be_empty": may_be_empty(bound),
    }


def may_be_empty(bound: BoundField) -> bool:
    """Whether a field has to say that it may be left empty: not where something stands in it already."""
    chosen = isinstance(bound.field.widget, forms.Select)
    return not bound.field.required and not chosen and bound.initial in (None, "")


@register.inclusion_tag("_faults.html")
def faults(*asked: forms.BaseForm) -> Context:
    """Everything that was refused, each a link to its field; takes the focus when the page opens."""
    rows = [row for form in asked if form.is_bound for row in fault_rows(form)]
    general = [line for form in asked if form.is_bound for line in form.non_field_errors()]
    return {"rows": rows, "general": general}


def fault_rows(form: forms.BaseForm) -> Iterable[tuple[str, str, str]]:
    for bound in form:
        for line in bound.errors:
            yield bound.id_for_label or bound.auto_id, str(bound.label), line


@register.filter
def before_accepted(line: str) -> str:
    return line.partition(" Accepted: ")[0]


@register.filter
def accepted(line: str) -> str:
    return line.partition(" Accepted: ")[2]
