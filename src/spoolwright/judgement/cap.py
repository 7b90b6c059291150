"""May this invoice be issued? The customer's own cap decides; without one, the legal ceiling."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.judgement import money
from spoolwright.judgement.price import ceiling
from spoolwright.judgement.shop_rates import ShopRates


@dataclass(frozen=True)
class CapRuling:
    """Allowed or refused, with the limit that decided and the words to show."""

    allowed: bool
    limit_minor: int | None
    over_by_minor: int
    words: str


def may_be_issued(
    total_minor: int, rates: ShopRates, *, quoted_minor: int | None = None, cap_minor: int | None = None
) -> CapRuling:
    """Say whether an invoice of this total may go out under what the customer answered.

    Parameters
    ----------
    total_minor : int
        What the invoice comes to, tax included **[minor unit]**.
    rates : ShopRates
        Legal ceiling and how money is shown **[-]**.
    quoted_minor : int or None
        The estimate that the customer said yes to **[minor unit]**; None when nothing was quoted.
    cap_minor : int or None
        "Up to so much without asking", as answered **[minor unit]**; None when no cap was given.

    Returns
    -------
    CapRuling
        Allowed or not, the limit and the overrun **[minor unit]**, the words.

    Notes
    -----
    A cap that the customer answered stands above the legal ceiling: it is his own word, higher or lower.
    Silence is not a yes: with neither an estimate nor a cap nothing may be charged.

    Source
    ------
    Trade rule (every extra found is a new question; the old answer is kept), common practice; the ceiling
    is a shop setting.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> may_be_issued(130000, starting_rates(), quoted_minor=110400, cap_minor=120000).words
    'Not issued: 1,300.00 kr is 100.00 kr over the cap of 1,200.00 kr that the customer answered. Ask again.'
    """

    def show(minor: int) -> str:
        return money.show(minor, rates.money_mark, rates.minor_per_major)

    limit, why = _limit(quoted_minor, cap_minor, rates, show(quoted_minor or 0))
    if limit is None and quoted_minor is None:
        return CapRuling(
            False, None, total_minor, "Not issued: no quote was answered. Ask the customer first."
        )
    if limit is None or total_minor <= limit:
        inside = f", within {why.format(limit=show(limit))}" if limit is not None else "; no cap applies here"
        return CapRuling(True, limit, 0, f"May be issued: {show(total_minor)}{inside}.")
    over = total_minor - limit
    words = (
        f"Not issued: {show(total_minor)} is {show(over)} over {why.format(limit=show(limit))}. Ask again."
    )
    return CapRuling(False, limit, over, words)


def _limit(
    quoted: int | None, cap: int | None, rates: ShopRates, quoted_shown: str
) -> tuple[int | None, str]:
    if cap is not None:
        return cap, "the cap of {limit} that the customer answered"
    if quoted is None:
        return None, ""
    return ceiling(quoted, rates), f"the legal ceiling of {{limit}} over the estimate of {quoted_shown}"
