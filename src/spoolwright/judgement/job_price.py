"""What do these works come to? The cheapest tier that carries them, minutes outside it, parts, post."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from spoolwright.judgement import money
from spoolwright.judgement.price import Charge, Priced, labour, part_price, price
from spoolwright.judgement.shop_rates import ShopRates, Tier
from spoolwright.judgement.works import PartNeeded, Work

OPENS = "strip-and-wash"


@dataclass(frozen=True)
class JobPrice:
    """A set of works with its price; parts whose price is not on the shop's list make it a range."""

    tier: str
    minutes: int
    priced: Priced
    low_minor: int
    high_minor: int
    sureness: tuple[str, ...]
    only_if: tuple[str, ...]


@dataclass(frozen=True)
class Before:
    """What the customer said yes to before: the tier that is paid for, the works, the sum."""

    tier: str = ""
    works: tuple[str, ...] = ()
    total_minor: int = 0

    @property
    def is_anything(self) -> bool:
        """Whether this is asked besides something that was agreed."""
        return bool(self.tier or self.works)


NOTHING_BEFORE = Before()


def price_of(
    works: Sequence[Work],
    kind: str,
    rates: ShopRates,
    *,
    posted: bool = True,
    more: Sequence[Charge] = (),
    before: Before = NOTHING_BEFORE,
) -> JobPrice:
    """Price a set of works on one kind of reel.

    Parameters
    ----------
    works : sequence of Work
        The works, in the order of the list **[-]**.
    kind : str
        Kind of reel **[-]**, as on its sheet.
    rates : ShopRates
        Tiers, hour, margin, own price list **[minor unit]**.
    posted : bool
        Whether it goes home by post **[-]**.
    more : sequence of Charge
        Lines that somebody added by hand **[minor unit]**, after the parts.
    before : Before
        What was agreed before **[-]**: an extra that its tier holds costs its parts only, and post and
        consumables are on the first bill.

    Returns
    -------
    JobPrice
        Minutes **[min]**, lines and totals **[minor unit]**.

    Notes
    -----
    Of the tiers that hold any of the works, the one that comes out cheapest for the customer is taken;
    plain hours where no tier holds any, or where a small work alone is cheaper by the hour. Works inside the
    tier cost their parts only; the rest is charged by its minutes, shorter where the reel lies stripped
    anyway. A tier that is paid for is not charged again.

    Source
    ------
    Tiers and their contents: common practice, no source; minutes and costs of parts: judgement priors.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> from spoolwright.judgement.works import chosen
    >>> works = chosen(["strip-and-wash", "regrease-gears", "new-pawl"], "round multiplier")
    >>> price_of(works, "round multiplier", starting_rates()).priced.total_minor
    74400
    >>> cog = chosen(["new-idler-cog"], "round multiplier")
    >>> before = Before("common", ("strip-and-wash",))
    >>> price_of(cog, "round multiplier", starting_rates(), posted=False, before=before).priced.total_minor
    6500
    """
    opened = OPENS in {*before.works, *(work.id for work in works)}
    tier, work_charges = _work_charges(works, kind, rates, before, opened)
    parts = [part for work in works for part in work.parts]
    middle, low, high = (
        [_part(p, rates, at) for p in parts if p.sure != "only if"] for at in _MIDDLE_LOW_HIGH
    )
    rest = list(more) if before.is_anything else [*more, *_rest(rates, posted)]
    priced = price([*work_charges, *middle, *rest], rates)
    return JobPrice(
        tier=tier.key if tier else "",
        minutes=sum(work.minutes(kind, reel_is_open=opened) for work in works),
        priced=priced,
        low_minor=price([*work_charges, *low, *rest], rates).total_minor,
        high_minor=price([*work_charges, *high, *rest], rates).total_minor,
        sureness=_sureness(work_charges, parts, rest),
        only_if=tuple(_only_if(part, rates) for part in parts if part.sure == "only if"),
    )


_MIDDLE_LOW_HIGH = (Fraction(1, 2), Fraction(0), Fraction(1))


def _work_charges(
    works: Sequence[Work], kind: str, rates: ShopRates, before: Before, opened: bool
) -> tuple[Tier | None, list[Charge]]:
    if before.is_anything:
        outside = [work for work in works if before.tier not in work.within]
        return _by_tier(outside, kind, rates, None, opened)
    ways: list[Tier | None] = [tier for tier in rates.tiers if any(tier.key in work.within for work in works)]
    # A single small work is no tune: without the work that opens or cleans a reel hours may be the cheaper.
    if not ways or all(work.role != "base" for work in works):
        ways.append(None)
    return min(
        (_by_tier(works, kind, rates, tier, opened) for tier in ways),
        key=lambda pair: sum(charge.unit_minor for charge in pair[1]),
    )


def _by_tier(
    works: Sequence[Work], kind: str, rates: ShopRates, tier: Tier | None, opened: bool
) -> tuple[Tier | None, list[Charge]]:
    inside = [work for work in works if tier is not None and tier.key in work.within]
    outside = [work for work in works if work not in inside]
    charges = [labour(work.title, work.minutes(kind, reel_is_open=opened), rates) for work in outside]
    charges = [charge for charge in charges if charge.minutes]
    if tier is None:
        return None, charges
    minutes = sum(work.minutes(kind, reel_is_open=opened) for work in inside)
    return tier, [Charge("tier", tier.title, tier.price_minor, minutes=minutes), *charges]


def _cost(part: PartNeeded, rates: ShopRates, at: Fraction) -> int:
    low, high = (Fraction(end) for end in part.sells_usd)
    return money.half_up((low + at * (high - low)) * rates.minor_per_usd * (1 - rates.parts_margin))


def part_selling(part: PartNeeded, rates: ShopRates, at: Fraction = Fraction(1, 2)) -> int:
    """What one of a part is sold for: by the shop's own list, else from what it usually costs.

    Parameters
    ----------
    part : PartNeeded
        The part **[-]**.
    rates : ShopRates
        Margin and own price list **[minor unit]**.
    at : Fraction
        Where in the usual range its cost is taken **[-]**, 0 to 1.

    Returns
    -------
    int
        Price of one **[minor unit]**, as the shop states its prices.

    Source
    ------
    Usual prices of parts: judgement priors.

    Examples
    --------
    >>> from spoolwright.judgement.shop_rates import starting_rates
    >>> part_selling(PartNeeded("pawl", 1, (4, 9)), starting_rates())
    9500
    """
    selling = rates.own_prices.get(part.name)
    return part_price(_cost(part, rates, at), rates) if selling is None else selling


def _part(part: PartNeeded, rates: ShopRates, at: Fraction) -> Charge:
    cost, unit = _cost(part, rates, at), part_selling(part, rates, at)
    title = f"{part.name[0].upper()}{part.name[1:]}"
    return Charge("part", title, unit, quantity=Fraction(part.count), cost_minor=cost)


def _only_if(part: PartNeeded, rates: ShopRates) -> str:
    unit = _part(part, rates, Fraction(1, 2)).unit_minor
    return f"{part.name}, only if needed: {money.show(unit, rates.money_mark, rates.minor_per_major)}"


def _rest(rates: ShopRates, posted: bool) -> list[Charge]:
    rest = []
    if rates.consumables_minor:
        used = Charge("consumables", "Oils, cleaners, bags", rates.consumables_minor)
        rest.append(used)
    if posted and rates.post_minor:
        rest.append(Charge("post", "Post", rates.post_minor))
    return rest


def _sureness(
    work_charges: Sequence[Charge], parts: Sequence[PartNeeded], rest: Sequence[Charge]
) -> tuple[str, ...]:
    charged = [part.sure for part in parts if part.sure != "only if"]
    return (*("sure" for _ in work_charges), *charged, *("sure" for _ in rest))
