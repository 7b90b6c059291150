"""Keep a repeatability study: every try of every part by every person, as it was measured."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from django.db import transaction

from spoolwright.sheets import instrument_kinds
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.change_instrument import latest
from spoolwright.shop.acts.put import needed, our_hand, put, put_all
from spoolwright.shop.acts.refused import FieldWasRefused, Refused
from spoolwright.shop.records.attachment import Attachment
from spoolwright.shop.records.instrument import GaugeStudy, GaugeTrial, Instrument
from spoolwright.shop.records.people import Person

MOST_TRIALS = 1000


class StudyWasNotCrossed(Refused):
    def __init__(self, why: str) -> None:
        super().__init__(
            f"{why} Each person has to measure each part, the same number of times: at least two parts, "
            "two tries.",
            "trials",
        )


@dataclass(frozen=True)
class Try:
    """One value of a study, SI."""

    part: str
    person: str
    trial: int
    value: float


@dataclass(frozen=True)
class Studied:
    """A whole study. `tolerance` is the width between the limits of what was measured, if it has any."""

    what: str
    dimension: str
    tries: Sequence[Try]
    day: date | None = None
    tolerance: float | None = None
    attachment: Attachment | None = None
    words: str = ""


@transaction.atomic
def write_gauge_study(*, hand: Person, instrument: Instrument, studied: Studied) -> GaugeStudy:
    our_hand(hand)
    latest(instrument)
    _refuse(instrument, studied)
    study = put(
        GaugeStudy(
            instrument=instrument,
            what=needed(studied.what, "what", "What was measured"),
            dimension=studied.dimension,
            day=studied.day or clock.today(),
            tolerance_si=studied.tolerance,
            attachment=studied.attachment,
            author=hand,
            written_at=clock.now(),
            words=studied.words,
        )
    )
    put_all(
        GaugeTrial(study=study, part=t.part, person=t.person, trial=t.trial, value_si=t.value)
        for t in studied.tries
    )
    return study


def _refuse(instrument: Instrument, studied: Studied) -> None:
    if studied.dimension not in instrument_kinds.kind(instrument.kind).dimensions:
        raise FieldWasRefused("dimension", [f"Instrument {instrument.mark} does not measure that."])
    if studied.day and studied.day > clock.today():
        raise FieldWasRefused("day", ["A study is written down after it was made, not before."])
    if studied.tolerance is not None and not 0 < studied.tolerance < math.inf:
        raise FieldWasRefused("tolerance", ["A width above zero is needed."])
    if len(studied.tries) > MOST_TRIALS:
        raise FieldWasRefused("trials", [f"At most {MOST_TRIALS} tries are kept of one study."])
    if not all(math.isfinite(one.value) for one in studied.tries):
        raise FieldWasRefused("trials", ["Each try has to be a number."])
    _refuse_uncrossed(studied.tries)


def _refuse_uncrossed(tries: Sequence[Try]) -> None:
    cells = Counter((t.part, t.person) for t in tries)
    parts, people = {t.part for t in tries}, {t.person for t in tries}
    if len({(t.part, t.person, t.trial) for t in tries}) != len(tries):
        raise StudyWasNotCrossed("The same try of the same part by the same person stands there twice.")
    if len(parts) < 2 or max(cells.values(), default=0) < 2:
        raise StudyWasNotCrossed("There is too little in it.")
    if len(cells) != len(parts) * len(people) or len(set(cells.values())) != 1:
        raise StudyWasNotCrossed("Something is missing.")
