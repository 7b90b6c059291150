"""Send a quote: options with works, lines and promised readings. What is found later is a new question."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from decimal import Decimal
from typing import Any

from django.db import transaction

from spoolwright.judgement.carried import Carried
from spoolwright.judgement.prediction import Prediction
from spoolwright.judgement.price import Line
from spoolwright.judgement.quote_options import Option
from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written, open_diary
from spoolwright.shop.acts.put import put, put_all
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.questions.predictions import as_data
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.quote import (
    Quote,
    QuoteLine,
    QuoteOption,
    QuotePrediction,
    QuotePromise,
    QuoteWork,
)
from spoolwright.shop.records.shop_settings import standing
from spoolwright.shop.records.visit import Visit


class NothingWasOffered(Refused):
    def __init__(self) -> None:
        super().__init__("A quote needs at least one option, and each option at least one line.", "options")


class OptionWasOfferedTwice(Refused):
    def __init__(self, key: str) -> None:
        super().__init__(f"The option {key!r} stands twice in this quote.", "options")


class PromiseHadNoBound(Refused):
    def __init__(self, kind: str) -> None:
        super().__init__(
            f"The promise of {kind} says neither a lowest nor a highest value: nothing could prove it.",
            "promises",
        )


@dataclass(frozen=True)
class OfferedWork:
    work: str
    title: str
    minutes: int | None = None


@dataclass(frozen=True)
class OfferedPromise:
    """A reading that is promised, SI: at least `low`, at most `high`, under these conditions."""

    kind: str
    dimension: str
    low: float | None = None
    high: float | None = None
    middle: float | None = None
    reading_kind: str = ""
    words: str = ""
    conditions: Mapping[str, Any] = field(default_factory=dict)
    rests_on: str = ""


@dataclass(frozen=True)
class OfferedOption:
    """One way to do it; its total is the sum of its lines. `sureness` goes line by line.

    `prediction` is what was expected when it was offered, `carried` what would carry the pull then; both are
    kept for the page and the paper.
    """

    key: str
    title: str
    lines: Sequence[Line]
    works: Sequence[OfferedWork] = ()
    promises: Sequence[OfferedPromise] = ()
    minutes: int | None = None
    sureness: Sequence[str] = ()
    left_undone: Sequence[str] = ()
    warnings: Sequence[str] = ()
    rests_on: Sequence[str] = ()
    compared_with_trade: str = ""
    prediction: Prediction | None = None
    carried: Carried | None = None


def as_offered(option: Option, promises: Sequence[OfferedPromise]) -> OfferedOption:
    """An option of judgement as it is offered: word for word, with the promises that somebody chose."""
    return OfferedOption(
        key=option.key,
        title=option.title,
        lines=option.lines,
        works=[OfferedWork(work.id, work.title) for work in option.works],
        promises=promises,
        minutes=option.minutes,
        sureness=option.sureness,
        left_undone=option.left_undone,
        warnings=option.warnings,
        rests_on=option.rests_on,
        compared_with_trade=option.compared_with_trade,
        prediction=option.prediction,
        carried=option.carried,
    )


@transaction.atomic
def send_quote(
    *,
    hand: Person,
    visit: Visit,
    options: Sequence[OfferedOption],
    deposit_asked_minor: int = 0,
    valid_until: date | None = None,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """Where something was agreed already this is an extra: its lines hold only what is new.

    The reel goes to the asked shelf unless `beside` says another place.
    """
    _refuse_unusable(options)
    diary = open_diary(hand, visit)
    before = agreed(visit.pk)
    titles = [text for option in options for text in (option.title, *(w.title for w in option.works))]
    written = diary.write("quote", replace(beside, moved_to=beside.moved_to or "asked shelf"), titles)
    shop = standing()
    quote = put(
        Quote(
            entry=written.entry,
            currency=shop.currency,
            tax_rate=shop.tax_rate,
            prices_include_tax=shop.prices_include_tax,
            legal_ceiling=shop.legal_ceiling,
            deposit_asked_minor=deposit_asked_minor,
            valid_until=valid_until,
            extends=before.answer,
        )
    )
    for position, option in enumerate(options):
        _put_option(quote, position, option, before.total_minor)
    return written


def _refuse_unusable(options: Sequence[OfferedOption]) -> None:
    if not options or not all(option.lines for option in options):
        raise NothingWasOffered
    keys = [option.key for option in options]
    for key in keys:
        if keys.count(key) > 1:
            raise OptionWasOfferedTwice(key)
    for promise in (p for option in options for p in option.promises):
        if promise.low is None and promise.high is None:
            raise PromiseHadNoBound(promise.kind)


def _put_option(quote: Quote, position: int, offered: OfferedOption, agreed_before: int) -> None:
    total = sum(line.gross_minor for line in offered.lines)
    minutes = sum(line.minutes for line in offered.lines) if offered.minutes is None else offered.minutes
    option = put(
        QuoteOption(
            quote=quote,
            position=position,
            key=offered.key,
            title=offered.title,
            minutes=minutes,
            total_minor=total,
            whole_minor=agreed_before + total,
            left_undone=list(offered.left_undone),
            warnings=list(offered.warnings),
            rests_on=list(offered.rests_on),
            compared_with_trade=offered.compared_with_trade,
        )
    )
    put_all(
        QuoteWork(option=option, position=i, work=w.work, title=w.title, minutes=w.minutes)
        for i, w in enumerate(offered.works)
    )
    put_all(
        QuoteLine(option=option, sureness=_sureness(offered, i), **line_columns(i, line))
        for i, line in enumerate(offered.lines)
    )
    put_all(_promise(option, i, promise) for i, promise in enumerate(offered.promises))
    if offered.prediction is not None:
        put(QuotePrediction(option=option, **as_data(offered.prediction, offered.carried)))


def _sureness(offered: OfferedOption, position: int) -> str:
    return offered.sureness[position] if position < len(offered.sureness) else "sure"


def line_columns(position: int, line: Line) -> dict[str, Any]:
    """A priced line of judgement as the columns of a line in ink."""
    quantity = Decimal(line.quantity.numerator) / line.quantity.denominator
    return {
        "position": position,
        "kind": line.kind,
        "what": line.title,
        "quantity": round(quantity, 3),
        "net_minor": line.net_minor,
        "tax_minor": line.tax_minor,
        "gross_minor": line.gross_minor,
        "minutes": line.minutes,
        "cost_minor": line.cost_minor,
    }


def _promise(option: QuoteOption, position: int, promised: OfferedPromise) -> QuotePromise:
    return QuotePromise(
        option=option,
        position=position,
        kind=promised.kind,
        reading_kind=promised.reading_kind,
        words=promised.words,
        low_si=promised.low,
        middle_si=promised.middle,
        high_si=promised.high,
        dimension=promised.dimension,
        conditions=dict(promised.conditions),
        rests_on=promised.rests_on,
    )
