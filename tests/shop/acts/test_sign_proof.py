"""A proof is signed by somebody who did not write it, once, and not after it was struck."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.prove import ProofPair, prove
from spoolwright.shop.acts.sign_proof import (
    ProofWasSignedAlready,
    ProofWasStruck,
    SecondHandWasTheFirst,
    sign_proof,
)
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.questions.diary import diary
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.fixture
def proof(hand: Any) -> Any:
    visit = walk.agreed(hand)
    walk.worked(hand, visit)
    measured = walk.result(walk.read(hand, visit, "pull_full", 6.9 * walk.G, 0.05, "force"))
    pair = ProofPair(walk.promise_of("pull_full"), measured)
    return prove(hand=hand, visit=visit, pairs=[pair]).entry.proof


def test_the_second_hand_signs_in_the_diary(owner: Any, proof: Any) -> None:
    entry = sign_proof(hand=owner, proof=proof, words="Smooth both ways.").entry
    assert entry.kind == "word"
    assert entry.words.endswith("Smooth both ways.")
    (block,) = diary(entry.visit_id).of_kind("proof")
    assert [sign.entry.author for sign in block.part.signs.all()] == [owner]


def test_whoever_wrote_it_does_not_sign_it(hand: Any, proof: Any) -> None:
    with pytest.raises(SecondHandWasTheFirst):
        sign_proof(hand=hand, proof=proof)


def test_once_is_enough_unless_the_sign_was_struck(owner: Any, proof: Any) -> None:
    first = sign_proof(hand=owner, proof=proof).entry
    with pytest.raises(ProofWasSignedAlready, match=owner.shown):
        sign_proof(hand=owner, proof=proof)
    strike_entry(hand=owner, entry=first, reason="the wrong reel in my hand")
    assert sign_proof(hand=owner, proof=proof).entry.seq > first.seq


def test_a_struck_proof_is_not_signed(hand: Any, owner: Any, proof: Any) -> None:
    strike_entry(hand=hand, entry=proof.entry, reason="gauge not at zero")
    with pytest.raises(ProofWasStruck, match="gauge not at zero"):
        sign_proof(hand=owner, proof=proof)


def test_somebody_elses_words_in_between_are_shown(hand: Any, owner: Any, proof: Any) -> None:
    seen = proof.entry.seq
    walk.write_word(hand=hand, visit=proof.entry.visit, words="old parts bagged")
    assert [e.words for e in sign_proof(hand=owner, proof=proof, seen=seen).missed] == ["old parts bagged"]
