"""Sums as a paper writes them: in the currency that stood when it was written."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from spoolwright.pages.words import money


@dataclass(frozen=True)
class Amounts:
    """`shop` is the shop's settings; another currency than the shop's own is named by its code."""

    shop: Any
    currency: str = ""

    def __call__(self, minor: int) -> str:
        own = self.currency in ("", self.shop.currency)
        mark = (self.shop.currency_mark or self.shop.currency) if own else self.currency
        sign = "− " if minor < 0 else ""
        return sign + money.show(abs(minor), mark, self.shop.minor_digits)

    def more(self, minor: int) -> str:
        """A step from one sum to another, its sign said: "+ 65.00 kr"."""
        return f"+ {self(minor)}" if minor >= 0 else self(minor)


def percent(share: Any) -> str:
    """ "25 %" of a share."""
    return f"{(share * 100).normalize():f}\u00a0%"
