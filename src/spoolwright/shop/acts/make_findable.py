"""Let search find a thing: one row, folded, written in the same transaction as the thing itself."""

from __future__ import annotations

from collections.abc import Iterable

from spoolwright.shop.records.findable import Findable, folded
from spoolwright.shop.records.visit import Visit


def make_findable(
    *, kind: str, ref: int, title: str, words: Iterable[str] = (), visit: Visit | None = None
) -> None:
    said = "\n".join(text for text in words if text)
    Findable.objects.update_or_create(
        kind=kind,
        ref=ref,
        defaults={
            "visit": visit,
            "title": title,
            "words": said,
            "folded_title": folded(title),
            "folded_words": folded(said),
        },
    )
