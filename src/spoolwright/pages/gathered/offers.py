"""The options of a quote in ink as a paper carries them."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction
from typing import Any

from spoolwright.judgement import price
from spoolwright.judgement.carried import in_words
from spoolwright.judgement.works import all_works
from spoolwright.pages.gathered.amounts import Amounts, percent
from spoolwright.pages.words import conditions, promised, when
from spoolwright.papers.figures import Figure, Span
from spoolwright.papers.quote import Offer, PriceLine, Promise
from spoolwright.sheets.drag_setting import STAR, DragSetting
from spoolwright.shop.questions.predictions import prediction_of
from spoolwright.shop.questions.shop_settings import rates


def offer(option: Any, quote: Any, amounts: Amounts, system: str, setting: DragSetting = STAR) -> Offer:
    """One option: what it does, what it gives, what it costs, what it leaves undone."""
    lines = list(option.lines.all())
    return Offer(
        title=option.title,
        plain=_plain(option),
        total=amounts(option.total_minor),
        time=when.minutes(option.minutes) if option.minutes else "",
        promises=tuple(_promise(promise, system, setting) for promise in option.promises.all()),
        lines=tuple(_line(line, amounts) for line in lines),
        tax=tuple(_beneath(option, lines, quote, amounts)),
        left_undone=tuple(option.left_undone),
        warnings=tuple(option.warnings),
        rests_on=tuple(option.rests_on),
        compared=option.compared_with_trade,
        carried=_carried(option, system),
    )


def ceiling_minor(option: Any, quote: Any) -> int | None:
    """The most that a bill may come to once this option is agreed, where a law caps it."""
    if quote.legal_ceiling is None:
        return None
    return price.ceiling(option.whole_minor, replace(rates(), legal_ceiling=Fraction(quote.legal_ceiling)))


def own_cap_minor(quote: Any) -> int | None:
    """The cap that the customer answered before this extra was asked; it goes before the law's ceiling."""
    return quote.extends.cap_minor if quote.extends else None


def promised_figure(promise: Any, system: str) -> Figure:
    """What is promised, with its middle where both ends are; "at most 1.15" where one is."""
    low, middle, high = promise.low_si, promise.middle_si, promise.high_si
    kind = promise.reading_kind or promise.kind
    if None in (low, middle, high) or promised.unit_of(kind):
        return promised.in_words(promise, system)
    return Span(middle, low, high, promise.dimension)


def _plain(option: Any) -> str:
    known = all_works()
    says = [known[work.work].says if work.work in known else f"{work.title}." for work in option.works.all()]
    return " ".join(says)


def _carried(option: Any, system: str) -> str:
    kept = prediction_of(option)
    return in_words(kept.carried, system) if kept and kept.carried else ""


def _promise(promise: Any, system: str, setting: DragSetting) -> Promise:
    where = conditions.in_words(promise.conditions, system, setting)
    return Promise(promised.title(promise), promised_figure(promise, system), where)


def _line(line: Any, amounts: Amounts) -> PriceLine:
    count = f"{line.quantity.normalize():f} × " if line.quantity != 1 else ""
    remark = "" if line.sureness == "sure" else line.sureness
    return PriceLine(f"{count}{line.what}", amounts(line.gross_minor), remark)


def _beneath(option: Any, lines: list[Any], quote: Any, amounts: Amounts) -> Iterable[PriceLine]:
    tax = sum(line.tax_minor for line in lines)
    yield PriceLine(f"of which tax, {percent(quote.tax_rate)}", amounts(tax))
    if option.whole_minor != option.total_minor:
        yield PriceLine("together with what you said yes to before", amounts(option.whole_minor))
    cap, ceiling = own_cap_minor(quote), ceiling_minor(option, quote)
    if cap is not None:
        yield PriceLine("your own cap, which stands", amounts(cap))
    elif ceiling is not None:
        yield PriceLine("a bill may not pass, without a new answer from you", amounts(ceiling))
