"""May two readings stand side by side? What parts them, in words; nothing where they may."""

from __future__ import annotations

from collections.abc import Mapping
from math import isclose

from spoolwright import quantities
from spoolwright.judgement.taken import Condition

RADIUS_SLACK = 0.03
"""How far the radius may differ before two pulls are two different readings, as a share: judgement prior."""

STAR_SLACK = 0.26
"""How far the star may stand apart, in turns: a hand sets it to a quarter (judgement prior)."""

TEMPERATURE_SLACK = 8.0
"""How far the bench may be warmer or colder [K]; oils thin by half over some twenty: judgement prior."""

SAME_WORDS = {
    "line": "the line {}",
    "brakes": "the brakes {}",
    "place_measured": "the place “{}”",
}


def apart(
    one: Mapping[str, Condition], other: Mapping[str, Condition], system: str = "metric"
) -> tuple[str, ...]:
    """The conditions by which two readings cannot be compared.

    Parameters
    ----------
    one : mapping of str to condition
        Conditions of the promise or of the first reading, by their keys **[SI]**.
    other : mapping of str to condition
        Conditions of the second reading **[SI]**; what only one of them names parts nothing.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    tuple of str
        One sentence for each condition that parts them; empty where they may stand side by side.

    Source
    ------
    A reading without its conditions is not comparable: common practice, no source. Slacks: judgement priors.

    Examples
    --------
    >>> apart({"radius": 0.0235, "line": "on"}, {"radius": 0.0185, "line": "on"})
    ('One with the line leaving at 23.5 mm, the other at 18.5 mm: pull depends on that radius.',)
    >>> apart({"radius": 0.0235}, {"radius": 0.0237})
    ()
    """
    found = [_words(one, other, key, said) for key, said in SAME_WORDS.items()]
    found += [_radius(one, other, system), _star(one, other), _cold(one, other), _warmth(one, other, system)]
    return tuple(words for words in found if words)


def _words(one: Mapping[str, Condition], other: Mapping[str, Condition], key: str, said: str) -> str:
    first, second = one.get(key), other.get(key)
    if not first or not second or str(first).casefold() == str(second).casefold():
        return ""
    return f"One with {said.format(first)}, the other with {said.format(second)}."


def _cold(one: Mapping[str, Condition], other: Mapping[str, Condition]) -> str:
    first, second = one.get("anti_reverse_cold"), other.get("anti_reverse_cold")
    if not isinstance(first, bool) or not isinstance(second, bool) or first == second:
        return ""
    return "One was tried warm, the other cold."


def _radius(one: Mapping[str, Condition], other: Mapping[str, Condition], system: str) -> str:
    pair = _numbers(one, other, "radius")
    if pair is None or isclose(*pair, rel_tol=RADIUS_SLACK):
        return ""
    first, second = (quantities.show(value, "length", system) for value in pair)
    return f"One with the line leaving at {first}, the other at {second}: pull depends on that radius."


def _star(one: Mapping[str, Condition], other: Mapping[str, Condition]) -> str:
    pair = _numbers(one, other, "star_turns")
    if pair is None or abs(pair[0] - pair[1]) <= STAR_SLACK:
        return ""
    return f"One with the star {pair[0]:g} turns from free, the other {pair[1]:g} turns."


def _warmth(one: Mapping[str, Condition], other: Mapping[str, Condition], system: str) -> str:
    pair = _numbers(one, other, "temperature")
    if pair is None or abs(pair[0] - pair[1]) <= TEMPERATURE_SLACK:
        return ""
    first, second = (quantities.show(value, "temperature", system) for value in pair)
    return f"One at {first}, the other at {second}: oil and grease are another stuff by then."


def _numbers(
    one: Mapping[str, Condition], other: Mapping[str, Condition], key: str
) -> tuple[float, float] | None:
    first, second = one.get(key), other.get(key)
    if isinstance(first, bool) or isinstance(second, bool):
        return None
    if not isinstance(first, int | float) or not isinstance(second, int | float):
        return None
    return float(first), float(second)
