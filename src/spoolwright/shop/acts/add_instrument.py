"""Put an instrument of the shop's own on the list: its mark, its kind, and what is known of it."""

from __future__ import annotations

import math
from dataclasses import dataclass

from django.db import transaction

from spoolwright.sheets import instrument_kinds
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.put import needed, our_hand, put
from spoolwright.shop.acts.refused import FieldWasRefused, Refused
from spoolwright.shop.records.instrument import Instrument, InstrumentVersion
from spoolwright.shop.records.people import Person


class MarkWasTaken(Refused):
    def __init__(self, mark: str) -> None:
        super().__init__(f"An instrument with the mark {mark} is on the list already.", "mark")


@dataclass(frozen=True)
class Known:
    """What is known of an instrument, SI. `limit` and `share` are its stated limits of error, if any."""

    name: str
    resolution: float
    limit: float | None = None
    share: float | None = None
    low: float | None = None
    high: float | None = None
    serial: str = ""
    words: str = ""


@transaction.atomic
def add_instrument(*, hand: Person, mark: str, kind: str, known: Known, dimension: str = "") -> Instrument:
    """Without a dimension it is the usual one of its kind."""
    our_hand(hand)
    mark = needed(mark, "mark", "The mark on the instrument, by which everybody finds it,").strip()
    dimension = _dimension(kind, dimension)
    if Instrument.objects.filter(mark__iexact=mark).exists():
        raise MarkWasTaken(mark)
    instrument = put(
        Instrument(mark=mark, kind=kind, dimension=dimension, author=hand, written_at=clock.now())
    )
    put(version_of(instrument, 1, known, hand))
    return instrument


def version_of(
    instrument: Instrument, number: int, known: Known, hand: Person, retired: bool = False
) -> InstrumentVersion:
    """The row that says what is known, refused where it cannot be so."""
    refuse_impossible(known)
    return InstrumentVersion(
        instrument=instrument,
        number=number,
        name=needed(known.name, "name", "What it is called"),
        serial=known.serial,
        resolution_si=known.resolution,
        limit_si=known.limit,
        limit_share=known.share,
        range_low_si=known.low,
        range_high_si=known.high,
        retired=retired,
        author=hand,
        written_at=clock.now(),
        words=known.words,
    )


def refuse_impossible(known: Known) -> None:
    """No step or limit below zero, and the range in its order."""
    for field in ("resolution", "limit", "share"):
        value = getattr(known, field)
        if value is not None and not (math.isfinite(value) and value >= 0):
            raise FieldWasRefused(field, ["Zero or more is needed."])
    if not (known.resolution or known.limit or known.share):
        raise FieldWasRefused(
            "resolution", ["Something has to be above zero: its smallest step, or how far off it may be."]
        )
    if known.low is not None and known.high is not None and not known.low < known.high:
        raise FieldWasRefused("high", ["The end of its range has to lie above the beginning."])


def _dimension(kind: str, dimension: str) -> str:
    found = instrument_kinds.kinds().get(kind)
    if found is None:
        raise FieldWasRefused("kind", [f"Accepted: {', '.join(instrument_kinds.kinds())}."])
    if dimension and dimension not in found.dimensions:
        raise FieldWasRefused("dimension", [f"{found.title} measures {', '.join(found.dimensions)}."])
    return dimension or found.dimensions[0]
