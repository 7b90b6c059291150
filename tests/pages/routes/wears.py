"""What wears, at its three addresses."""

from __future__ import annotations

from tests.pages.routes.row import picture_rows

ROWS = picture_rows("wears")
