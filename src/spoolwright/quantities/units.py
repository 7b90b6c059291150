"""What a unit and a dimension are; the closed table of them is in table.py."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from types import MappingProxyType

_UNIT_MARKS = str.maketrans({"²": "2", "³": "3", "µ": "μ", "℃": "°C", "℉": "°F", "º": "°"})
_POWER = re.compile(r"(?<=[a-z])\^(?=[0-9])")
_TIMES = re.compile(r"(?<=[A-Za-z]) ?[·⋅*] ?(?=[A-Za-z])")


def tidy_unit(text: str) -> str:
    """One spelling for the look-up: "mm²/s", "mm^2/s" and "mm2/s" are the same word."""
    return " ".join(_TIMES.sub(" ", _POWER.sub("", text.translate(_UNIT_MARKS))).split())


@dataclass(frozen=True)
class Unit:
    """One unit: how we write it, how else people write it, and SI = factor x number + offset."""

    name: str
    factor: Fraction
    spellings: tuple[str, ...] = ()
    offset: Fraction = Fraction(0)
    any_case: bool = False

    def to_si(self, number: Fraction) -> float:
        return float(self.factor * number + self.offset)


@dataclass(frozen=True)
class Dimension:
    """One kind of quantity: its name, its SI unit, the units it accepts and the ones it is shown in."""

    key: str
    title: str
    si: str
    units: tuple[Unit, ...]
    metric: tuple[str, ...]
    imperial: tuple[str, ...]
    examples: tuple[str, ...]
    plain: bool = False
    whole: bool = False
    fractions: bool = True
    lowest: float = -math.inf
    by_spelling: Mapping[str, Unit] = field(init=False, repr=False, compare=False)
    by_folded: Mapping[str, Unit] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        exact = {tidy_unit(word): unit for unit in self.units for word in (unit.name, *unit.spellings)}
        folded = {word.casefold(): unit for word, unit in exact.items() if unit.any_case}
        object.__setattr__(self, "by_spelling", MappingProxyType(exact))
        object.__setattr__(self, "by_folded", MappingProxyType(folded))

    @property
    def accepted(self) -> str:
        """What may be typed: 'a pull such as "18 lb" or "8.2 kg" (units: kg, g, lb, ...)'."""
        shown = " or ".join(f'"{example}"' for example in self.examples)
        names = ", ".join(unit.name for unit in self.units if unit.name)
        plain = "a plain number" if self.plain else ""
        units = "; ".join(part for part in (plain, f"units: {names}" if names else "") if part)
        return f"{self.title} such as {shown} ({units})"

    def unit(self, name: str) -> Unit:
        """The unit that is written so, or KeyError."""
        word = tidy_unit(name)
        found = self.by_spelling.get(word) or self.by_folded.get(word.casefold())
        if found is None:
            raise KeyError(f"{name!r} is not a unit of {self.key}: {self.accepted}")
        return found
