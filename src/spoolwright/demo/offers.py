"""What judgement offers, as the quote writes it; and offers whose sums are told by a story."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction

from spoolwright.judgement.option_works import Way
from spoolwright.judgement.prediction import PREDICTS
from spoolwright.judgement.price import Charge, Line, price
from spoolwright.judgement.promises import PromisedReading
from spoolwright.judgement.quote_case import Around, open_case
from spoolwright.judgement.quote_options import Changes, Option, offer
from spoolwright.judgement.shop_rates import ShopRates
from spoolwright.judgement.works import chosen
from spoolwright.shop.acts.send_quote import OfferedOption, OfferedPromise, OfferedWork


def by_hand(
    rates: ShopRates,
    around: Around,
    works: Sequence[str],
    more: Sequence[Charge] = (),
    minutes: Mapping[str, int] | None = None,
    key: str = "put right",
) -> Option:
    """Works chosen by hand for a reel that no sheet describes; `around` says its kind."""
    case = open_case(None, {}, [], rates, around=around)
    way = Way(key, chosen(list(works), around.kind))
    return offer(case, way, Changes(minutes=minutes or {}, more=more))


def offered(option: Option, promises: Sequence[OfferedPromise] = ()) -> OfferedOption:
    """An option of judgement, word for word; `promises` are those that somebody makes from experience."""
    works = [OfferedWork(work.id, work.title) for work in option.works]
    return OfferedOption(
        key=option.key,
        title=option.title,
        lines=option.lines,
        works=works,
        promises=[*(_promise(promised) for promised in option.promises), *promises],
        minutes=option.minutes,
        sureness=option.sureness,
        left_undone=option.left_undone,
        warnings=option.warnings,
        rests_on=option.rests_on,
        compared_with_trade=option.compared_with_trade,
        prediction=option.prediction,
    )


def _promise(promised: PromisedReading) -> OfferedPromise:
    predicted = promised.predicted
    return OfferedPromise(
        kind=PREDICTS[promised.reading_kind],
        dimension=predicted.dimension,
        low=promised.low,
        high=promised.high,
        middle=predicted.middle,
        reading_kind=promised.reading_kind,
        words=predicted.quantity,
        conditions=dict(predicted.conditions),
        rests_on="; ".join(predicted.rests_on),
    )


def told_option(
    rates: ShopRates,
    key: str,
    title: str,
    charges: Sequence[Charge],
    works: Sequence[OfferedWork] = (),
    promises: Sequence[OfferedPromise] = (),
    warnings: Sequence[str] = (),
) -> OfferedOption:
    """An option whose charges somebody wrote by hand; its minutes are those of its works."""
    minutes = sum(work.minutes or 0 for work in works)
    lines = price(charges, rates).lines
    return OfferedOption(key, title, lines, works, promises, minutes=minutes, warnings=warnings)


def charges_of(lines: Iterable[Line]) -> list[Charge]:
    """The lines of an option as the charges of its bill."""
    return [
        Charge(
            line.kind,
            line.title,
            int(Fraction(line.gross_minor) / line.quantity),
            quantity=line.quantity,
            minutes=line.minutes,
            cost_minor=int(Fraction(line.cost_minor) / line.quantity),
        )
        for line in lines
    ]
