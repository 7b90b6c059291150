"""The book is gathered from proofs, works and findings; what is struck or set aside does not count."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.judgement.book_lessons import NOTHING_LEARNED
from spoolwright.shop.acts.set_aside import set_aside
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_back import take_back
from spoolwright.shop.questions import book
from tests.shop import walk
from tests.shop.proved_reel import CARBON, FAULT, described, proved

pytestmark = pytest.mark.django_db


@pytest.fixture
def visit(hand: Any) -> Any:
    return described(hand)


def counted(key: str) -> int:
    found = book.shop_book().kind(key)
    return len(found[0].of(key)) if found else 0


def test_an_empty_shop_has_learned_nothing() -> None:
    assert book.lessons() == NOTHING_LEARNED
    assert book.shop_book().proofs == 0


def test_a_proof_teaches_before_and_after_and_the_work_its_minutes(hand: Any, visit: Any) -> None:
    proved(hand, visit)
    read = book.shop_book()
    assert counted(CARBON) == 1
    (before,) = [key for key in (k.key for k in read.chapters["friction"].kinds) if key.endswith("as-found")]
    assert counted(before) == 1
    assert counted("minutes-carbon-drag-set-round-multiplier") == 1
    rate = read.rate(FAULT)
    assert rate is not None
    assert (rate.found, rate.reels) == (1, 1)
    assert book.lessons().of(CARBON) is not None


def test_without_a_proof_a_reading_teaches_nothing(hand: Any, visit: Any) -> None:
    walk.read(hand, visit, "pull_full", 5.8 * walk.G, 0.05, "force")
    assert len(book.shop_book().chapters["friction"].weighed) == 0


def test_a_struck_proof_no_longer_counts(hand: Any, visit: Any) -> None:
    proof, _ = proved(hand, visit)
    assert counted(CARBON) == 1
    strike_entry(hand=hand, entry=proof, reason="the wrong reel")
    assert counted(CARBON) == 0


def test_set_aside_and_taken_back(hand: Any, visit: Any) -> None:
    _, reading = proved(hand, visit)
    aside = set_aside(hand=hand, entry=reading, reason="gauge not at zero", coefficient=CARBON)
    assert counted(CARBON) == 0
    ((seen, why),) = book.shop_book().aside_of(CARBON)
    assert (seen.entry, why.reason) == (reading.pk, "gauge not at zero")
    take_back(hand=hand, set_aside=aside)
    assert counted(CARBON) == 1


def test_a_finding_set_aside_is_not_counted(hand: Any, visit: Any) -> None:
    set_aside(hand=hand, entry=visit.entries.get(kind="finding"), reason="it was dirt")
    rate = book.shop_book().rate(FAULT)
    assert rate is not None
    assert rate.found == 0


def test_the_same_rows_are_reckoned_once(hand: Any, visit: Any) -> None:
    proved(hand, visit)
    assert book.shop_book() is book.shop_book()


def test_where_a_proof_stands(hand: Any, visit: Any) -> None:
    _, reading = proved(hand, visit)
    assert book.entries([reading.pk])[reading.pk].visit.tag == visit.tag
    assert book.results_of([reading.pk])[reading.pk, "pull_full"].value_si == pytest.approx(6.9 * walk.G)
    assert book.standing_aside(reading.pk) == ()
    assert book.set_aside_row(0) is None


def test_the_findings_of_a_fault_stand_behind_its_rate(hand: Any, visit: Any) -> None:
    assert [one.evidence for one in book.findings_of("F15", "round multiplier")] == ["tip worn"]
    assert book.findings_of("F15", "fly") == ()
