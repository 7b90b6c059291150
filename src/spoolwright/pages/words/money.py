"""Money between whole minor units and what a person types or reads."""

from __future__ import annotations

import re
from decimal import Decimal

from spoolwright.judgement import money

SPACES = re.compile(r"[\s\u00a0\u202f']")
AMOUNT = re.compile(r"(?P<major>[0-9]{1,3}(?:,[0-9]{3})+|[0-9]+)(?:[.,](?P<minor>[0-9]+))?")
LARGEST_MINOR = 10**13


class NotAnAmount(ValueError):
    """What was typed cannot be read as an amount in the shop's currency."""


def show(minor: int | None, mark: str, minor_digits: int) -> str:
    """ "1,269.60 kr"; a sum not known is a dash."""
    if minor is None:
        return "–"
    return money.show(minor, mark, 10**minor_digits).replace(" ", "\u00a0")


def read(text: str, mark: str, currency: str, minor_digits: int) -> int:
    """Whole minor units of "1,200 kr", "1200", "1 200,50 NOK". Raises NotAnAmount with what is accepted."""
    bare = without_mark(text, mark, currency)
    found = AMOUNT.fullmatch(SPACES.sub("", bare))
    if not found:
        raise refusal(text, "is not an amount", mark, minor_digits)
    decimals = found["minor"] or ""
    if len(decimals) > minor_digits:
        raise refusal(text, "has more decimals than the currency", mark, minor_digits)
    rest = int(decimals.ljust(minor_digits, "0") or 0)
    return whole(found["major"].replace(",", ""), minor_digits, text, mark) + rest


def without_mark(text: str, mark: str, currency: str) -> str:
    bare = text.strip()
    for word in (mark, currency):
        if word and bare.casefold().endswith(word.casefold()):
            return bare[: -len(word)].strip()
        if word and bare.casefold().startswith(word.casefold()):
            return bare[len(word) :].strip()
    return bare


def whole(digits: str, minor_digits: int, text: str, mark: str) -> int:
    minor = int(Decimal(digits).scaleb(minor_digits)) if len(digits) < 15 else LARGEST_MINOR + 1
    if minor > LARGEST_MINOR:
        raise refusal(text, "is more than any reel costs", mark, minor_digits)
    return minor


def refusal(text: str, why: str, mark: str, minor_digits: int) -> NotAnAmount:
    with_decimals = f", 1,269.{'6'.ljust(minor_digits, '0')} {mark}" if minor_digits else ""
    return NotAnAmount(f"“{text[:60]}” {why}. Accepted: 1,200 {mark}, 1200{with_decimals}.")
