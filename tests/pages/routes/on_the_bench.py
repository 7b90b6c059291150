"""The first page of the house."""

from tests.pages.routes.row import Row

ROWS = [
    Row("on_the_bench:bench", "GET", 200, 200),
    Row("on_the_bench:bench", "POST", 405, 405),
]
