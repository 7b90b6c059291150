"""`spoolwright wear SHEET`: what wears in a reel with such use, and what cold and a tight line do to it."""

from __future__ import annotations

import argparse
import json
from collections.abc import Sequence
from dataclasses import dataclass
from math import isfinite
from typing import Any

from spoolwright import quantities
from spoolwright.judgement.bearing_lives import BearingLife, BearingLives, bearing_lives
from spoolwright.judgement.cold_morning import COLDEST, WARMEST, ColdMorning, cold_morning
from spoolwright.judgement.line_lay import LineLay, line_lay
from spoolwright.judgement.line_said import read_line
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.prediction import COVERAGE, Predicted
from spoolwright.judgement.top_shot import TopShot, top_shot
from spoolwright.judgement.wear_life import PartWear, WearLife, wear_life
from spoolwright.judgement.works import all_works
from spoolwright.judgement.worn_face import Use
from spoolwright.judgement.wound_line import EXAMPLE, WoundLine, wound_line
from spoolwright.quantities import SYSTEMS, NotAQuantity, show
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

SUMMARY = "say what wears in a reel with such use, how long it lasts, and what cold and a tight line do"
TYPED = 'wear SHEET [--casts 60] [--grit "1 %"] [--dry] [--cold "0 °C"] [--line "braid 0.25 mm"] [--json]'

SAMPLES, SEED = 2000, 1
_ORDINARY = Use()


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "sheet", metavar="SHEET", help="a TOML file, or the name of a sheet that comes with us"
    )
    parser.add_argument("--casts", type=float, default=_ORDINARY.casts, help="casts a week (default: 60)")
    parser.add_argument("--distance", default="45 m", metavar="LENGTH", help="line out with each cast")
    parser.add_argument("--pull", default="0.5 kg", metavar="PULL", help="pull while winding in")
    parser.add_argument("--fish", default="20 m", metavar="LENGTH", help="line that fish take in a week")
    parser.add_argument("--fish-pull", default="2 kg", metavar="PULL", help="the drag at which they take it")
    parser.add_argument(
        "--grit", default="1 %", metavar="SHARE", help="share of the winding done with sand in the works"
    )
    parser.add_argument("--salt", action="store_true", help="fished in salt water")
    parser.add_argument("--dry", action="store_true", help="never oiled")
    parser.add_argument("--cold", default="0 °C", metavar="TEMPERATURE", help="a morning, from -20 to 35 °C")
    parser.add_argument("--line", default=EXAMPLE, metavar="LINE", help="the line on it, and its diameter")
    parser.add_argument(
        "--wound", metavar="PULL", help="tension at which it goes on (default: the usual one)"
    )
    parser.add_argument("--top-shot", default="100 m", metavar="LENGTH", help="how much of it goes on top")
    parser.add_argument("--backing", default="nylon 0.35 mm", metavar="LINE", help="the line below it")
    parser.add_argument(
        "--work", metavar="ID", action="append", default=[], help="a work to count as done; may be said again"
    )
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def run(args: argparse.Namespace) -> int:
    sheet = reel_sheet.load(args.sheet)
    use, morning, wound = _use(args), _morning(args.cold), _at_least_zero(args.wound, "force")
    works = _works(args.work, sheet.reel.kind)
    line = read_line(args.line)
    known = know(sheet, {}, samples=SAMPLES, seed=SEED)
    worn = wear_life(sheet, {}, works, use=use, known=known)
    cold = cold_morning(sheet, {}, works, morning=morning, known=known, system=args.units)
    tight = wound_line(sheet, {}, line=args.line, tension=wound, system=args.units)
    lay = line_lay(sheet, {}, works, diameter=line.diameter, system=args.units)
    length = _at_least_zero(args.top_shot, "line_length") or 0.0
    shot = top_shot(sheet, top=args.line, length=length, backing=args.backing, system=args.units)
    found = Found(worn, bearing_lives(sheet, {}, works, use=use), cold, tight, lay, shot)
    if args.json:
        print(json.dumps(_as_data(sheet, found), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(sheet, found, args.units)))
    return 0


@dataclass(frozen=True)
class Found:
    """Everything that was asked of one reel."""

    worn: WearLife
    bearings: BearingLives
    cold: ColdMorning
    tight: WoundLine
    lay: LineLay
    shot: TopShot


def _works(names: Sequence[str], kind: str) -> tuple[str, ...]:
    fitting = [work.id for work in all_works().values() if kind in work.kinds]
    for name in names:
        if name not in fitting:
            raise NotAQuantity(name, "is no work that is done on such a reel", ", ".join(fitting))
    return tuple(names)


def _use(args: argparse.Namespace) -> Use:
    if not (isfinite(args.casts) and args.casts >= 0):
        raise NotAQuantity(str(args.casts), "is no number of casts", "a number of zero or more, such as 60")
    grit = quantities.read(args.grit, "ratio")
    if not 0 <= grit <= 1:
        raise NotAQuantity(args.grit, "is no share", "a share from 0 % to 100 %")
    return Use(
        casts=args.casts,
        distance=_at_least_zero(args.distance, "line_length") or 0.0,
        pull=_at_least_zero(args.pull, "force") or 0.0,
        fish=_at_least_zero(args.fish, "line_length") or 0.0,
        fish_pull=_at_least_zero(args.fish_pull, "force") or 0.0,
        grit=grit,
        salt=args.salt,
        oiled=not args.dry,
    )


def _at_least_zero(typed: str | None, dimension: str) -> float | None:
    if typed is None:
        return None
    value = quantities.read(typed, dimension)
    if value < 0:
        raise NotAQuantity(typed, "is below zero", quantities.DIMENSIONS[dimension].accepted)
    return value


def _morning(typed: str) -> float:
    value = quantities.read(typed, "temperature")
    if not COLDEST <= value <= WARMEST:
        raise NotAQuantity(
            typed, "is colder or warmer than this reckons with", "a temperature from -20 to 35 °C"
        )
    return value


def _in_words(sheet: ReelSheet, found: Found, system: str) -> list[str]:
    reel, worn = sheet.reel, found.worn
    bearings = [one.words for one in found.bearings.bearings] or [found.bearings.why_not]
    lines = [f"{reel.maker} {reel.model}, {reel.kind}: a sound, new reel as its sheet describes it.", ""]
    pull = show(found.bearings.pull, "force", system)
    lines += [worn.why_not or worn.words, *(f"  {_part(part, system)}" for part in worn.parts)]
    lines += [
        "",
        f"The spool's bearings under a fish's pull of {pull}:",
        *(f"  {words}" for words in bearings),
    ]
    for heading, said in (
        ("How it lays the line:", found.lay.why_not or found.lay.words),
        ("A cold morning:", found.cold.why_not or found.cold.words),
        ("The line on its spool:", found.tight.why_not or found.tight.words),
        ("Backing:", found.shot.words),
    ):
        lines += ["", heading, f"  {said}"]
    rests = dict.fromkeys(why for part in worn.parts for why in part.rests_on)
    lines += ["", "What this rests on:", *(f"  {why}" for why in rests)] if rests else []
    return [*lines, *(f"Look: {note}" for note in (*found.tight.warnings, *_notes(found))), _CAUTION]


def _notes(found: Found) -> tuple[str, ...]:
    all_of = (found.worn, found.bearings, found.lay, found.cold, found.tight, found.shot)
    return tuple(dict.fromkeys(note for one in all_of for note in one.notes))


_CAUTION = (
    "Before a worn part is looked at: springs in the level wind and the clutch jump, so eyes covered; a line "
    "under load whips back."
)


def _part(part: PartWear, system: str) -> str:
    limit = quantities.show_stated(float(f"{part.limit:.2g}"), "length", system)
    return f"{part.words}; rejected at {limit}"


def _as_data(sheet: ReelSheet, found: Found) -> dict[str, Any]:
    reel, worn = sheet.reel, found.worn
    return {
        "slug": reel.slug,
        "maker": reel.maker,
        "model": reel.model,
        "kind": reel.kind,
        "use": _use_as_data(worn.use),
        "works": list(worn.works),
        "parts": [_part_as_data(part) for part in worn.parts],
        "weeks": list(worn.weeks),
        "why_not": worn.why_not or None,
        "bearings": [_bearing_as_data(one) for one in found.bearings.bearings],
        "line_lay": _lay_as_data(found.lay),
        "cold_morning": _cold_as_data(found.cold),
        "wound_line": _tight_as_data(found.tight),
        "top_shot": _shot_as_data(found.shot),
        "notes": list(_notes(found)),
        "samples": worn.samples,
        "seed": worn.seed,
    }


def _use_as_data(use: Use) -> dict[str, Any]:
    return {
        "casts_a_week": use.casts,
        "line_out": {"value": use.distance, "unit": "m"},
        "winding_pull": {"value": use.pull, "unit": "N"},
        "taken_by_fish": {"value": use.fish, "unit": "m"},
        "drag_pull": {"value": use.fish_pull, "unit": "N"},
        "grit": use.grit,
        "salt": use.salt,
        "oiled": use.oiled,
    }


def _bearing_as_data(one: BearingLife) -> dict[str, Any]:
    return {
        "place": one.place,
        "size": one.size,
        "kind": one.kind,
        "load": _value(one.load, "N"),
        "static_safety": _value(one.safety, "1"),
        "static_safety_hybrid": _value(one.hybrid_safety, "1"),
        "fatigue_life": _value(one.life, "m"),
        "kappa": one.kappa,
        "friction": {"value": one.torque, "unit": "N m"},
        "words": one.words,
    }


def _shot_as_data(shot: TopShot) -> dict[str, Any]:
    return {
        "top": shot.top,
        "top_length": {"value": shot.top_length, "unit": "m"},
        "backing": shot.backing,
        "backing_length": _value(shot.backing_length, "m"),
        "top_alone": _value(shot.top_alone, "m"),
        "join_radius": _value(shot.join_radius, "m"),
        "line_per_turn": {"full": shot.turn_full, "at_join": shot.turn_at_join, "unit": "m"},
        "pull_at_join": shot.pull_at_join,
        "words": shot.words,
    }


def _part_as_data(part: PartWear) -> dict[str, Any]:
    return {
        "part": part.part,
        "key": part.key,
        "made_of": part.made_of,
        "limit": {"value": part.limit, "unit": "m", "source": part.limit_source},
        "weeks_left": {
            "value": _finite(part.lasts.middle),
            "low": _finite(part.lasts.low),
            "high": _finite(part.lasts.high),
            "coverage": COVERAGE,
            "unit": "weeks",
        },
        "depth": _curve(part.depth_low, part.depth, part.depth_high, "m"),
        "worn_out_by_the_last_week": part.chance,
        "slides_a_week": {"value": part.slide_per_week, "unit": "m"},
        "pressure": {"value": part.pressure, "unit": "Pa"},
        "words": part.words,
        "rests_on": list(part.rests_on),
    }


def _curve(low: Sequence[float], middle: Sequence[float], high: Sequence[float], unit: str) -> dict[str, Any]:
    return {"low": list(low), "value": list(middle), "high": list(high), "unit": unit}


def _finite(weeks: float) -> float | None:
    """Weeks, or nothing where the part is never worn out."""
    return weeks if isfinite(weeks) else None


def _lay_as_data(lay: LineLay) -> dict[str, Any]:
    if lay.why_not:
        return {"why_not": lay.why_not}
    return {
        "pitch": {"value": lay.pitch, "unit": "m"},
        "turns_per_layer": lay.turns_per_layer,
        "crossing_angle": {"full": lay.crossing_full, "arbor": lay.crossing_arbor, "unit": "rad"},
        "beside_its_track": {"low": lay.offset[0], "high": lay.offset[1], "unit": "m"},
        "locks": lay.locks,
        "pawl_slides_for_each_metre": {"value": lay.slide_per_metre, "unit": "m"},
        "words": lay.words,
    }


def _cold_as_data(cold: ColdMorning) -> dict[str, Any]:
    if cold.why_not:
        return {"why_not": cold.why_not}
    return {
        "temperature": {"value": list(cold.temperatures), "unit": "K"},
        "spin_time": _curve(cold.spin_low, cold.spin, cold.spin_high, "s"),
        "viscosity": {"value": list(cold.viscosity), "unit": "m^2/s"},
        "morning": _value(cold.at_morning, "s"),
        "bench": _value(cold.at_bench, "s"),
        "share_left": _value(cold.share_left, "1"),
        "kappa": {"morning": cold.kappa[0], "bench": cold.kappa[1]},
        "viscosity_index": cold.index,
        "words": cold.words,
    }


def _tight_as_data(tight: WoundLine) -> dict[str, Any]:
    told: dict[str, Any] = {"line": tight.line, "tension": {"value": tight.tension, "unit": "N"}}
    if tight.why_not:
        return {**told, "why_not": tight.why_not}
    return {
        **told,
        "pressure": _value(tight.pressure, "Pa"),
        "arbor_stress": _value(tight.arbor_stress, "Pa"),
        "flange_force": _value(tight.flange_force, "N"),
        "flange_stress": _value(tight.flange_stress, "Pa"),
        "yield_strength": _value(tight.limit, "Pa"),
        "gives_at": {"mildest_rule": tight.mild, "nothing_slackens": tight.harsh, "unit": "N"},
        "gives_first": tight.gives_first,
        "words": tight.words,
        "warnings": list(tight.warnings),
    }


def _value(value: Predicted | None, unit: str) -> dict[str, Any] | None:
    if value is None:
        return None
    return {
        "value": value.middle,
        "uncertainty": 2 * value.deviation,
        "coverage_factor": 2,
        "low": value.low,
        "high": value.high,
        "coverage": COVERAGE,
        "unit": unit,
    }
