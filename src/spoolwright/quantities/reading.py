"""Reads one number with one unit out of what somebody typed, or says exactly why it will not."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from spoolwright.quantities.table import DIMENSIONS
from spoolwright.quantities.units import Dimension, Unit, tidy_unit

LONGEST = 64
"""Characters; what is longer is no quantity, and the reader's time stays bounded."""

BIGGEST_EXPONENT = 30

_PLAIN_MARKS = str.maketrans(
    {
        "\u2212": "-",
        "\u2013": "-",
        "\u00a0": " ",
        "\u202f": " ",
        "\u2009": " ",
        "\u2007": " ",
        "\t": " ",
        "\u2044": "/",
    }
)
_VULGAR = {"½": " 1/2", "¼": " 1/4", "¾": " 3/4", "⅛": " 1/8", "⅜": " 3/8", "⅝": " 5/8", "⅞": " 7/8"} | {
    "⅓": " 1/3",
    "⅔": " 2/3",
}
_FRACTION = re.compile(
    r"(?P<sign>[+-]?)(?:(?P<whole>[0-9]{1,6}) +)?(?P<top>[0-9]{1,4})/(?P<under>[0-9]{1,4})"
)
_DECIMAL = re.compile(r"[+-]?(?:[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)(?:[eE][+-]?[0-9]{1,3}(?![0-9.,]))?")
_THOUSANDS_COMMA = re.compile(r"[+-]?[1-9][0-9]{0,2}(?:,[0-9]{3})+(?![0-9.])")
_THOUSANDS_GAP = re.compile(r"[+-]?[1-9][0-9]{0,2}(?: [0-9]{3})+(?![0-9/])")
_DIGIT = re.compile(r"[0-9]")


class NotAQuantity(ValueError):
    """What was typed cannot be read as one quantity of the kind that is needed."""

    def __init__(self, typed: str, reason: str, accepted: str) -> None:
        self.typed = typed
        self.reason = reason
        self.accepted = accepted
        super().__init__(f"“{_clip(typed)}” {reason}. Accepted: {accepted}.")


@dataclass(frozen=True)
class Typed:
    """A quantity as typed: SI value, the unit's name, and what one step of the last digit is worth in SI."""

    value: float
    unit: str
    resolution: float


def read(text: str, dimension: str) -> float:
    """The SI value of `text`, read as a quantity of this dimension.

    Raises `NotAQuantity` with what was typed, why it was refused and what is accepted.
    """
    return read_typed(text, dimension).value


def read_typed(text: str, dimension: str) -> Typed:
    """As `read`, and keeps the unit that was typed and the step of its last digit."""
    kind = DIMENSIONS[dimension]
    if not isinstance(text, str):
        raise NotAQuantity(str(text), _not_text(text), kind.accepted)
    if len(text) > LONGEST:
        raise NotAQuantity(text, f"is longer than {LONGEST} characters", kind.accepted)
    clean = _clean(text)
    if not clean:
        raise NotAQuantity(text, "is empty", kind.accepted)
    number, step, rest = _number(text, clean, kind)
    unit = _unit(text, rest, kind)
    value = unit.to_si(number)
    _guard(text, number, value, kind)
    return Typed(value, unit.name, float(unit.factor * step))


def _not_text(text: object) -> str:
    if isinstance(text, (int, float)) and not isinstance(text, bool):
        return "is a bare number; write it as text with its unit"
    return f"is not text but {type(text).__name__}"


def _clean(text: str) -> str:
    for mark, spelled in _VULGAR.items():
        text = text.replace(mark, spelled)
    return " ".join(text.translate(_PLAIN_MARKS).split(" ")).strip()


def _number(text: str, clean: str, kind: Dimension) -> tuple[Fraction, Fraction, str]:
    """Number, step of the last digit, and what follows the number."""
    _refuse_thousands(text, clean, kind)
    fraction = _FRACTION.match(clean)
    if fraction:
        return (*_from_fraction(text, fraction, kind), clean[fraction.end() :])
    decimal = _DECIMAL.match(clean)
    if not decimal:
        raise NotAQuantity(text, "does not begin with a number", kind.accepted)
    return (*_from_decimal(text, decimal.group(), kind), clean[decimal.end() :])


def _refuse_thousands(text: str, clean: str, kind: Dimension) -> None:
    comma = _THOUSANDS_COMMA.match(clean)
    if comma:
        bare = comma.group().replace(",", "")
        pointed = comma.group().replace(",", ".", 1)
        reason = f"could be {bare} or {pointed}; write one of these two"
        if "," in pointed:
            reason = f"has commas inside the number; write {bare} if that is meant"
        raise NotAQuantity(text, reason, kind.accepted)
    gap = _THOUSANDS_GAP.match(clean)
    if gap:
        reason = f"has a gap inside the number; write {gap.group().replace(' ', '')} if that is meant"
        raise NotAQuantity(text, reason, kind.accepted)


def _from_fraction(text: str, found: re.Match[str], kind: Dimension) -> tuple[Fraction, Fraction]:
    if not kind.fractions:
        raise NotAQuantity(text, "is a fraction", kind.accepted)
    top, under = int(found["top"]), int(found["under"])
    if under == 0:
        raise NotAQuantity(text, "divides by nothing", kind.accepted)
    if found["whole"] and top >= under:
        raise NotAQuantity(text, "is not a whole number with a proper fraction", kind.accepted)
    value = int(found["whole"] or 0) + Fraction(top, under)
    return (-value if found["sign"] == "-" else value), Fraction(1, under)


def _from_decimal(text: str, word: str, kind: Dimension) -> tuple[Fraction, Fraction]:
    mantissa, _, exponent = word.lower().replace(",", ".").partition("e")
    power = int(exponent or 0)
    if abs(power) > BIGGEST_EXPONENT:
        raise NotAQuantity(text, f"has an exponent beyond {BIGGEST_EXPONENT}", kind.accepted)
    decimals = len(mantissa.partition(".")[2])
    return Fraction(mantissa) * Fraction(10) ** power, Fraction(10) ** (power - decimals)


def _unit(text: str, rest: str, kind: Dimension) -> Unit:
    word = tidy_unit(rest)
    found = kind.by_spelling.get(word) or kind.by_folded.get(word.casefold())
    if found is not None:
        return found
    if not word:
        raise NotAQuantity(text, "has no unit", kind.accepted)
    raise NotAQuantity(text, _why_not(word, kind), kind.accepted)


def _why_not(word: str, kind: Dimension) -> str:
    others = [d.title for d in DIMENSIONS.values() if word and word in d.by_spelling and d.key != kind.key]
    if others:
        return f"is {others[0]}, not {kind.title}"
    if "±" in word or "+/-" in word:
        return "states an uncertainty; write the value alone"
    if "'" in word or '"' in word:
        return "uses ' or \" for feet and inches; write ft or in"
    if word[0] in ".,":
        return "has a decimal mark in the wrong place"
    if _DIGIT.search(word.translate({ord(c): None for c in "23"})) or word[0].isdigit() or word[0] == "/":
        return "is more than one number with one unit"
    return f"has the unit “{_clip(word)}”, which is not known here"


def _guard(text: str, number: Fraction, value: float, kind: Dimension) -> None:
    if kind.whole and number.denominator != 1:
        raise NotAQuantity(text, "is not a whole number", kind.accepted)
    if value < kind.lowest:
        raise NotAQuantity(text, f"is below the lowest {kind.title.split(' ', 1)[1]} there is", kind.accepted)


def _clip(text: str) -> str:
    return text if len(text) <= 40 else text[:39] + "…"
