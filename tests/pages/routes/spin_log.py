"""The spin log: everybody who works here reads it and may look at a file."""

from __future__ import annotations

from tests.pages.routes.row import Row

ROWS = [
    Row("spin_log:log", "GET", 200, 200),
    # No file came.
    Row("spin_log:log", "POST", 422, 422),
]
