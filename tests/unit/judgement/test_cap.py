"""An invoice goes out only under the customer's own word or the law's ceiling."""

from dataclasses import replace

from spoolwright.judgement.cap import may_be_issued
from spoolwright.judgement.shop_rates import starting_rates

RATES = starting_rates()


def test_an_answered_cap_decides() -> None:
    assert may_be_issued(116900, RATES, quoted_minor=110400, cap_minor=120000).allowed
    refused = may_be_issued(130000, RATES, quoted_minor=110400, cap_minor=120000)
    assert not refused.allowed
    assert refused.over_by_minor == 10000
    assert "1,200.00 kr" in refused.words


def test_an_answered_cap_below_the_legal_ceiling_still_decides() -> None:
    assert not may_be_issued(125000, RATES, quoted_minor=110400, cap_minor=120000).allowed


def test_without_a_cap_the_legal_ceiling_decides() -> None:
    assert may_be_issued(126960, RATES, quoted_minor=110400).allowed
    refused = may_be_issued(126961, RATES, quoted_minor=110400)
    assert not refused.allowed
    assert "1,269.60 kr" in refused.words


def test_where_no_law_caps_it_the_estimate_alone_is_enough() -> None:
    assert may_be_issued(200000, replace(RATES, legal_ceiling=None), quoted_minor=110400).allowed


def test_silence_is_not_a_yes() -> None:
    assert not may_be_issued(1, RATES).allowed


def test_a_cap_alone_is_an_answer() -> None:
    assert may_be_issued(100, RATES, cap_minor=100).allowed
