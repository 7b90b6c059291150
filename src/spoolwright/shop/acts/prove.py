"""Prove: set the readings after the work beside what was promised, and let the stated rule decide."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from django.db import transaction

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.comparable import apart
from spoolwright.judgement.proof import Promise, decide
from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, OpenDiary, Written, open_diary
from spoolwright.shop.acts.put import put, put_all
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.questions.predictions import expected_of
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.proof import Proof, ProofCheck, ProofRow
from spoolwright.shop.records.quote import QuotePromise
from spoolwright.shop.records.reading import ReadingValue
from spoolwright.shop.records.visit import Visit
from spoolwright.shop.records.work import Work


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


@dataclass(frozen=True)
class TriedByHand:
    """Something that the release asks for and that has no number, tried by the hand that writes the proof."""

    key: str
    words: str


@transaction.atomic
def prove(
    *,
    hand: Person,
    visit: Visit,
    pairs: Sequence[ProofPair],
    tried: Sequence[TriedByHand] = (),
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
        _refuse_unfit(pair, worked, diary)
    written = diary.write("proof", beside, [p.promise.kind for p in pairs])
    proof = put(Proof(entry=written.entry))
    put_all(_row(proof, i, pair, diary.hand.units) for i, pair in enumerate(pairs))
    put_all(ProofCheck(proof=proof, position=i, key=t.key, words=t.words) for i, t in enumerate(tried))
    return written


def _refuse_unfit(pair: ProofPair, worked: Work | None, diary: OpenDiary) -> None:
    entry = pair.measured.reading.entry
    if entry.visit_id != diary.visit.pk or hasattr(entry, "strike") or pair.measured.repeat:
        raise ReadingDidNotServe("The proof takes an unstruck result from this diary, not a single try.")
    if worked is None or entry.seq < worked.entry.seq:
        raise ReadingDidNotServe(
            "This reading was taken before the work was done. Take it again now, the same way."
        )
    wanted = pair.promise.reading_kind or pair.measured.kind
    if wanted != pair.measured.kind or pair.promise.dimension != pair.measured.dimension:
        raise ReadingDidNotServe(f"{pair.promise.kind} was promised; {pair.measured.kind} was measured.")
    conditions = pair.measured.reading.conditions
    if parted := apart(pair.promise.conditions, conditions, diary.hand.units):
        raise ReadingDidNotServe(f"Not comparable with what was promised. {' '.join(parted)}")
    if pair.before and (parted := apart(pair.before.reading.conditions, conditions, diary.hand.units)):
        raise ReadingDidNotServe(f"Not comparable with the reading before the work. {' '.join(parted)}")


def _row(proof: Proof, position: int, pair: ProofPair, system: str) -> ProofRow:
    promise, value = pair.promise, pair.measured
    decision = decide(
        Promise(promise.low_si, promise.high_si, promise.dimension),
        Measured(value.value_si, value.standard_uncertainty_si or 0.0, value.dimension),
        expected=expected_of(promise),
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
        chance_of_wrong_pass=decision.chance_of_wrong_pass,
    )
