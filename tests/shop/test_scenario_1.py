"""Acceptance: the pier reel with a catching level wind, posted. Its torque, its sums, its cap.

Source of every number: the trade handbook, chapter 9, scenario 1 (worked out there from marked inputs).
"""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.mechanics.spool import line_pull
from spoolwright.shop.acts.issue_invoice import BillWasAboveTheCap
from spoolwright.shop.acts.move_reel import move_reel
from spoolwright.shop.acts.prove import ProofPair, prove
from spoolwright.shop.acts.send_quote import OfferedPromise
from spoolwright.shop.acts.take_payment import take_payment
from spoolwright.shop.acts.take_reading import Value, take_reading
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.questions.agreed import agreed, may_be_billed
from spoolwright.shop.questions.diary import diary
from spoolwright.shop.questions.owed import owed
from spoolwright.shop.questions.passport import passport
from spoolwright.shop.questions.readings import to_prove
from tests.shop import walk

pytestmark = pytest.mark.django_db
RADIUS = 0.0235
PROMISES = (
    OfferedPromise("start_up_ratio", "ratio", high=1.15, reading_kind="start_up_ratio"),
    OfferedPromise("pull_full_spool", "force", low=6.2 * walk.G, high=7.6 * walk.G, reading_kind="pull_full"),
)


def pulls(hand: Any, visit: Any, start_kg: float, run_kg: float) -> Any:
    """Half drag: start and run are two numbers, kept apart, with their ratio."""
    values = [
        Value("pull_start", start_kg * walk.G, "force", 0.05 * walk.G, typed=f"{start_kg} kg"),
        Value("pull_run", run_kg * walk.G, "force", 0.05 * walk.G, typed=f"{run_kg} kg"),
        Value("start_up_ratio", start_kg / run_kg, "ratio", 0.03),
    ]
    return take_reading(hand=hand, visit=visit, values=values, conditions=walk.PULLS).entry.reading


@pytest.fixture
def visit(hand: Any) -> Any:
    visit = walk.arrived(hand)
    pulls(hand, visit, 3.9, 2.6)
    walk.read(hand, visit, "pull_full", 5.8 * walk.G, 0.5, "force")
    write_finding(hand=hand, visit=visit, part="pawl", fault="F15", evidence="catches at the right end")
    quote = walk.quoted(hand, visit, walk.option(promises=PROMISES))
    walk.answered(hand, quote)
    return visit


def test_start_and_run_stay_apart_with_the_torque_beside_them(visit: Any) -> None:
    reading = visit.entries.filter(kind="reading").order_by("seq").first().reading
    held = {v.kind: v.value_si for v in reading.values.all()}
    assert held["start_up_ratio"] == pytest.approx(1.50, abs=0.005)
    torque = held["pull_run"] * reading.radius_m
    assert torque == pytest.approx(0.599, abs=0.0005)
    assert line_pull(torque, 1.0, reading.radius_m) == pytest.approx(2.6 * walk.G)


def test_the_estimate_its_ceiling_and_the_cap(hand: Any, visit: Any) -> None:
    held = agreed(visit.pk)
    assert (held.total_minor, held.cap_minor) == (1104_00, 1200_00)
    assert may_be_billed(visit, 1200_00).allowed
    with pytest.raises(BillWasAboveTheCap) as refusal:
        walk.billed(
            hand,
            visit,
            *walk.CHARGES,
            walk.COG,
            *[walk.COG] * 2,
            walk.Charge("other", "rest", 1_00),
            why_more="x",
        )
    assert refusal.value.ruling.limit_minor == 1200_00


def test_a_bill_of_1300_is_refused(hand: Any, visit: Any) -> None:
    charges = (*walk.CHARGES, walk.Charge("other", "more", 196_00))
    with pytest.raises(BillWasAboveTheCap, match=r"1,300\.00 kr is 100\.00 kr over the cap of 1,200\.00 kr"):
        walk.billed(hand, visit, *charges, why_more="more was found")


def test_the_whole_way(hand: Any, visit: Any) -> None:
    take_payment(hand=hand, visit=visit, amount_minor=200_00)
    write_finding(
        hand=hand, visit=visit, part="idler cog", fault="F16", evidence="split, seen at the strip-down"
    )
    extra = walk.quoted(hand, visit, walk.option(walk.COG, key="idler cog"))
    assert extra.options.get().whole_minor == 1169_00
    assert diary(visit.pk).next.act == "work", "inside the cap: told by picture, and the work goes on"
    walk.worked(hand, visit)
    pulls(hand, visit, 2.9, 2.7)
    walk.read(hand, visit, "pull_full", 6.9 * walk.G, 0.05 * walk.G, "force")
    pairs = [ProofPair(row.promise, row.measured, row.before) for row in to_prove(visit.pk)]
    proof = prove(hand=hand, visit=visit, pairs=pairs).entry.proof
    rows = {row.promise.kind: row for row in proof.rows.all()}
    assert rows["pull_full_spool"].measured.value_si * RADIUS == pytest.approx(1.590, abs=0.0005)
    assert rows["pull_full_spool"].decision == "shown"
    assert rows["pull_full_spool"].before.value_si == pytest.approx(5.8 * walk.G)
    assert rows["start_up_ratio"].measured.value_si == pytest.approx(1.07, abs=0.005)

    invoice = walk.billed(hand, visit, *walk.CHARGES, walk.COG, why_more="The idler cog was split: 65 more.")
    assert (invoice.total_minor, invoice.tax_minor) == (1169_00, 233_80)
    assert (invoice.deposit_minor, invoice.due_minor) == (200_00, 969_00)
    assert invoice.why_more == "The idler cog was split: 65 more."
    assert owed(invoice.due_on)[0].owed_minor == 969_00

    held = diary(visit.pk).of_kind("work")[0].part
    assert (held.minutes, agreed(visit.pk).minutes) == (74, 68)
    here = diary(visit.pk).visit
    move_reel(hand=hand, visit=here, to="post table", version=here.version)
    assert diary(visit.pk).next.act == "dispatch"
    walk.gone(hand, visit)
    assert diary(visit.pk).next.act == "nothing"
    assert [r.after_work for r in passport(visit.reel_id).readings_of("pull_full")] == [False, True]
