"""{% load sliders %}: a form of sliders that htmx asks again, and what its answer puts right in it.

{% sliders form "answer" "What is drawn" %}    the form; its answer goes into the element with this id
{% sliders_again form %}                        inside that element: numbers, messages, the other control
{% other_pictures %}                            the ways to the other pictures of this subject
{% pictures_of "sheet" slug %}                  the ways to all of them, from a page that is none
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from django import template

from spoolwright.pages import doors
from spoolwright.pages.gathered.picture_links import PictureLink, picture_links
from spoolwright.pages.gathered.sliders import SliderForm
from spoolwright.pages.gathered.subject import Subject

register = template.Library()

Context = dict[str, Any]


@register.inclusion_tag("_sliders.html", takes_context=True)
def sliders(context: Context, form: SliderForm, answer: str, says: str) -> Context:
    return {"form": form, "answer": answer, "says": says, "path": context["request"].path}


@register.inclusion_tag("_sliders_again.html", takes_context=True)
def sliders_again(context: Context, form: SliderForm) -> Context:
    """Nothing on a whole page. The links to the other pictures carry the fill and line of this moment."""
    wanted = doors.fragment_wanted(context["request"])
    return {"form": form, "wanted": wanted, "links": _links(context), "again": True}


@register.inclusion_tag("_picture_links.html", takes_context=True)
def other_pictures(context: Context) -> Context:
    """The row of links between the pictures of one subject; `here` names the picture that is open."""
    return {"links": _links(context), "again": False}


@register.inclusion_tag("_picture_links.html")
def pictures_of(door: str, key: str | int) -> Context:
    """The same row on a page that is not a picture: `door` is sheet, reel or visit."""
    return {"links": picture_links(door, key), "again": False}


def _links(context: Context) -> list[PictureLink]:
    subject: Subject = context["subject"]
    form: SliderForm | None = context.get("form")
    asked = {name: form.value(name) for name in ("fill", "line") if form and name in form.fields}
    return picture_links(subject.door, subject.key, context["here"], replace(subject, **asked).kept)


@register.filter
def number(value: float) -> str:
    """A number as an attribute of HTML wants it, whatever the reader's language: "0.5", "20"."""
    return f"{value:g}"
