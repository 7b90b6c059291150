"""How a reel casts: everybody who works here looks at it."""

from tests.pages.routes.row import picture_rows

ROWS = picture_rows("casts")
