"""Send a reel home: carrier, number, the weight of the closed parcel, photographs. Then the diary is shut."""

from __future__ import annotations

from collections.abc import Sequence

from django.db import transaction

from spoolwright.shop.acts.open_diary import Attached, Written, open_diary
from spoolwright.shop.acts.put import put
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.dispatch import Dispatch
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import Visit


class ParcelWasNotWeighed(Refused):
    def __init__(self) -> None:
        super().__init__(
            "Weigh the closed parcel: its mass on the receipt is evidence if it is lost.", "mass_kg"
        )


@transaction.atomic
def send_home(
    *,
    hand: Person,
    visit: Visit,
    went_by: str = "post",
    carrier: str = "",
    carrier_number: str = "",
    mass_kg: float | None = None,
    insured_minor: int | None = None,
    sent_to: str = "",
    enclosed: Sequence[str] = (),
    words: str = "",
    attached: Sequence[Attached] = (),
    seen: int | None = None,
) -> Written:
    """`sent_to` empty: to the customer's own address, as it stands today."""
    if went_by == "post" and not mass_kg:
        raise ParcelWasNotWeighed
    diary = open_diary(hand, visit, seen)
    customer = diary.visit.reel.customer
    written = diary.write(
        "dispatch",
        words=words,
        moved_to="post table",
        attached=attached,
        said=[carrier, carrier_number, *enclosed],
    )
    put(
        Dispatch(
            entry=written.entry,
            went_by=went_by,
            carrier=carrier,
            carrier_number=carrier_number,
            mass_kg=mass_kg,
            insured_minor=insured_minor,
            sent_to=sent_to or f"{customer.name}\n{customer.address}".strip(),
            enclosed=list(enclosed),
        )
    )
    diary.visit.sent_home_at = written.entry.written_at
    diary.visit.save(update_fields=["sent_home_at"])
    return written
