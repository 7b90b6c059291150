"""Search over everything: every word of the question must begin a word of what is found; best first."""

from __future__ import annotations

from dataclasses import dataclass

from django.db import connection

from spoolwright.shop.records.findable import folded

_SQLITE = """
    SELECT f.kind, f.ref, f.visit_id, f.title, f.words
    FROM shop_findable_words w JOIN shop_findable f ON f.id = w.rowid
    WHERE shop_findable_words MATCH %s
    ORDER BY bm25(shop_findable_words, 8.0, 1.0), f.id DESC LIMIT %s
"""
_VECTOR = (
    "(setweight(to_tsvector('simple', folded_title), 'A') || "
    "setweight(to_tsvector('simple', folded_words), 'B'))"
)
# The hits are drawn out first: left alone, the planner expects far too many and walks the wrong index.
_POSTGRESQL = f"""
    WITH hits AS MATERIALIZED (
        SELECT id, kind, ref, visit_id, title, words, {_VECTOR} AS vector
        FROM shop_findable WHERE {_VECTOR} @@ to_tsquery('simple', %s)
    )
    SELECT kind, ref, visit_id, title, words FROM hits
    ORDER BY ts_rank(vector, to_tsquery('simple', %s)) DESC, id DESC LIMIT %s
"""


@dataclass(frozen=True)
class Found:
    """One thing that was found; `ref` is its id among its kind (customer, reel, visit, entry, sheet)."""

    kind: str
    ref: int
    visit_id: int | None
    title: str
    words: str


def find(text: str, limit: int = 40) -> tuple[Found, ...]:
    """Nothing typed, nothing found; signs and accents do not matter."""
    words = folded(text).split()[:12]
    if not words:
        return ()
    with connection.cursor() as cursor:
        if connection.vendor == "sqlite":
            cursor.execute(_SQLITE, [" ".join(f'"{word}"*' for word in words), limit])
        else:
            asked = " & ".join(f"{word}:*" for word in words)
            cursor.execute(_POSTGRESQL, [asked, asked, limit])
        return tuple(Found(*row) for row in cursor.fetchall())
