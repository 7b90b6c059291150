"""The shop's own instruments."""

from __future__ import annotations

from typing import Any

from tests.pages.routes.row import Row


def caliper(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"number": walk.caliper(owner).pk}


def a_study(owner: Any) -> dict[str, Any]:
    from tests.shop import walk

    return {"number": walk.measured_with(owner).studies.get().pk}


def a_kind(_: Any) -> dict[str, Any]:
    return {"kind": "micrometer"}


def write(_: Any) -> dict[str, Any]:
    return {"do": "write"}


ROWS = [
    Row("instruments:every", "GET", 200, 200),
    Row("instruments:every", "POST", 405, 405),
    Row("instruments:add", "GET", 200, 200, address=a_kind),
    Row("instruments:add", "POST", 422, 422, address=a_kind),
    Row("instruments:one", "GET", 200, 200, address=caliper),
    Row("instruments:one", "POST", 405, 405, address=caliper),
    Row("instruments:change", "GET", 200, 200, address=caliper),
    Row("instruments:change", "POST", 422, 422, address=caliper),
    Row("instruments:check", "GET", 200, 200, address=caliper),
    Row("instruments:check", "POST", 422, 422, address=caliper),
    Row("instruments:put_away", "GET", 200, 200, address=caliper),
    Row("instruments:put_away", "POST", 422, 422, address=caliper),
    Row("instruments:add_study", "GET", 200, 200, address=caliper),
    Row("instruments:add_study", "POST", 422, 422, address=caliper, sent=write),
    Row("instruments:study", "GET", 200, 200, address=a_study),
    Row("instruments:study", "POST", 405, 405, address=a_study),
]
