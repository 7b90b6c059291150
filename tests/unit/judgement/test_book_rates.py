"""Faults are counted: a prior worth a few reels, other kinds of reel lend a quarter of their weight."""

from __future__ import annotations

import pytest

from spoolwright.judgement.book_rates import beta_after, beta_interval, rates
from spoolwright.sheets.faults import faults


def rate(reels: dict[str, int], found: dict[tuple[str, str], int], fault: str, reel: str) -> float:
    return next(one.mean for one in rates(faults(), reels, found) if (one.fault, one.reel) == (fault, reel))


def test_the_count_takes_over_from_the_prior() -> None:
    few = rate({"round multiplier": 4}, {("round multiplier", "F15"): 2}, "F15", "round multiplier")
    many = rate({"round multiplier": 400}, {("round multiplier", "F15"): 200}, "F15", "round multiplier")
    assert few < 0.25
    assert many == pytest.approx(0.5, abs=0.02)


def test_another_kind_of_reel_lends_some_of_its_weight() -> None:
    alone = rate({"fixed spool": 2}, {}, "F12", "fixed spool")
    lent = rate(
        {"fixed spool": 2, "round multiplier": 40},
        {("round multiplier", "F12"): 20},
        "F12",
        "fixed spool",
    )
    assert lent > 3 * alone


def test_only_kinds_that_were_looked_into_have_rates() -> None:
    assert {one.reel for one in rates(faults(), {"fly": 1}, {})} == {"fly"}
    assert rates(faults(), {}, {}) == ()


@pytest.mark.parametrize(("prior", "found", "tried"), [((0.0, 1.0), 0, 1), ((1.0, 1.0), 3, 2)])
def test_what_cannot_be_counted_is_refused(prior: tuple[float, float], found: int, tried: int) -> None:
    with pytest.raises(ValueError, match="accepted"):
        beta_after(prior, found, tried)


def test_the_interval_holds_ninety_per_cent() -> None:
    from scipy.stats import beta

    low, high = beta_interval((3.2, 17.0))
    assert beta.cdf(high, 3.2, 17.0) - beta.cdf(low, 3.2, 17.0) == pytest.approx(0.9)
