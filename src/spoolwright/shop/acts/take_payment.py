"""Take money: a deposit before the bill, or what is due after it. Written as a word in the diary."""

from __future__ import annotations

from django.db import transaction

from spoolwright.judgement import money
from spoolwright.shop.acts.open_diary import Beside, Written, open_diary
from spoolwright.shop.acts.put import put
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.answer import Payment
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.shop_settings import standing
from spoolwright.shop.records.visit import Visit


class NothingWasPaid(Refused):
    def __init__(self) -> None:
        super().__init__("A payment needs a sum; money given back is a sum below nothing.", "amount_minor")


@transaction.atomic
def take_payment(
    *,
    hand: Person,
    visit: Visit,
    amount_minor: int,
    paid_by: str = "transfer",
    words: str = "",
    seen: int | None = None,
) -> Written:
    if not amount_minor:
        raise NothingWasPaid
    diary = open_diary(hand, visit, even_after_dispatch=True)
    shop = standing()
    shown = money.show(abs(amount_minor), shop.currency_mark or shop.currency, 10**shop.minor_digits)
    said = f"{'Paid' if amount_minor > 0 else 'Given back'}: {shown} ({paid_by})."
    written = diary.write("word", Beside(f"{said} {words}".strip(), seen=seen))
    put(Payment(entry=written.entry, amount_minor=amount_minor, currency=shop.currency, paid_by=paid_by))
    return written
