"""What has the customer agreed to, and up to what sum? Read from the unstruck answers of a visit."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from spoolwright.judgement.cap import CapRuling, may_be_issued
from spoolwright.shop.records.answer import Answer
from spoolwright.shop.records.arrival import Arrival
from spoolwright.shop.records.invoice import Invoice
from spoolwright.shop.records.shop_settings import ShopSettings, standing
from spoolwright.shop.records.visit import Visit


@dataclass(frozen=True)
class Agreed:
    """`answers` are the yeses that stand, oldest first; `answer` is the last of them.

    `cap_minor` is the most for the whole bill by the customer's own word; None: only the law caps it.
    """

    answers: tuple[Answer, ...] = ()
    total_minor: int = 0
    cap_minor: int | None = None
    minutes: int = 0
    works: tuple[str, ...] = ()
    said_no: bool = False
    told_up_to_minor: int | None = None
    billed_minor: int = 0

    @property
    def answer(self) -> Answer | None:
        return self.answers[-1] if self.answers else None

    @property
    def is_anything(self) -> bool:
        """Whether the customer has said yes to something, on a quote or beforehand."""
        return bool(self.answers) or self.told_up_to_minor is not None


def agreed(visit_id: int) -> Agreed:
    """What stands agreed in this visit."""
    answers = (
        Answer.objects.filter(entry__visit=visit_id, entry__strike=None, quote__entry__strike=None)
        .select_related("entry", "quote", "option")
        .prefetch_related("option__works")
        .order_by("entry__seq")
    )
    told = Arrival.objects.filter(entry__visit=visit_id, entry__strike=None).values_list(
        "up_to_minor", flat=True
    )
    billed = Invoice.objects.filter(entry__visit=visit_id, entry__strike=None).values_list(
        "total_minor", flat=True
    )
    return weigh(list(answers), told_up_to=told.first(), billed=sum(billed))


def weigh(answers: Sequence[Answer], *, told_up_to: int | None = None, billed: int = 0) -> Agreed:
    """Read the answers in order: the last to each quote counts; a yes to an extra adds to the total."""
    last = {answer.quote_id: answer for answer in answers}
    standing_yes = [a for a in answers if a.is_yes and last[a.quote_id] is a]
    total, cap = 0, None
    for answer in standing_yes:
        total += answer.option.total_minor
        cap = answer.cap_minor if answer.cap_minor is not None else _raised(cap, total)
    return Agreed(
        answers=tuple(standing_yes),
        total_minor=total,
        cap_minor=cap if standing_yes else told_up_to,
        minutes=sum(answer.option.minutes for answer in standing_yes),
        works=tuple(_works(standing_yes)),
        said_no=bool(answers) and not standing_yes,
        told_up_to_minor=told_up_to,
        billed_minor=billed,
    )


def _raised(cap: int | None, total: int) -> int | None:
    # A yes to an extra without a new cap allows what was said yes to, or the old cap if that is more.
    return None if cap is None else max(cap, total)


def _works(answers: Iterable[Answer]) -> Iterable[str]:
    for answer in answers:
        yield from (work.work for work in answer.option.works.all())


def may_be_billed(
    visit: Visit, total_minor: int, shop: ShopSettings | None = None, *, held: Agreed | None = None
) -> CapRuling:
    """Whether a bill of this sum may go out now, with the limit and the words to show."""
    held = held or agreed(visit.pk)
    shop = shop or standing()
    rates = shop.rates()
    if held.answer:
        ceiling = held.answer.quote.legal_ceiling
        rates = replace(rates, legal_ceiling=None if ceiling is None else Fraction(ceiling))
    quoted = held.total_minor if held.answers else None
    cap = held.cap_minor
    if held.said_no:
        cap = shop.check_fee_minor
    return may_be_issued(held.billed_minor + total_minor, rates, quoted_minor=quoted, cap_minor=cap)
