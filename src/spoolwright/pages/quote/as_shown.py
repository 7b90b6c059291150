"""The quote as the customer sees it on a page: what stands on the paper, with charts and the drawing."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from django.utils.safestring import SafeString, mark_safe

from spoolwright.pages import doors
from spoolwright.pages.gathered import drag_charts, pictures
from spoolwright.pages.gathered import quote as quote_of
from spoolwright.pages.gathered.offers import own_cap_minor
from spoolwright.papers import section_drawing
from spoolwright.papers.charts import Chart
from spoolwright.papers.figures import shown as figure_shown
from spoolwright.papers.quote import Offer, Quote, cap_sentence, law_sentence, side_by_side
from spoolwright.sheets.drag_setting import DragSetting, setting_of
from spoolwright.shop.questions.diary import Diary, diary

OF_THE_DRAG = ("pull_full", "start_up_ratio", "judder")


@dataclass(frozen=True)
class OfferShown:
    """One option with its promises as text, and the chart of its drag where it has one of its own."""

    offer: Offer
    promises: tuple[tuple[str, str, str], ...]
    chart: Chart | None
    name: str
    state: str


@dataclass(frozen=True)
class Shown:
    """Everything on the customer's page."""

    quote: Quote
    entry: Any
    strike: Any
    words: str
    is_extra: bool
    is_only_told: bool
    deposit_minor: int
    offers: tuple[OfferShown, ...]
    found: tuple[tuple[str, str, str], ...]
    beside: list[list[str]]
    emptying: Chart | None
    wide: SafeString
    narrow: SafeString
    cap: str
    law: str
    diary: str
    answer: str
    paper: str
    ladder: str
    other_units: str


def as_shown(entry: Any, shop: Any, system: str) -> Shown:
    held = doors.found(diary(entry.visit_id))
    quote = quote_of.gathered(held, entry, shop, system)
    block = next(b for b in held.blocks if b.entry.pk == entry.pk)
    drawn = drag_charts.worth_drawing(_about_the_drag(block.part))
    wide, narrow = _drawings(held, entry, system)
    return Shown(
        quote=quote,
        entry=entry,
        strike=block.strike,
        words=entry.words,
        is_extra=block.part.extends_id is not None,
        is_only_told=_is_only_told(block.part),
        deposit_minor=block.part.deposit_asked_minor,
        offers=tuple(_offers(quote, block.part, drawn, system, setting_of(pictures.sheet_of(held.visit)))),
        found=tuple((it.what, figure_shown(it.value, system), it.conditions) for it in quote.found),
        beside=side_by_side(quote),
        emptying=_emptying(held, drawn, system),
        wide=wide,
        narrow=narrow,
        cap=cap_sentence(quote),
        law=law_sentence(quote),
        diary=doors.way_to("diary:diary", held.visit.tag),
        answer=doors.way_to("diary:write", held.visit.tag, "answer"),
        paper=doors.way_to("paper:quote", entry.pk),
        ladder=_ladder(held, entry),
        other_units="imperial" if system == "metric" else "metric",
    )


def _ladder(held: Diary, entry: Any) -> str:
    """Where the ladder of each option is drawn: only the last quote that stands is drawn there."""
    quotes = held.of_kind("quote")
    stands = bool(quotes) and quotes[-1].entry.pk == entry.pk and held.visit.reel.sheet_version_id is not None
    return doors.way_to("carries:visit", held.visit.tag) if stands else ""


def _is_only_told(part: Any) -> bool:
    """Whether an extra stays within what the customer allowed beforehand: then the work goes on meanwhile."""
    cap = own_cap_minor(part)
    return cap is not None and all(option.whole_minor <= cap for option in part.options.all())


def _about_the_drag(part: Any) -> list[Any]:
    """The options whose drag is worth a chart: for an extra only one that promises something of it."""
    options = list(part.options.all())
    if part.extends_id is None:
        return options
    return [option for option in options if any(p.reading_kind in OF_THE_DRAG for p in option.promises.all())]


def _offers(
    quote: Quote, part: Any, drawn: list[tuple[Any, Any]], system: str, setting: DragSetting
) -> list[OfferShown]:
    charts = {option.pk: drag_charts.by_turns(kept, system, setting=setting) for option, kept in drawn}
    found = []
    for option, offer in zip(part.options.all(), quote.offers, strict=True):
        promises = tuple((it.what, figure_shown(it.value, system), it.conditions) for it in offer.promises)
        found.append(
            OfferShown(
                offer,
                promises,
                charts.get(option.pk),
                f"turns-{option.position}",
                f"option-{option.position}",
            )
        )
    return found


def _emptying(held: Diary, drawn: list[tuple[Any, Any]], system: str) -> Chart | None:
    """One chart of the emptying spool is enough: it has the same shape for every option."""
    sheet = pictures.sheet_of(held.visit)
    return drag_charts.by_fill(drawn[-1][1], sheet, system) if sheet and drawn else None


def _drawings(held: Diary, entry: Any, system: str) -> tuple[SafeString, SafeString]:
    """The section twice, for a desk and for a phone; the style sheet shows one of them."""
    sheet = pictures.sheet_of(held.visit)
    if sheet is None:
        return mark_safe(""), mark_safe("")
    rings = pictures.ringed(sheet, [block for block in held.blocks if block.entry.seq < entry.seq])
    # The drawing is made by papers, which escapes every word that somebody typed.
    wide, narrow = (
        mark_safe(section_drawing.draw(sheet, arrangement=way, findings=rings, system=system, link=None))
        for way in ("wide", "narrow")
    )
    return wide, narrow
