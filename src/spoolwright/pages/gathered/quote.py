"""A quote in ink as the customer sees it: the same for the page and for the paper."""

from __future__ import annotations

from typing import Any

from spoolwright.pages.gathered import findings, offers, parties, pictures
from spoolwright.pages.gathered.amounts import Amounts, percent
from spoolwright.pages.words import when
from spoolwright.papers.quote import Quote
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.questions.diary import Diary

CAUTIONS = (
    "Before you try a drag, take the hook off and keep your eyes out of the line's way: line under load "
    "whips back.",
)


def gathered(diary: Diary, entry: Any, shop: Any, system: str) -> Quote:
    """`entry` is the entry of the quote; what was written after it is not on it."""
    quote = next(block.part for block in diary.blocks if block.entry.pk == entry.pk)
    before = [block for block in diary.blocks if block.entry.seq < entry.seq and not block.is_struck]
    amounts = Amounts(shop, quote.currency)
    found = [block for block in before if block.entry.seq > _asked_before(diary, entry)]
    setting = setting_of(pictures.sheet_of(diary.visit))
    return Quote(
        shop=parties.house(shop),
        customer=parties.addressee(diary.customer),
        reel=parties.reel_mark(diary.visit),
        number=number(diary, entry),
        date=when.dated(entry.written_at),
        valid_until=when.dated(quote.valid_until) if quote.valid_until else "we say otherwise",
        offers=tuple(offers.offer(option, quote, amounts, system, setting) for option in quote.options.all()),
        asked=_complaint(before),
        found=findings.found(found, system, setting),
        cap=_cap(quote, amounts),
        ceiling_percent=percent(quote.legal_ceiling) if quote.legal_ceiling is not None else "",
        cautions=CAUTIONS,
        trace=pictures.mark_before(before),
        drawing=pictures.drawing(diary.visit, before, system),
        system=system,
    )


def number(diary: Diary, entry: Any) -> str:
    """The tag, and which question of this visit it is: "417-1"."""
    quotes = [block.entry.pk for block in diary.blocks if block.kind == "quote"]
    return f"{diary.visit.tag}-{quotes.index(entry.pk) + 1}"


def _asked_before(diary: Diary, entry: Any) -> int:
    """An extra tells only what was found since the last question; a first quote tells everything."""
    quote = next(block.part for block in diary.blocks if block.entry.pk == entry.pk)
    if quote.extends is None:
        return 0
    earlier = [b.entry.seq for b in diary.blocks if b.kind == "quote" and b.entry.seq < entry.seq]
    return max(earlier, default=0)


def _complaint(before: list[Any]) -> str:
    arrivals = [block.part.complaint for block in before if block.kind == "arrival"]
    return next(filter(None, reversed(arrivals)), "")


def _cap(quote: Any, amounts: Amounts) -> str:
    """The cap that holds already when an extra is asked."""
    cap = offers.own_cap_minor(quote)
    return amounts(cap) if cap is not None else ""
