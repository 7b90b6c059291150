"""What a browser would send if somebody pressed a button on this page and changed nothing."""

from __future__ import annotations

from html.parser import HTMLParser
from typing import Any

from django.test import Client


class _Fields(HTMLParser):
    """Collects the fields of every form with method="post" that holds `about`."""

    def __init__(self) -> None:
        super().__init__()
        self.forms: list[dict[str, list[str]]] = []
        self.inside = False
        self.select = self.textarea = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        told = {name: value or "" for name, value in attrs}
        if tag == "form":
            self.inside = told.get("method") == "post"
            if self.inside:
                self.forms.append({})
        if not self.inside:
            return
        if tag == "input":
            self._input(told)
        elif tag == "select":
            self.select = told.get("name", "")
        elif tag == "option" and self.select:
            if self.select not in self.forms[-1] or "selected" in told:
                self.forms[-1][self.select] = [told.get("value", "")]
        elif tag == "textarea":
            self.textarea = told.get("name", "")
            self.forms[-1][self.textarea] = [""]

    def _input(self, told: dict[str, str]) -> None:
        ticked = told.get("type") in ("checkbox", "radio")
        if told.get("name") and (not ticked or "checked" in told):
            value = told.get("value", "on" if ticked else "")
            self.forms[-1].setdefault(told["name"], []).append(value)

    def handle_data(self, data: str) -> None:
        if self.textarea and self.inside:
            self.forms[-1][self.textarea] = [data.lstrip("\n")]

    def handle_endtag(self, tag: str) -> None:
        if tag == "form":
            self.inside = False
        elif tag == "select":
            self.select = ""
        elif tag == "textarea":
            self.textarea = ""


def fields(html: str, holding: str) -> dict[str, list[str]]:
    """The fields of the form that has one called `holding`."""
    found = _Fields()
    found.feed(html)
    return next(form for form in found.forms if holding in form)


def as_shown(client: Client, address: str, holding: str) -> dict[str, Any]:
    """Open a page and read its form."""
    response = client.get(address)
    assert response.status_code == 200
    return fields(response.content.decode(), holding)
