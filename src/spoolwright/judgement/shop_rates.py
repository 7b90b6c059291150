"""What a shop charges by: its hour, its tiers, its tax, its margin, its own price list for parts."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from functools import lru_cache
from pathlib import Path
from typing import Any, Literal

TaxBasis = Literal["document", "line"]


@dataclass(frozen=True)
class Tier:
    """A fixed price for a named amount of work; `customary`: what the trade commonly asks (no source)."""

    key: str
    title: str
    price_minor: int
    holds: str
    minutes: Mapping[str, int]
    customary_usd: tuple[int, int]
    customary_words: str


@dataclass(frozen=True)
class ShopRates:
    """Everything a price depends on besides the job; amounts are whole minor units.

    `prices_include_tax` says how every amount here is stated. `tax_basis` says where tax is rounded: once
    on the document, or on each line. `parts_margin` is a share of the selling price, not a mark-up on cost.
    """

    currency: str
    minor_per_major: int
    hourly_minor: int
    tax_rate: Fraction
    prices_include_tax: bool
    parts_margin: Fraction
    consumables_minor: int
    post_minor: int
    legal_ceiling: Fraction | None
    mark: str = ""
    legal_ceiling_words: str = ""
    tax_basis: TaxBasis = "document"
    minor_per_usd: int = 100
    tiers: tuple[Tier, ...] = ()
    own_prices: Mapping[str, int] = field(default_factory=dict)

    def __post_init__(self) -> None:
        _refuse_bad_rates(self)

    @property
    def money_mark(self) -> str:
        """What stands behind an amount: the shop's own mark, else the currency code."""
        return self.mark or self.currency

    def tier(self, key: str) -> Tier:
        """The tier of that key; KeyError with the known keys for any other."""
        for tier in self.tiers:
            if tier.key == key:
                return tier
        raise KeyError(f"no tier {key!r}; known are {', '.join(tier.key for tier in self.tiers) or 'none'}")


def _refuse_bad_rates(rates: ShopRates) -> None:
    if rates.minor_per_major not in (1, 10, 100, 1000):
        raise ValueError(f"minor_per_major: 1, 10, 100 or 1000 is accepted; got {rates.minor_per_major}")
    if not 0 <= rates.tax_rate < 1:
        raise ValueError(f"tax_rate: a share from 0 up to below 1 is accepted; got {rates.tax_rate}")
    if not 0 <= rates.parts_margin < 1:
        raise ValueError(f"parts_margin: a share from 0 up to below 1 is accepted; got {rates.parts_margin}")
    if rates.legal_ceiling is not None and rates.legal_ceiling < 0:
        raise ValueError(
            f"legal_ceiling: a share of 0 or more, or none, is accepted; got {rates.legal_ceiling}"
        )
    if rates.tax_basis not in ("document", "line"):
        raise ValueError(f'tax_basis: "document" or "line" is accepted; got {rates.tax_basis!r}')
    for name in ("hourly_minor", "consumables_minor", "post_minor", "minor_per_usd"):
        if getattr(rates, name) < 0:
            raise ValueError(
                f"{name}: whole minor units, none negative, are accepted; got {getattr(rates, name)}"
            )


def _tier_from(row: Mapping[str, Any]) -> Tier:
    low, high = row["customary_usd"]
    return Tier(**{**row, "minutes": dict(row["minutes"]), "customary_usd": (low, high)})


@lru_cache(maxsize=1)
def starting_rates() -> ShopRates:
    """The rates that a shop starts with, read from rates.toml; a shop's own settings take their place.

    Returns
    -------
    ShopRates
        Amounts **[minor unit]**, shares **[-]**.

    Source
    ------
    The demo workshop's invented sums; customary asks are common practice, no source.

    Examples
    --------
    >>> starting_rates().tier("common").price_minor
    52000
    """
    table = tomllib.loads((Path(__file__).parent / "rates.toml").read_text(encoding="utf-8"))
    for key in ("tax_rate", "parts_margin", "legal_ceiling"):
        table[key] = Fraction(table[key])
    table["tiers"] = tuple(_tier_from(row) for row in table["tiers"])
    return ShopRates(**table)
