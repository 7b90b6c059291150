"""Prove: set the readings after the work beside what was promised, and let the stated rule decide."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import isclose

from django.db import transaction

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.proof import Promise, decide
from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written, open_diary
from spoolwright.shop.acts.put import put, put_all
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.proof import Proof, ProofRow
from spoolwright.shop.records.quote import QuotePromise
from spoolwright.shop.records.reading import ReadingValue
from spoolwright.shop.records.visit import Visit
from spoolwright.shop.records.work import Work

# How far the radius may differ before two pulls are two different readings: judgement prior.
RADIUS_SLACK = 0.03


class NothingWasProved(Refused):
    def __init__(self) -> None:
        super().__init__(
            "A proof needs at least one promise with the reading that was taken for it.", "pairs"
        )


class PromiseWasNotAgreed(Refused):
    def __init__(self, promise: QuotePromise) -> None:
        super().__init__(f"{promise.kind} was not promised in anything that the customer said yes to.")


class ReadingDidNotServe(Refused):
    """The reading cannot prove this promise; the words say why."""


@dataclass(frozen=True)
class ProofPair:
    """A promise, the reading that answers it, and the same reading before the work where there is one."""

    promise: QuotePromise
    measured: ReadingValue
    before: ReadingValue | None = None


@transaction.atomic
def prove(
    *,
    hand: Person,
    visit: Visit,
    pairs: Sequence[ProofPair],
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """The decision is not chosen by the hand: promise, reading, uncertainty and the printed rule make it."""
    if not pairs:
        raise NothingWasProved
    diary = open_diary(hand, visit)
    options = {answer.option_id for answer in agreed(visit.pk).answers}
    worked = Work.objects.filter(entry__visit=visit.pk, entry__strike=None).order_by("-entry__seq").first()
    for pair in pairs:
        if pair.promise.option_id not in options:
            raise PromiseWasNotAgreed(pair.promise)
        _refuse_unfit(pair, diary.visit, worked)
    written = diary.write("proof", beside, [p.promise.kind for p in pairs])
    proof = put(Proof(entry=written.entry))
    put_all(_row(proof, i, pair, diary.hand.units) for i, pair in enumerate(pairs))
    return written


def _refuse_unfit(pair: ProofPair, visit: Visit, worked: Work | None) -> None:
    entry = pair.measured.reading.entry
    if entry.visit_id != visit.pk or hasattr(entry, "strike") or pair.measured.repeat:
        raise ReadingDidNotServe("The proof takes an unstruck result from this diary, not a single try.")
    if worked is None or entry.seq < worked.entry.seq:
        raise ReadingDidNotServe(
            "This reading was taken before the work was done. Take it again now, the same way."
        )
    wanted = pair.promise.reading_kind or pair.measured.kind
    if wanted != pair.measured.kind or pair.promise.dimension != pair.measured.dimension:
        raise ReadingDidNotServe(f"{pair.promise.kind} was promised; {pair.measured.kind} was measured.")
    _refuse_other_conditions(pair)


def _refuse_other_conditions(pair: ProofPair) -> None:
    taken = pair.measured.reading.conditions
    for key in ("line", "brakes"):
        promised = pair.promise.conditions.get(key)
        if promised and taken.get(key) and promised != taken[key]:
            raise ReadingDidNotServe(
                f"Promised with {key} {promised}, measured with {key} {taken[key]}: not comparable."
            )
    promised, radius = pair.promise.conditions.get("radius"), taken.get("radius")
    if isinstance(promised, float) and radius and not isclose(promised, radius, rel_tol=RADIUS_SLACK):
        raise ReadingDidNotServe(
            "The line left the spool at another radius than the promise is for. "
            "Pull depends on the radius: not comparable."
        )


def _row(proof: Proof, position: int, pair: ProofPair, system: str) -> ProofRow:
    promise, value = pair.promise, pair.measured
    decision = decide(
        Promise(promise.low_si, promise.high_si, promise.dimension),
        Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension),
        system=system,
    )
    return ProofRow(
        proof=proof,
        position=position,
        promise=promise,
        measured=value,
        before=pair.before,
        decision=decision.kind,
        words=decision.words,
        rule=decision.rule,
    )
