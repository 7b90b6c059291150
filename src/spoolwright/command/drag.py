"""`spoolwright drag SHEET`: what pull this drag gives, by turns of its star or knob, or way of its lever."""

from __future__ import annotations

import argparse
import json
from typing import Any

from spoolwright import quantities
from spoolwright.judgement.prediction import COVERAGE, Predicted, Prediction, predict
from spoolwright.judgement.reaching import Way, ways_to_reach
from spoolwright.judgement.star_turns import TurnAdvice, star_turn_for
from spoolwright.quantities import SYSTEMS, show, show_interval
from spoolwright.sheets import drag_stack, reel_sheet
from spoolwright.sheets.drag_stack import Pair
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_remarks import remarks

SUMMARY = "say what pull a reel's drag gives, by fill and by turn of its star, knob or lever"
TYPED = 'drag SHEET [--target "18 lb"] [--json]'

_FILLS = {
    "full_spool": ("pull_full_spool", "At a full spool"),
    "half_spool": ("pull_half_spool", "Half of the line left"),
    "nearly_empty": ("pull_near_empty", "A tenth of the line left"),
}


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "sheet", metavar="SHEET", help="a TOML file, or the name of a sheet that comes with us"
    )
    parser.add_argument("--target", metavar="PULL", help='a pull to set, such as "18 lb" or "2.7 kg"')
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument(
        "--units", choices=SYSTEMS, help="units to show (default: those of the target, or metric)"
    )


def run(args: argparse.Namespace) -> int:
    typed = quantities.read_typed(args.target, "force") if args.target is not None else None
    if typed is not None and not typed.value > 0:
        raise quantities.NotAQuantity(
            args.target, "is not a pull above zero", 'a pull such as "18 lb" or "2.7 kg"'
        )
    sheet = reel_sheet.load(args.sheet)
    system = args.units or ("imperial" if typed is not None and typed.unit in ("lb", "oz") else "metric")
    prediction = predict(sheet, {}, system=system)
    target = typed.value if typed is not None else None
    advice, ways = _towards(sheet, prediction, target, system)
    if args.json:
        print(json.dumps(_as_data(sheet, prediction, target, advice, ways), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(sheet, prediction, system, advice, ways)))
    return 0


def _towards(
    sheet: ReelSheet, prediction: Prediction, target: float | None, system: str
) -> tuple[TurnAdvice | None, tuple[Way, ...]]:
    if target is None or not prediction.star_turns:
        return None, ()
    advice = star_turn_for(prediction, target, system)
    ways = ways_to_reach(sheet, {}, target, system=system) if advice.turns is None else ()
    return advice, ways


def _in_words(
    sheet: ReelSheet, prediction: Prediction, system: str, advice: TurnAdvice | None, ways: tuple[Way, ...]
) -> list[str]:
    reel = sheet.reel
    lines = [f"{reel.maker} {reel.model}, {reel.kind}: a sound reel as its sheet describes it."]
    if sheet.drag is None or not prediction.star_turns:
        return [*lines, prediction.limited_by, *(f"Look: {words}" for words in _oddities(sheet, prediction))]
    lines += ["", _HEADING]
    lines += [_fill_in_words(prediction.values[key], words, system) for key, words in _FILLS.values()]
    torque = prediction.values["drag_torque"]
    lines += [f"  Torque on the spool        {_between(torque, system)}", f"  {prediction.limited_by}"]
    strike = prediction.values.get("pull_at_strike")
    if strike is not None:
        lines.append(
            f"  At the strike stop,        {_between(strike, system)}, preset as far on as leaves it free"
        )
    lines += ["", *_pairs_in_words(sheet, system), "", *_table(prediction, system)]
    if advice is not None:
        lines += ["", advice.words, *_ways_in_words(advice, ways)]
    lines += ["", "What this rests on:", *(f"  {why}" for why in prediction.star_turns[-1].pull.rests_on)]
    lines += [f"Look: {words}" for words in _oddities(sheet, prediction)]
    return [*lines, _CAUTION]


_HEADING = f"Greatest usable pull (± at k = 2; in brackets what {COVERAGE:.0%} of such reels give):"

_CAUTION = (
    "Before a reel is trusted with such a pull: line under load whips back. Pull in a straight line, eyes "
    "covered, nobody in line with it."
)


def _fill_in_words(pull: Predicted, words: str, system: str) -> str:
    radius = show(float(pull.conditions["radius"]), "length", system)
    return f"  {words + ',':26} {_between(pull, system)}, line leaving at {radius}"


def _between(value: Predicted, system: str) -> str:
    middle = show(value.middle, value.dimension, system, uncertainty=2 * value.deviation)
    return f"{middle} ({show_interval(value.low, value.high, value.dimension, system)})"


def _pairs_in_words(sheet: ReelSheet, system: str) -> list[str]:
    assert sheet.drag is not None
    pairs = drag_stack.slipping_pairs(sheet.drag.stack).pairs
    return [f"Slipping pairs: {len(pairs)}.", *(f"  {_pair_in_words(pair, system)}" for pair in pairs)]


def _pair_in_words(pair: Pair, system: str) -> str:
    outer, inner = (show(2 * r, "length", system) for r in (pair.outer_radius, pair.inner_radius))
    return f"{pair.lower} on {pair.upper}: {pair.face_material}, {pair.lubrication}, {outer} by {inner}"


def _table(prediction: Prediction, system: str) -> list[str]:
    along = prediction.setting.along
    lines = [f"{along[0].upper()}{along[1:]}, and the running pull at a full spool:"]
    for row in prediction.star_turns:
        span = show_interval(row.pull.low, row.pull.high, "force", system)
        lines.append(f"  {row.turns:4g}   {show(row.pull.middle, 'force', system):>8}   ({span})")
    return lines


def _ways_in_words(advice: TurnAdvice, ways: tuple[Way, ...]) -> list[str]:
    if advice.turns is not None:
        return []
    if not ways:
        none = "No work on our list, alone or two together, is expected to reach it"
        return [f"{none}: this is not the reel for it."]
    return ["What would have to change:", *(f"  {way.words}" for way in ways)]


def _oddities(sheet: ReelSheet, prediction: Prediction) -> list[str]:
    return list(dict.fromkeys((*prediction.warnings, *remarks(sheet), *prediction.notes)))


def _as_data(
    sheet: ReelSheet,
    prediction: Prediction,
    target: float | None,
    advice: TurnAdvice | None,
    ways: tuple[Way, ...],
) -> dict[str, Any]:
    reel = sheet.reel
    pairs = drag_stack.slipping_pairs(sheet.drag.stack).pairs if sheet.drag else ()
    pulls = {name: prediction.values[key] for name, (key, _) in _FILLS.items() if key in prediction.values}
    if "pull_at_strike" in prediction.values:
        pulls["at_strike"] = prediction.values["pull_at_strike"]
    torque = prediction.values.get("drag_torque")
    return {
        "slug": reel.slug,
        "maker": reel.maker,
        "model": reel.model,
        "kind": reel.kind,
        "pull": {name: _value(pull) for name, pull in pulls.items()},
        "torque": _value(torque) if torque else None,
        "limited_by": prediction.limited_by,
        "slipping_pairs": len(pairs),
        "pairs": [_pair_as_data(pair) for pair in pairs],
        "control": prediction.setting.control,
        "star_turns": [{"turns": row.turns, **_value(row.pull)} for row in prediction.star_turns],
        "target": _target_as_data(target, advice, ways),
        "warnings": _oddities(sheet, prediction),
        "samples": prediction.samples,
        "seed": prediction.seed,
    }


_SI_UNITS = {"force": "N", "torque": "N m"}


def _value(value: Predicted) -> dict[str, Any]:
    """SI with the expanded uncertainty and the 90 % interval; a pull in kilograms and pounds as well."""
    data: dict[str, Any] = {
        "value": value.middle,
        "uncertainty": 2 * value.deviation,
        "coverage_factor": 2,
        "low": value.low,
        "high": value.high,
        "coverage": COVERAGE,
        "unit": _SI_UNITS[value.dimension],
        "conditions": {
            "radius_m": value.conditions.get("radius"),
            "star_turns": value.conditions.get("star_turns"),
        },
        "rests_on": list(value.rests_on),
    }
    if value.dimension == "force":
        for unit in ("kg", "lb"):
            one = quantities.read(f"1 {unit}", "force")
            data[unit] = {"value": value.middle / one, "low": value.low / one, "high": value.high / one}
    return data


def _pair_as_data(pair: Pair) -> dict[str, Any]:
    return {
        "lower": pair.lower,
        "upper": pair.upper,
        "face_material": pair.face_material,
        "lubrication": pair.lubrication,
        "outer_radius": {"value": pair.outer_radius, "unit": "m"},
        "inner_radius": {"value": pair.inner_radius, "unit": "m"},
        "friction": {"low": pair.friction.low, "high": pair.friction.high, "how": pair.friction.how},
    }


def _target_as_data(
    target: float | None, advice: TurnAdvice | None, ways: tuple[Way, ...]
) -> dict[str, Any] | None:
    if target is None or advice is None:
        return None
    return {
        "pull": {"value": target, "unit": "N"},
        "turns": advice.turns,
        "turns_low": advice.low,
        "turns_high": advice.high,
        "words": advice.words,
        "ways": [
            {
                "works": [work.id for work in way.works],
                "pull": _value(way.pull),
                "within_guard": way.within_guard,
                "words": way.words,
            }
            for way in ways
        ],
    }
