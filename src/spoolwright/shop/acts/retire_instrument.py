"""Put an instrument away: a last version says so and why, and what was measured with it keeps its name."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts.add_instrument import Known, version_of
from spoolwright.shop.acts.change_instrument import latest
from spoolwright.shop.acts.put import needed, our_hand, put
from spoolwright.shop.records.instrument import Instrument, InstrumentVersion
from spoolwright.shop.records.people import Person


@transaction.atomic
def retire_instrument(*, hand: Person, instrument: Instrument, why: str) -> InstrumentVersion:
    our_hand(hand)
    needed(why, "why", "Why it is put away")
    last = latest(instrument)
    known = Known(
        name=last.name,
        resolution=last.resolution_si,
        limit=last.limit_si,
        share=last.limit_share,
        low=last.range_low_si,
        high=last.range_high_si,
        serial=last.serial,
        words=why,
    )
    return put(version_of(instrument, last.number + 1, known, hand, retired=True))
