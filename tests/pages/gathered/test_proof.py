"""The proof as its paper carries it: the decision is that of the ink."""

from __future__ import annotations

from typing import Any

from spoolwright.bench.uncertainty import Measured
from spoolwright.pages.gathered import proof as proof_of
from spoolwright.papers.figures import Span
from spoolwright.shop.questions.diary import diary
from tests.shop import walk


def told(visit: Any, shop: Any, system: str = "metric") -> Any:
    held = diary(visit.pk)
    return proof_of.gathered(held, held.of_kind("proof")[-1].entry, shop, system)


def test_before_promised_and_measured_stand_beside_one_another(whole: Any, shop: Any) -> None:
    sheet = told(whole, shop)
    (row,) = sheet.proved
    assert row.before == Measured(5.8 * walk.G, 0.05, "force")
    assert row.measured == Measured(6.9 * walk.G, 0.05, "force")
    assert (row.decision, row.wrong_pass) == ("shown", "less than 0.1 %")
    assert row.promised.replace("\u00a0", " ") == "6.0 to 8.0 kg"
    assert "standard uncertainties" in sheet.rule
    assert "radius 23.5" in row.conditions


def test_who_measured_who_wound_it_blind_and_what_was_tried(whole: Any, shop: Any) -> None:
    sheet = told(whole, shop)
    assert [(s.name, s.role) for s in sheet.signed] == [
        ("Torbal Kvie", "measured"),
        ("Ingjerd Vannes", "wound it blind"),
    ]
    assert sheet.notes == ("Tried by hand, and in order: The tray is empty.",)
    assert sheet.done == ("Strip, wash, regrease", "Fit a pawl")


def test_a_promise_that_was_not_shown_says_why(hand: Any, shop: Any) -> None:
    visit = walk.agreed(hand)
    walk.worked(hand, visit)
    near = walk.result(walk.read(hand, visit, "pull_full", 6.05 * walk.G, 0.05 * walk.G, "force"))
    far = walk.result(walk.read(hand, visit, "start_up_ratio", 1.4, 0.01, "ratio"))
    promises = {p.kind: p for p in walk.QuotePromise.objects.all()}
    pairs = [
        walk.ProofPair(promises["pull_full"], near),
        walk.ProofPair(promises["start_up_ratio"], far),
    ]
    walk.prove(hand=hand, visit=visit, pairs=pairs)
    sheet = told(visit, shop, "imperial")
    assert [row.decision for row in sheet.proved] == ["not shown", "failed"]
    assert "too near the edge" in sheet.proved[0].words
    assert [row.wrong_pass for row in sheet.proved] == ["", ""]
    assert sheet.proved[0].before == "no reading"


def test_instruments_are_named_once_and_their_accuracy_in_the_readers_units(whole: Any, shop: Any) -> None:
    (instrument,) = told(whole, shop, "imperial").instruments
    assert instrument.name.startswith("Hanging scale")
    assert "lb" in instrument.accuracy


def test_a_sign_that_was_struck_is_no_sign(hand: Any, shop: Any) -> None:
    from tests.people import owner

    visit = walk.agreed(hand)
    walk.worked(hand, visit)
    measured = walk.result(walk.read(hand, visit, "pull_full", 6.9 * walk.G, 0.05, "force"))
    pair = walk.ProofPair(walk.promise_of("pull_full"), measured)
    proof = walk.prove(hand=hand, visit=visit, pairs=[pair]).entry.proof
    sign = walk.sign_proof(hand=owner(), proof=proof).entry
    walk.strike_entry(hand=owner(), entry=sign, reason="another reel")
    assert [s.role for s in told(visit, shop).signed] == ["measured"]


def test_a_band_is_kept_where_the_promise_has_a_middle(hand: Any, shop: Any) -> None:
    from spoolwright.shop.acts.send_quote import OfferedPromise

    visit = walk.arrived(hand)
    promise = OfferedPromise("pull_full_spool", "force", 50.0, 80.0, 66.0, "pull_full")
    walk.answered(hand, walk.quoted(hand, visit, walk.option(promises=(promise,))))
    walk.worked(hand, visit)
    measured = walk.result(walk.read(hand, visit, "pull_full", 68.0, 0.5, "force"))
    walk.prove(hand=hand, visit=visit, pairs=[walk.ProofPair(walk.promise_of("pull_full_spool"), measured)])
    assert told(visit, shop).proved[0].promised == Span(66.0, 50.0, 80.0, "force")
