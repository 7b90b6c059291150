"""Sign a proof: a second person has wound the reel blind and puts their name under it."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts.open_diary import Beside, Written, open_diary
from spoolwright.shop.acts.put import put
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.entry import Strike
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.proof import Proof, ProofSign

SAYS = "Wound it blind, felt nothing amiss, and signs for the proof."


class SecondHandWasTheFirst(Refused):
    def __init__(self) -> None:
        super().__init__("Whoever wrote the proof does not sign it: a second person winds the reel blind.")


class ProofWasSignedAlready(Refused):
    def __init__(self, who: str) -> None:
        super().__init__(f"{who} has signed this proof already.")


class ProofWasStruck(Refused):
    def __init__(self, reason: str) -> None:
        super().__init__(
            f"That proof has been struck through ({reason}). Sign the one that was written instead."
        )


@transaction.atomic
def sign_proof(*, hand: Person, proof: Proof, words: str = "", seen: int | None = None) -> Written:
    """Written as a word in the diary, with the proof it belongs to."""
    diary = open_diary(hand, proof.entry.visit)
    if strike := Strike.objects.filter(entry=proof.pk).first():
        raise ProofWasStruck(strike.reason)
    if proof.entry.author_id == diary.hand.pk:
        raise SecondHandWasTheFirst
    standing = ProofSign.objects.filter(proof=proof, entry__strike=None)
    if standing.filter(entry__author=diary.hand).exists():
        raise ProofWasSignedAlready(diary.hand.shown)
    written = diary.write("word", Beside(words=f"{SAYS} {words}".strip(), seen=seen))
    put(ProofSign(entry=written.entry, proof=proof))
    return written
