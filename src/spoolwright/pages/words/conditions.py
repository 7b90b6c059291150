"""The conditions of a reading in words: what makes it comparable with another one."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from spoolwright.pages.words import shown
from spoolwright.sheets.drag_setting import STAR, DragSetting

NTH = ("", "first", "second", "third", "fourth", "fifth", "sixth")
COUNTS = ("", "one", "two", "three", "four", "five", "six")


def in_words(conditions: Mapping[str, Any], system: str, setting: DragSetting = STAR) -> str:
    """ "line on, radius 23.5 mm, second pull of three, 19 °C"; empty where nothing was written down."""
    said = _SAID | {"star_turns": lambda c, _: _stands(c["star_turns"], setting)}
    told = (said[key](conditions, system) for key in said if conditions.get(key) not in (None, ""))
    return ", ".join(filter(None, told))


def nth(number: int) -> str:
    return NTH[number] if 0 < number < len(NTH) else f"number {number}"


def _pull(conditions: Mapping[str, Any], _: str) -> str:
    number, of = conditions["pull_number"], conditions.get("pulls_of")
    if not of or of == 1:
        return "one pull" if number == 1 else f"{nth(number)} pull"
    return f"{nth(number)} pull of {COUNTS[of] if of < len(COUNTS) else of}"


def _stands(turns: float, setting: DragSetting) -> str:
    if setting.is_lever:
        return setting.stands(turns)
    return f"{setting.at(turns)} of the {setting.control} from free"


def _brakes(conditions: Mapping[str, Any], _: str) -> str:
    return "no brakes fitted" if conditions["brakes"] == "none" else f"brakes {conditions['brakes']}"


_SAID = {
    "place_measured": lambda c, _: str(c["place_measured"]),
    "line": lambda c, _: f"line {c['line']}",
    "radius": lambda c, system: f"radius {shown.quantity(c['radius'], 'length', system)}",
    "star_turns": lambda c, _: _stands(c["star_turns"], STAR),
    "pull_number": _pull,
    "brakes": _brakes,
    "lubricant_state": lambda c, _: str(c["lubricant_state"]),
    "anti_reverse_cold": lambda c, _: "anti-reverse cold" if c["anti_reverse_cold"] else "anti-reverse warm",
    "temperature": lambda c, system: shown.quantity(c["temperature"], "temperature", system),
}
