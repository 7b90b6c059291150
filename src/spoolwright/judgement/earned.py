"""What does this job really earn an hour, and what does an hour at this bench cost?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from spoolwright.judgement import money
from spoolwright.judgement.price import Priced
from spoolwright.judgement.shop_rates import ShopRates

OFFICE_MINUTES = {"open and count": 4, "photos": 3, "ask": 5, "pick parts": 3, "bill": 4, "pack": 6}
"""Minutes of a posted job away from the bench, a third of the whole: judgement prior."""

_AT_THE_COUNTER = ("photos", "ask", "pick parts", "bill")


@dataclass(frozen=True)
class Earned:
    """What is left for the hands after tax, parts, post and consumables, and what it makes an hour."""

    left_minor: int
    minutes: int
    per_hour_minor: int
    needed_per_hour_minor: int
    short_minor: int
    words: str


def working_hours(days_off: Sequence[int], hours_a_day: Fraction, days: int = 365) -> Fraction:
    """Paid hours of one person in a year.

    Parameters
    ----------
    days_off : sequence of int
        Weekends, leave, sick days, public holidays **[day]**, none negative.
    hours_a_day : Fraction
        Working hours of a day **[h]**.
    days : int
        Days to start from **[day]**, 365 for a calendar year.

    Returns
    -------
    Fraction
        Hours in the year **[h]**.

    Raises
    ------
    ValueError
        More days off than days.

    Source
    ------
    Professional-practice note on charge-out rates (opened).

    Examples
    --------
    >>> float(working_hours([104, 20, 10, 10], Fraction("7.5")))
    1657.5
    """
    left = days - sum(days_off)
    if left < 0:
        raise ValueError(f"days_off: at most {days} days in all are accepted; got {sum(days_off)}")
    return left * Fraction(hours_a_day)


def hourly_cost(yearly_minor: int, hours: Fraction, billable: Fraction = Fraction(1)) -> Fraction:
    """What a billed hour must bring in to carry the year's cost.

    Parameters
    ----------
    yearly_minor : int
        Wages and overhead of the year **[minor unit]**.
    hours : Fraction
        Paid hours of the year, of everybody at the bench **[h]**, more than 0.
    billable : Fraction
        Share of those hours that ends up on a bill **[-]**, above 0 up to 1.

    Returns
    -------
    Fraction
        Exact cost of a billed hour **[minor unit/h]**; round it only where it is printed.

    Raises
    ------
    ValueError
        Hours or billable share outside their range.

    Source
    ------
    Yearly cost over productive hours (opened).

    Examples
    --------
    >>> round(hourly_cost(98_000_000, Fraction(46 * 75), Fraction("0.62")) / 100)
    458
    """
    if hours <= 0:
        raise ValueError(f"hours: more than 0 is accepted; got {hours}")
    if not 0 < billable <= 1:
        raise ValueError(f"billable: a share above 0 up to 1 is accepted; got {billable}")
    return Fraction(yearly_minor) / (Fraction(hours) * Fraction(billable))


def earned(priced: Priced, minutes: int, needed_per_hour_minor: int, rates: ShopRates) -> Earned:
    """Set what a job leaves for the hands beside what the bench costs for those minutes.

    Parameters
    ----------
    priced : Priced
        The job's price **[minor unit]**.
    minutes : int
        Minutes it took or will take, office and post included **[min]**, more than 0.
    needed_per_hour_minor : int
        What a billed hour must bring in, without tax **[minor unit/h]**.
    rates : ShopRates
        How money is shown **[-]**.

    Returns
    -------
    Earned
        What is left, by the job and by the hour **[minor unit]**, and how much is missing.

    Raises
    ------
    ValueError
        The minutes are not more than 0.

    Notes
    -----
    left = net of all lines - what parts, consumables and other goods cost - post, which goes to the carrier.

    Source
    ------
    Arithmetic on the shop's own figures.

    Examples
    --------
    >>> from spoolwright.judgement.price import Charge, price
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> tune = price([Charge("tier", "Common tune", 52000)], starting_rates())
    >>> earned(tune, 62, 45815, starting_rates()).words
    'Leaves 416.00 kr for 62 minutes, 402.58 kr an hour; 458.15 kr is needed: this job is 57.42 kr short.'
    """
    if minutes <= 0:
        raise ValueError(f"minutes: more than 0 is accepted; got {minutes}")
    gone = sum(line.net_minor if line.kind == "post" else line.cost_minor for line in priced.lines)
    left = priced.net_minor - gone
    per_hour = money.half_up(Fraction(60 * left, minutes))
    short = money.half_up(Fraction(needed_per_hour_minor * minutes, 60)) - left
    return Earned(
        left, minutes, per_hour, needed_per_hour_minor, short, _words(left, minutes, per_hour, short, rates)
    )


def needed_per_hour(rates: ShopRates) -> int:
    """What an hour at this bench has to leave, taken as the hour that the shop asks, without its tax.

    Parameters
    ----------
    rates : ShopRates
        The hour and the tax **[minor unit/h]**.

    Returns
    -------
    int
        An hour without tax **[minor unit/h]**.

    Source
    ------
    Arithmetic on the shop's own figures; a shop that knows its yearly cost puts `hourly_cost` in its place.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> needed_per_hour(starting_rates())
    48000
    """
    tax = 1 + rates.tax_rate if rates.prices_include_tax else Fraction(1)
    return money.half_up(rates.hourly_minor / tax)


def job_earned(priced: Priced, bench_minutes: int, rates: ShopRates, *, posted: bool, extra: bool) -> Earned:
    """What a quoted job earns an hour, with the minutes that nobody sees at the bench.

    Parameters
    ----------
    priced : Priced
        The job's price **[minor unit]**.
    bench_minutes : int
        Minutes at the bench **[min]**, 0 or more.
    rates : ShopRates
        The hour and the tax **[minor unit/h]**.
    posted : bool
        Whether it is packed and sent **[-]**.
    extra : bool
        Whether it is asked besides a job that is under way **[-]**: then only asking costs time.

    Returns
    -------
    Earned
        What is left, by the job and by the hour **[minor unit]**, and how much is missing.

    Source
    ------
    Office minutes of a posted common tune: judgement prior.

    Examples
    --------
    >>> from spoolwright.judgement.price import Charge, price
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> tune = price([Charge("tier", "Common tune", 52000)], starting_rates())
    >>> job_earned(tune, 58, starting_rates(), posted=True, extra=False).minutes
    83
    """
    steps = ("ask",) if extra else tuple(OFFICE_MINUTES) if posted else _AT_THE_COUNTER
    office = sum(OFFICE_MINUTES[step] for step in steps)
    return earned(priced, bench_minutes + office, needed_per_hour(rates), rates)


def _words(left: int, minutes: int, per_hour: int, short: int, rates: ShopRates) -> str:
    def show(minor: int) -> str:
        return money.show(minor, rates.money_mark, rates.minor_per_major)

    needed = money.half_up(Fraction(60 * (left + short), minutes))
    end = f"{show(short)} short" if short > 0 else f"{show(-short)} to the good"
    hour = f"{show(per_hour)} an hour; {show(needed)} is needed"
    return f"Leaves {show(left)} for {minutes} minutes, {hour}: this job is {end}."
