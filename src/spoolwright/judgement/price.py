"""What does this job cost the customer? Charges in, lines with tax out, whole minor units throughout."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from spoolwright.judgement import money
from spoolwright.judgement.shop_rates import ShopRates

ChargeKind = Literal["tier", "labour", "part", "consumables", "post", "discount", "other"]


@dataclass(frozen=True)
class Charge:
    """One thing to be paid for; `unit_minor` is stated as the shop states its prices (with tax or without).

    `cost_minor` is what one of it cost the shop, without tax: it never shows on a customer's paper.
    """

    kind: ChargeKind
    title: str
    unit_minor: int
    quantity: Fraction = Fraction(1)
    minutes: int = 0
    cost_minor: int = 0


@dataclass(frozen=True)
class Line:
    """One line of a quote or an invoice: net and tax add up to gross, to the last minor unit."""

    kind: ChargeKind
    title: str
    quantity: Fraction
    net_minor: int
    tax_minor: int
    gross_minor: int
    minutes: int
    cost_minor: int


@dataclass(frozen=True)
class Priced:
    """A job with its price: the lines add back to the totals without a residue.

    `ceiling_minor` is the most a bill may come to where the law caps an estimate; None where it does not.
    """

    lines: tuple[Line, ...]
    net_minor: int
    tax_minor: int
    total_minor: int
    deposit_minor: int
    due_minor: int
    minutes: int
    ceiling_minor: int | None
    currency: str


def part_price(cost_minor: int, rates: ShopRates) -> int:
    """Selling price of a part from what it cost, as the shop states its prices.

    Parameters
    ----------
    cost_minor : int
        What the part cost the shop, without tax **[minor unit]**, 0 or more.
    rates : ShopRates
        Margin, tax and how prices are stated **[-]**.

    Returns
    -------
    int
        Price of one **[minor unit]**.

    Raises
    ------
    ValueError
        The cost is negative.

    Notes
    -----
    cost / (1 - margin), and times (1 + tax) where prices include it. A margin g is the mark-up g / (1 - g).

    Source
    ------
    Managerial economics, ch. 12: margin and mark-up are different shares (opened).

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> part_price(4560, starting_rates())
    9500
    """
    if cost_minor < 0:
        raise ValueError(f"cost_minor: 0 or more is accepted; got {cost_minor}")
    tax = 1 + rates.tax_rate if rates.prices_include_tax else Fraction(1)
    return money.half_up(cost_minor / (1 - rates.parts_margin) * tax)


def labour(title: str, minutes: int, rates: ShopRates) -> Charge:
    """Labour by the minute at the shop's hour.

    Parameters
    ----------
    title : str
        What is done, as the customer reads it **[-]**.
    minutes : int
        Time it takes **[min]**, 0 or more.
    rates : ShopRates
        The hour **[minor unit/h]**.

    Returns
    -------
    Charge
        One line of labour **[minor unit]**.

    Raises
    ------
    ValueError
        The minutes are negative.

    Source
    ------
    Arithmetic: minutes times hourly rate over 60.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> labour("Free the seized bearing", 35, starting_rates()).unit_minor
    35000
    """
    if minutes < 0:
        raise ValueError(f"minutes: 0 or more is accepted; got {minutes}")
    return Charge("labour", title, money.half_up(Fraction(minutes * rates.hourly_minor, 60)), minutes=minutes)


def price(charges: Sequence[Charge], rates: ShopRates, *, deposit_minor: int = 0) -> Priced:
    """Turn charges into lines with tax and a total that the lines add back to exactly.

    Parameters
    ----------
    charges : sequence of Charge
        What is to be paid for **[minor unit]**, in the order of the paper; a discount is negative.
    rates : ShopRates
        Tax, how prices are stated, where tax is rounded, legal ceiling **[-]**.
    deposit_minor : int
        Already paid **[minor unit]**, 0 or more.

    Returns
    -------
    Priced
        Lines and totals **[minor unit]**, one line a charge.

    Raises
    ------
    ValueError
        The deposit is negative.

    Notes
    -----
    Each line is rounded half up. On the "document" basis the tax is rounded once on the sum and shared out
    over the lines by largest remainder; on the "line" basis each line's tax is rounded and summed: 3 lines
    of 0.33 at 20 % give 0.20 and 0.21.

    Source
    ------
    EN 16931 BR-CO-10, BR-CO-17, BR-DEC (order of rounding).

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> priced = price([Charge("tier", "Common tune", 52000)], starting_rates())
    >>> priced.total_minor, priced.tax_minor, priced.ceiling_minor
    (52000, 10400, 59800)
    """
    if deposit_minor < 0:
        raise ValueError(f"deposit_minor: 0 or more is accepted; got {deposit_minor}")
    stated = [money.half_up(charge.quantity * charge.unit_minor) for charge in charges]
    taxes = _taxes(stated, rates)
    lines = tuple(_line(c, amount, tax, rates) for c, amount, tax in zip(charges, stated, taxes, strict=True))
    total = sum(line.gross_minor for line in lines)
    return Priced(
        lines=lines,
        net_minor=sum(line.net_minor for line in lines),
        tax_minor=sum(taxes),
        total_minor=total,
        deposit_minor=deposit_minor,
        due_minor=total - deposit_minor,
        minutes=sum(line.minutes for line in lines),
        ceiling_minor=ceiling(total, rates),
        currency=rates.currency,
    )


def ceiling(estimate_minor: int, rates: ShopRates) -> int | None:
    """The most a bill may come to after this estimate, where the law of the place caps it.

    Parameters
    ----------
    estimate_minor : int
        What was quoted **[minor unit]**.
    rates : ShopRates
        The legal ceiling as a share over the estimate **[-]**, or none.

    Returns
    -------
    int or None
        Highest bill **[minor unit]**, rounded down so that it is never passed; None where no law caps it.

    Source
    ------
    A shop setting; the share shipped is one country's example, not legal advice.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> ceiling(110400, starting_rates())
    126960
    """
    if rates.legal_ceiling is None:
        return None
    return (estimate_minor * (1 + rates.legal_ceiling)).__floor__()


def compared_with_trade(priced: Priced, tier_key: str, rates: ShopRates) -> str:
    """One sentence that sets the work's price beside what the trade commonly asks for such work.

    Parameters
    ----------
    priced : Priced
        The job **[minor unit]**.
    tier_key : str
        The tier whose customary ask is the measure **[-]**.
    rates : ShopRates
        The tiers and the shop's exchange **[minor unit/USD]**.

    Returns
    -------
    str
        The sentence, with its mark **[-]**.

    Raises
    ------
    KeyError
        No tier has that key.

    Source
    ------
    Customary asks: common practice, no source.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> tune = price([Charge("tier", "Common tune", 52000)], starting_rates())
    >>> compared_with_trade(tune, "common", starting_rates()).removeprefix("Work alone: 520.00 kr. ")
    'The trade commonly asks about 50 USD for a common tune, here 500.00 kr (no source): about 4 % more.'
    """
    tier = rates.tier(tier_key)
    low, high = tier.customary_usd
    asked = sum(line.gross_minor for line in priced.lines if line.kind in ("tier", "labour", "discount"))
    span = [money.show(x * rates.minor_per_usd, rates.money_mark, rates.minor_per_major) for x in (low, high)]
    here = span[0] if low == high else " to ".join(span)
    ours = money.show(asked, rates.money_mark, rates.minor_per_major)
    return (
        f"Work alone: {ours}. The trade commonly asks {tier.customary_words}, here {here} (no source): "
        f"{_beside(asked, low * rates.minor_per_usd, high * rates.minor_per_usd)}."
    )


def _beside(asked: int, low: int, high: int) -> str:
    if low <= asked <= high or high == 0:
        return "inside that" if low != high else "the same"
    nearest = low if asked < low else high
    share = money.half_up(Fraction(100 * abs(asked - nearest), nearest))
    return f"about {share} % {'less' if asked < low else 'more'}"


def _taxes(stated: Sequence[int], rates: ShopRates) -> tuple[int, ...]:
    share = rates.tax_rate / (1 + rates.tax_rate) if rates.prices_include_tax else rates.tax_rate
    if rates.tax_basis == "line":
        return tuple(money.half_up(amount * share) for amount in stated)
    return money.shared_out(money.half_up(sum(stated) * share), stated)


def _line(charge: Charge, stated: int, tax: int, rates: ShopRates) -> Line:
    net = stated - tax if rates.prices_include_tax else stated
    cost = money.half_up(charge.quantity * charge.cost_minor)
    return Line(charge.kind, charge.title, charge.quantity, net, tax, net + tax, charge.minutes, cost)
