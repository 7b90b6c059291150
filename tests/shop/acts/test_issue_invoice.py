"""An invoice is exact to the minor unit, carries deposit and tax, and never passes what was answered."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from typing import Any

import pytest
from django.db import transaction
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from spoolwright.judgement.price import Charge
from spoolwright.shop.acts.change_settings import change_settings
from spoolwright.shop.acts.issue_invoice import (
    BillWasAboveTheCap,
    NothingWasBilled,
    WhyMoreWasMissing,
    issue_invoice,
)
from spoolwright.shop.acts.record_answer import Said, record_answer
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_payment import take_payment
from spoolwright.shop.questions.shop_settings import shop_settings
from tests.shop import walk

pytestmark = pytest.mark.django_db


def bill(hand: Any, visit: Any, total_minor: int) -> Any:
    more = "" if total_minor <= 1104_00 else "found more"
    return issue_invoice(
        hand=hand, visit=visit, charges=[Charge("tier", "Everything", total_minor)], why_more=more
    ).entry.invoice


def test_above_the_cap_it_is_refused_until_a_new_answer_is_written(hand: Any) -> None:
    visit = walk.agreed(hand)
    with pytest.raises(BillWasAboveTheCap) as refusal:
        bill(hand, visit, 1300_00)
    assert (refusal.value.ruling.limit_minor, refusal.value.ruling.over_by_minor) == (1200_00, 100_00)
    extra = walk.quoted(hand, visit, walk.option(Charge("labour", "Free the bearing", 196_00), key="extra"))
    with pytest.raises(BillWasAboveTheCap):
        bill(hand, visit, 1300_00)
    walk.answered(hand, extra, cap=1300_00)
    assert bill(hand, visit, 1300_00).total_minor == 1300_00


def test_at_the_cap_it_goes_out_and_a_minor_unit_more_does_not(hand: Any) -> None:
    visit = walk.agreed(hand)
    with pytest.raises(BillWasAboveTheCap):
        bill(hand, visit, 1200_01)
    assert bill(hand, visit, 1200_00).due_minor == 1200_00


def test_without_a_cap_the_legal_ceiling_stands(hand: Any) -> None:
    """1,104 and 15 % over it: 1,269.60. Source: the trade handbook, chapter 1.5 (one country's law)."""
    visit = walk.arrived(hand)
    walk.answered(hand, walk.quoted(hand, visit), cap=None)
    with pytest.raises(BillWasAboveTheCap, match=r"legal ceiling of 1,269\.60 kr"):
        bill(hand, visit, 1269_61)
    assert bill(hand, visit, 1269_60).total_minor == 1269_60


def test_nothing_agreed_nothing_billed(hand: Any) -> None:
    visit = walk.arrived(hand)
    with pytest.raises(BillWasAboveTheCap, match="Ask the customer first"):
        bill(hand, visit, 1_00)
    walk.quoted(hand, visit)
    with pytest.raises(BillWasAboveTheCap):
        bill(hand, visit, 1_00)


def test_after_a_no_only_the_check_fee(owner: Any) -> None:
    change_settings(hand=owner, version=1, check_fee_minor=150_00)
    visit = walk.arrived(owner)
    record_answer(
        hand=owner,
        quote=walk.quoted(owner, visit),
        option=None,
        said=Said("Ragna Solbu", "letter", "no"),
    )
    with pytest.raises(BillWasAboveTheCap):
        bill(owner, visit, 150_01)
    assert bill(owner, visit, 150_00).total_minor == 150_00


def test_two_bills_together_stay_under_the_cap(hand: Any) -> None:
    visit = walk.agreed(hand)
    first = bill(hand, visit, 1000_00)
    with pytest.raises(BillWasAboveTheCap):
        bill(hand, visit, 200_01)
    strike_entry(hand=hand, entry=first.entry, reason="wrong sum")
    assert bill(hand, visit, 1200_00).number == 2


def test_more_than_was_quoted_says_why(hand: Any) -> None:
    visit = walk.agreed(hand)
    with pytest.raises(WhyMoreWasMissing, match=r"65\.00 kr more"):
        walk.billed(hand, visit, *walk.CHARGES, walk.COG)
    invoice = walk.billed(hand, visit, *walk.CHARGES, walk.COG, why_more="the idler cog was split")
    assert invoice.why_more == "the idler cog was split"


def test_nothing_is_no_bill(hand: Any) -> None:
    visit = walk.agreed(hand)
    for charges in ([], [Charge("tier", "Kindness", 0)]):
        with pytest.raises(NothingWasBilled):
            issue_invoice(hand=hand, visit=visit, charges=charges)


def test_what_was_paid_before_is_the_deposit_and_is_used_once(hand: Any) -> None:
    visit = walk.agreed(hand)
    take_payment(hand=hand, visit=visit, amount_minor=200_00)
    struck = take_payment(hand=hand, visit=visit, amount_minor=50_00).entry
    strike_entry(hand=hand, entry=struck, reason="another reel's money")
    first, second = bill(hand, visit, 150_00), bill(hand, visit, 100_00)
    assert (first.deposit_minor, first.due_minor) == (150_00, 0)
    assert (second.deposit_minor, second.due_minor) == (50_00, 50_00)


def test_the_address_on_the_bill_stays(hand: Any) -> None:
    from spoolwright.shop.acts.add_customer import NewCustomer
    from spoolwright.shop.acts.change_customer import change_customer

    visit = walk.agreed(hand)
    invoice = walk.billed(hand, visit)
    customer = visit.reel.customer
    change_customer(hand=hand, customer=customer, to=NewCustomer("Ragna Lien", "Oslo"), version=1)
    invoice.refresh_from_db()
    assert invoice.bill_to == "Ragna Solbu\nMoloveien 3, Grånesvåg"


charges = st.builds(
    Charge,
    kind=st.sampled_from(["tier", "labour", "part", "post", "other"]),
    title=st.just("line"),
    unit_minor=st.integers(8, 10**7),
    quantity=st.fractions(min_value=Fraction(1, 8), max_value=40, max_denominator=8),
)


@given(
    charged=st.lists(charges, min_size=1, max_size=6),
    rate=st.decimals("0", "0.30", places=3),
    inside=st.booleans(),
    basis=st.sampled_from(["document", "line"]),
    paid=st.integers(0, 10**7),
)
@settings(max_examples=30, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_money_is_exact(
    owner: Any, charged: list[Charge], rate: Decimal, inside: bool, basis: str, paid: int
) -> None:
    """Lines, net, tax, total, deposit and due agree to the last minor unit, whatever the rates."""
    with transaction.atomic():
        change_settings(
            hand=owner,
            version=shop_settings().version,
            tax_rate=rate,
            prices_include_tax=inside,
            tax_basis=basis,
        )
        visit = walk.arrived(owner, up_to_minor=10**12)
        if paid:
            take_payment(hand=owner, visit=visit, amount_minor=paid)
        invoice = issue_invoice(hand=owner, visit=visit, charges=charged).entry.invoice
        invoice.refresh_from_db()
        lines = list(invoice.lines.all())
        assert sum(line.net_minor for line in lines) == invoice.net_minor
        assert sum(line.tax_minor for line in lines) == invoice.tax_minor
        assert sum(line.gross_minor for line in lines) == invoice.total_minor
        assert invoice.net_minor + invoice.tax_minor == invoice.total_minor
        assert invoice.deposit_minor == min(paid, invoice.total_minor)
        assert invoice.due_minor == invoice.total_minor - invoice.deposit_minor
        base = invoice.net_minor * Fraction(rate)
        assert abs(invoice.tax_minor - base) <= (1 if basis == "document" else len(lines))
        transaction.set_rollback(True)
