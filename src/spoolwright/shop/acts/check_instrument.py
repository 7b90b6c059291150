"""Write down that an instrument was held against something better known, and what it showed."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date

from django.db import transaction

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.change_instrument import latest
from spoolwright.shop.acts.put import needed, our_hand, put
from spoolwright.shop.acts.refused import FieldWasRefused
from spoolwright.shop.records.instrument import Instrument, InstrumentCheck
from spoolwright.shop.records.people import Person


@dataclass(frozen=True)
class HeldAgainst:
    """One check, SI: what it was held against, what that is worth, what it showed, how sure that worth is.

    `uncertainty` is the standard uncertainty of the nominal value.
    """

    against: str
    nominal: float
    found: float
    uncertainty: float
    day: date | None = None
    words: str = ""


@transaction.atomic
def check_instrument(*, hand: Person, instrument: Instrument, held: HeldAgainst) -> InstrumentCheck:
    """Without a day it was done today; a day to come is refused."""
    our_hand(hand)
    latest(instrument)
    day = held.day or clock.today()
    if day > clock.today():
        raise FieldWasRefused("day", ["A check is written down after it was made, not before."])
    if not (math.isfinite(held.uncertainty) and held.uncertainty >= 0):
        raise FieldWasRefused("uncertainty", ["Zero or more is needed."])
    return put(
        InstrumentCheck(
            instrument=instrument,
            day=day,
            against=needed(held.against, "against", "What it was held against"),
            nominal_si=held.nominal,
            found_si=held.found,
            standard_uncertainty_si=held.uncertainty,
            author=hand,
            written_at=clock.now(),
            words=held.words,
        )
    )
