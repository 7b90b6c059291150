"""The diary, everything that is written into it, files out of the record."""

from __future__ import annotations

from typing import Any

from tests.pages.routes.row import Row


def tag(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"tag": walk.arrived(owner).tag}


def a_finding(owner: Any) -> dict[str, Any]:
    return {**tag(owner), "what": "finding"}


def mass(owner: Any) -> dict[str, Any]:
    return {**tag(owner), "kind": "mass"}


def nothing_typed(_: Any) -> dict[str, Any]:
    return {"do": "write"}


def arrival(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    visit = walk.arrived(owner)
    return {"tag": visit.tag, "entry": visit.entries.get().pk}


def a_file(owner: Any) -> dict[str, Any]:
    from spoolwright.shop.acts.attach_file import attach_file

    return {"number": attach_file(hand=owner, data=b"time;pull\n", original_name="pull.csv").pk}


def a_photo(owner: Any) -> dict[str, Any]:
    from spoolwright.shop.acts.attach_file import attach_file
    from tests.pages.diary.at_the_desk import photo

    return {"number": attach_file(hand=owner, data=photo(), original_name="slate.jpg").pk}


ROWS = [
    Row("diary:diary", "GET", 200, 200, address=tag),
    Row("diary:diary", "POST", 405, 405, address=tag),
    Row("diary:write", "GET", 200, 200, address=a_finding),
    Row("diary:write", "POST", 422, 422, address=a_finding, sent=nothing_typed),
    Row("diary:typed", "GET", 200, 200, address=mass),
    Row("diary:typed", "POST", 422, 422, address=mass, sent=nothing_typed),
    Row("diary:trace", "GET", 404, 404, address=arrival),
    Row("diary:trace", "POST", 405, 405, address=arrival),
    Row("diary:strike", "GET", 200, 200, address=arrival),
    Row("diary:strike", "POST", 422, 422, address=arrival),
    Row("diary:gauge", "GET", 200, 200),
    Row("diary:gauge", "POST", 422, 422),
    Row("diary:file", "GET", 200, 200, address=a_file),
    Row("diary:file", "POST", 405, 405, address=a_file),
    Row("diary:small", "GET", 200, 200, address=a_photo),
    Row("diary:small", "POST", 405, 405, address=a_photo),
]
