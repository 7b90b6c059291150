"""Write down what has changed about an instrument: a new version; the old ones stay."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts.add_instrument import Known, version_of
from spoolwright.shop.acts.put import our_hand, put
from spoolwright.shop.acts.refused import Refused, SomeoneElseWroteFirst
from spoolwright.shop.records.instrument import Instrument, InstrumentVersion
from spoolwright.shop.records.people import Person


class InstrumentWasPutAway(Refused):
    def __init__(self, mark: str) -> None:
        super().__init__(
            f"Instrument {mark} has been put away: nothing is measured or checked with it any more. "
            "If it is back in use, give it a new mark.",
            "instrument",
        )


@transaction.atomic
def change_instrument(
    *, hand: Person, instrument: Instrument, known: Known, after: int | None = None
) -> InstrumentVersion:
    """`after` is the number of the version that was on the screen."""
    our_hand(hand)
    last = latest(instrument)
    if after is not None and last.number != after:
        raise SomeoneElseWroteFirst(f"Instrument {instrument.mark}")
    return put(version_of(instrument, last.number + 1, known, hand))


def latest(instrument: Instrument) -> InstrumentVersion:
    """The version in force, with the instrument's row locked; refused once it was put away."""
    Instrument.objects.select_for_update().get(pk=instrument.pk)
    last = instrument.versions.latest("number")
    if last.retired:
        raise InstrumentWasPutAway(instrument.mark)
    return last
