"""The blocks of diaries, each with its typed part, its strike and its files, in few queries."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from django.db.models import Prefetch, QuerySet

from spoolwright.shop.records.attachment import EntryAttachment
from spoolwright.shop.records.entry import Entry, Strike
from spoolwright.shop.records.proof import ProofRow, ProofSign

_PARTS = (
    "arrival",
    "reading__attachment",
    "reading__instrument",
    "finding",
    "quote__extends__entry",
    "answer__quote__entry",
    "answer__option",
    "work",
    "proof",
    "invoice__customer",
    "dispatch",
    "payment",
)
_ROWS = (
    "arrival__contents",
    "reading__values",
    "quote__options__works",
    "quote__options__lines",
    "quote__options__promises",
    "work__done",
    "work__parts",
    "work__lubricants",
    "invoice__lines",
    Prefetch("attached", EntryAttachment.objects.select_related("attachment")),
    "proof__checks",
    Prefetch("proof__signs", ProofSign.objects.select_related("entry__author", "entry__strike")),
    Prefetch(
        "proof__rows",
        ProofRow.objects.select_related("promise__option", "measured__reading__entry", "before"),
    ),
)


@dataclass(frozen=True)
class Block:
    """One entry as it is read: `part` is its typed row (None for a plain word), `strike` the line through."""

    entry: Entry
    part: Any
    strike: Strike | None
    attached: tuple[EntryAttachment, ...]

    @property
    def kind(self) -> str:
        return self.entry.kind

    @property
    def is_struck(self) -> bool:
        return self.strike is not None


def blocks_of(visit_ids: Iterable[int]) -> dict[int, tuple[Block, ...]]:
    """The blocks of each visit, in the order in which they were written, struck ones among them."""
    wanted = list(visit_ids)
    found: dict[int, list[Block]] = {visit_id: [] for visit_id in wanted}
    for entry in _read().filter(visit__in=wanted).order_by("visit_id", "seq"):
        found[entry.visit_id].append(_block(entry))
    return {visit_id: tuple(blocks) for visit_id, blocks in found.items()}


def block(entry_id: int) -> Block | None:
    """One entry with everything in it, or None."""
    entry = _read().filter(pk=entry_id).first()
    return _block(entry) if entry else None


def _read() -> QuerySet[Entry]:
    strike = ("strike__author", "strike__replaced_by")
    return Entry.objects.select_related("author", "visit__reel__customer", *strike, *_PARTS).prefetch_related(
        *_ROWS
    )


def _block(entry: Entry) -> Block:
    part = getattr(entry, "payment" if entry.kind == "word" else entry.kind, None)
    return Block(entry, part, getattr(entry, "strike", None), tuple(entry.attached.all()))
