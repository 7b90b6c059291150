"""The proof: what was promised beside what was measured after the work, with the decision and its rule."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.quote import QuotePromise
from spoolwright.shop.records.reading import ReadingValue

DECISIONS = ("shown", "not shown", "failed")


class Proof(Inked):
    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="proof", primary_key=True)


class ProofRow(Inked):
    """`chance_of_wrong_pass` is null where nothing was shown, and in proofs from before it was reckoned."""

    proof = models.ForeignKey(Proof, on_delete=models.PROTECT, related_name="rows")
    position = models.PositiveSmallIntegerField()
    promise = models.ForeignKey(QuotePromise, on_delete=models.PROTECT, related_name="proof_rows")
    measured = models.ForeignKey(ReadingValue, on_delete=models.PROTECT, related_name="proof_rows")
    before = models.ForeignKey(
        ReadingValue, on_delete=models.PROTECT, null=True, blank=True, related_name="+"
    )
    decision = models.CharField(max_length=10, choices=[(d, d) for d in DECISIONS])
    words = models.TextField()
    rule = models.TextField()
    chance_of_wrong_pass = models.FloatField(null=True, blank=True)

    class Meta:
        ordering = ["proof_id", "position"]


class ProofCheck(Inked):
    """What was tried by hand at the release and has no number: a key of judgement's gate, and its words."""

    proof = models.ForeignKey(Proof, on_delete=models.PROTECT, related_name="checks")
    position = models.PositiveSmallIntegerField()
    key = models.CharField(max_length=40)
    words = models.CharField(max_length=300)

    class Meta:
        ordering = ["proof_id", "position"]


class ProofSign(Inked):
    """A second person wound the reel blind and signs for the proof; the entry is a word in the same diary."""

    entry = models.OneToOneField(Entry, on_delete=models.PROTECT, related_name="proof_sign", primary_key=True)
    proof = models.ForeignKey(Proof, on_delete=models.PROTECT, related_name="signs")
