"""The front door, the finder, the shop about itself."""

from __future__ import annotations

from typing import Any

from tests.pages.routes.row import Row


def own_name(owner: Any) -> dict[str, Any]:
    return {"username": owner.username}


def no_such_link(_: Any) -> dict[str, Any]:
    return {"token": "x" * 43}


def metric(_: Any) -> dict[str, Any]:
    return {"units": "metric"}


def dark(_: Any) -> dict[str, Any]:
    return {"look": "dark"}


ROWS = [
    Row("here", "GET", 204, 204, 204),
    Row("here", "POST", 405, 405, 405),
    Row("sign_in:page", "GET", 302, 302, 200),
    Row("sign_in:page", "POST", 302, 302, 422),
    Row("sign_in:once", "GET", 200, 200, 200, address=no_such_link),
    Row("sign_in:once", "POST", 422, 422, 422, address=no_such_link),
    Row("sign_in:out", "GET", 405, 405),
    Row("sign_in:out", "POST", 302, 302),
    Row("sign_in:units", "GET", 405, 405),
    Row("sign_in:units", "POST", 302, 302, sent=metric),
    Row("sign_in:look", "GET", 405, 405),
    Row("sign_in:look", "POST", 302, 302, sent=dark),
    Row("finder:find", "GET", 200, 200),
    Row("finder:find", "POST", 405, 405),
    Row("settings_page:shop", "GET", 200, 200),
    Row("settings_page:shop", "POST", 405, 405),
    Row("settings_page:change", "GET", 200, 403),
    Row("settings_page:change", "POST", 422, 403),
    Row("settings_page:people", "GET", 200, 200),
    Row("settings_page:people", "POST", 422, 422),
    Row("settings_page:person", "GET", 200, 403, address=own_name),
    Row("settings_page:person", "POST", 422, 403, address=own_name),
    Row("settings_page:link", "GET", 405, 405, address=own_name),
    Row("settings_page:link", "POST", 200, 422, address=own_name),
]
