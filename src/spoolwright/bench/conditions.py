"""What a reading was taken under. A reading without its conditions cannot be compared with any other."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from spoolwright.bench.unreadable import Unreadable
from spoolwright.quantities import read as read_quantity
from spoolwright.sheets import reading_kinds

Condition = float | int | bool | str

LONGEST_WORDS = 200
"""Characters of a condition that is told in words."""


class MissingCondition(Unreadable):
    """Conditions that the kind of reading needs were not given; `missing` holds their keys."""

    def __init__(self, title: str, missing: tuple[str, ...]) -> None:
        self.missing = missing
        named = "; ".join(reading_kinds.CONDITIONS[key] for key in missing)
        super().__init__("the reading is not comparable without its conditions", title, f"also {named}")


@dataclass(frozen=True)
class Conditions:
    """Conditions by key, in SI where they are quantities: line, radius, brakes, temperature and so on."""

    values: Mapping[str, Condition]

    def __getitem__(self, key: str) -> Condition:
        return self.values[key]


def read(kind: str, typed: Mapping[str, str]) -> Conditions:
    """Read the conditions that were typed beside a reading.

    Parameters
    ----------
    kind : str
        Id of a kind of reading [-].
    typed : mapping of str to str
        What was typed for each condition key [-]; empty texts count as not given.

    Returns
    -------
    Conditions
        All that were given [m, K and plain numbers], those the kind needs among them.

    Raises
    ------
    MissingCondition
        Conditions that the kind needs and that were not given, all of them at once.
    NotAQuantity
        A radius or a temperature that cannot be read, with what is accepted.
    Unreadable
        An unknown condition, a word that is not one of the accepted ones, a pull that is not one of so many.
    KeyError
        A kind that is not listed.

    Source
    ------
    Which conditions a kind needs: `sheets.reading_kinds`.

    Examples
    --------
    >>> read("spin_time", {"line": "off", "brakes": "none", "temperature": "20 °C"})["temperature"]
    293.15
    """
    asked = reading_kinds.kind(kind)
    given = {key: text.strip() for key, text in typed.items() if text.strip()}
    for key in given:
        if key not in _READERS:
            raise Unreadable(f"“{key}” is no condition of a reading", asked.title, ", ".join(_READERS))
    missing = tuple(key for key in asked.conditions if key not in given)
    if missing:
        raise MissingCondition(asked.title, missing)
    values = {key: _READERS[key](key, text) for key, text in given.items()}
    _check_pulls(values)
    return Conditions(MappingProxyType(values))


def _check_pulls(values: Mapping[str, Condition]) -> None:
    number, of = values.get("pull_number"), values.get("pulls_of")
    if isinstance(number, int) and isinstance(of, int) and number > of:
        raise Unreadable(f"pull {number} of {of} cannot be", reading_kinds.CONDITIONS["pull_number"])


def _word(*accepted: str) -> Callable[[str, str], Condition]:
    def one_of(key: str, text: str) -> Condition:
        word = text.lower()
        if word not in accepted:
            raise Unreadable(f"“{text}” is not known", reading_kinds.CONDITIONS[key], ", ".join(accepted))
        return word

    return one_of


def _quantity(dimension: str) -> Callable[[str, str], Condition]:
    def positive(key: str, text: str) -> Condition:
        value = read_quantity(text, dimension)
        if value <= 0:
            raise Unreadable(f"“{text}” is not above zero", reading_kinds.CONDITIONS[key])
        return value

    return positive


def _count(key: str, text: str) -> Condition:
    value = int(read_quantity(text, "count"))
    if value < 1:
        raise Unreadable(f"“{text}” is no pull", reading_kinds.CONDITIONS[key], "1, 2, 3 and so on")
    return value


def _turns(key: str, text: str) -> Condition:
    value = read_quantity(text, "ratio")
    if value < 0 or "%" in text:
        accepted = "turns of the star from free, such as 2 or 1 3/4"
        raise Unreadable(f"“{text}” is no number of turns", reading_kinds.CONDITIONS[key], accepted)
    return value


def _cold(key: str, text: str) -> Condition:
    return _word("cold", "warm")(key, text) == "cold"


def _words(key: str, text: str) -> Condition:
    if len(text) > LONGEST_WORDS:
        reason = f"the words are longer than {LONGEST_WORDS} characters"
        raise Unreadable(reason, reading_kinds.CONDITIONS[key])
    return text


_READERS: Mapping[str, Callable[[str, str], Condition]] = MappingProxyType(
    {
        "line": _word("on", "off"),
        "radius": _quantity("length"),
        "brakes": _word("on", "off", "none"),
        "temperature": _quantity("temperature"),
        "pull_number": _count,
        "pulls_of": _count,
        "star_turns": _turns,
        "lubricant_state": _words,
        "anti_reverse_cold": _cold,
        "place_measured": _words,
    }
)
