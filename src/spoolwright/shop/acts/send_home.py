"""Send a reel home: carrier, number, the weight of the closed parcel, photographs. Then the diary is shut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, dataclass, replace

from django.db import transaction

from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written, open_diary
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


@dataclass(frozen=True)
class WayHome:
    """How it goes; `sent_to` empty: to the customer's own address, as it stands today."""

    went_by: str = "post"
    carrier: str = ""
    carrier_number: str = ""
    mass_kg: float | None = None
    insured_minor: int | None = None
    sent_to: str = ""
    enclosed: Sequence[str] = ()


@transaction.atomic
def send_home(*, hand: Person, visit: Visit, way: WayHome, beside: Beside = NOTHING_BESIDE) -> Written:
    """A posted parcel is weighed first; a reel that is fetched is not."""
    if way.went_by == "post" and not way.mass_kg:
        raise ParcelWasNotWeighed
    diary = open_diary(hand, visit)
    customer = diary.visit.reel.customer
    written = diary.write(
        "dispatch",
        replace(beside, moved_to="post table"),
        [way.carrier, way.carrier_number, *way.enclosed],
    )
    home = way.sent_to or f"{customer.name}\n{customer.address}".strip()
    columns = {**asdict(way), "sent_to": home, "enclosed": list(way.enclosed)}
    put(Dispatch(entry=written.entry, **columns))
    diary.visit.sent_home_at = written.entry.written_at
    diary.visit.save(update_fields=["sent_home_at"])
    return written
