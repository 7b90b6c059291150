"""`spoolwright cast SHEET`: how far a reel throws, how its spool runs ahead, and what would change that."""

from __future__ import annotations

import argparse
import json
from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from spoolwright.command import throwing
from spoolwright.judgement import cast_words
from spoolwright.judgement.cast_case import LOSSES, CastCase, cast_case
from spoolwright.judgement.cast_compare import Compared, compared
from spoolwright.judgement.cast_matters import Matters, what_matters
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.prediction import COVERAGE, Predicted
from spoolwright.judgement.works import all_works, chosen
from spoolwright.quantities import DIMENSIONS, SYSTEMS, NotAQuantity, show
from spoolwright.sheets import reel_sheet

SUMMARY = "say how far a reel casts, how its spool runs ahead of the line, and what would change that"
TYPED = f"cast SHEET {throwing.TYPED} [--work ID] [--json]"

SAMPLES, SEED = 1000, 1
POINTS = 60
SERIES = {"time": "s", "x": "m", "y": "m", "line_speed": "m/s", "speed": "m/s", "spool_speed": "rad/s",
          "slack": "m", "tension": "N"}  # fmt: skip


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "sheet", metavar="SHEET", help="a TOML file, or the name of a sheet that comes with us"
    )
    throwing.throw_arguments(parser)
    parser.add_argument(
        "--work", metavar="ID", action="append", default=[], help="a work to set beside it; may be said again"
    )
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def run(args: argparse.Namespace) -> int:
    sheet = reel_sheet.load(args.sheet)
    throw = throwing.throw_of(args, sheet)
    works = read_works(args.work, sheet.reel.kind)
    known = know(sheet, {}, samples=SAMPLES, seed=SEED)
    case = cast_case(sheet, throw=throw, known=known)
    matters = what_matters(case)
    beside = compared(case, works, known) if works else None
    if args.json:
        print(json.dumps(_as_data(case, matters, beside), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(case, matters, beside, args.units)))
    return 0


def read_works(names: Sequence[str], kind: str) -> tuple[str, ...]:
    """The works that were named; a name that is none is refused with those that are."""
    for name in names:
        fitting = [work.id for work in all_works().values() if kind in work.kinds]
        if name not in fitting:
            raise NotAQuantity(name, "is no work that is done on such a reel", ", ".join(fitting))
    return tuple(work.id for work in chosen(tuple(names), kind)) if names else ()


def _in_words(case: CastCase, matters: Matters | None, beside: Compared | None, system: str) -> list[str]:
    reel = case.sheet.reel
    lines = [f"{reel.maker} {reel.model}, {reel.kind}: a sound reel as its sheet describes it."]
    if case.why_not:
        return [*lines, case.why_not]
    lines += ["", *cast_words.told(case, system)]
    lines += ["", "Where the energy of the middle cast goes:", *_losses(case, system)]
    if matters is not None:
        lines += ["", "What would change it:"]
        lines += [f"  {words}" for words in cast_words.matters_told(case, matters, system)]
    if beside is not None:
        title = ", ".join(all_works()[name].title.lower() for name in beside.works)
        lines += ["", *cast_words.compared_told(beside, title.capitalize(), system)]
    lines += ["", "What this rests on:", *(f"  {why}" for why in case.rests_on)]
    lines += [f"Look: {note}" for note in case.notes]
    return [*lines, CAUTION]


CAUTION = (
    "Before anybody casts: nobody behind, beside or in front of the caster; leader and knots sound; a finger "
    "guard on."
)


def _losses(case: CastCase, system: str) -> list[str]:
    rows = [(words, case.losses[name]) for name, words in LOSSES.items() if case.losses[name] > 0]
    return [f"  {words:32} {show(energy, 'energy', system):>10}" for words, energy in rows]


def _as_data(case: CastCase, matters: Matters | None, beside: Compared | None) -> dict[str, Any]:
    reel, throw = case.sheet.reel, case.throw
    told: dict[str, Any] = {
        "slug": reel.slug,
        "maker": reel.maker,
        "model": reel.model,
        "kind": reel.kind,
        "throw": {
            "payload": {"value": throw.payload, "unit": "kg"},
            "shape": throw.shape,
            "speed": {"value": throw.speed, "unit": "m/s"},
            "angle": {"value": throw.angle, "unit": "rad"},
            "wind": {"value": throw.wind, "unit": "m/s"},
            "line": throw.line,
            "diameter": {"value": case.diameter or throw.diameter, "unit": "m"},
            "fill": throw.fill,
        },
        "why_not": case.why_not or None,
    }
    if case.why_not:
        return told
    told |= {name: value_as_data(value) for name, value in case.values.items()}
    told |= {
        "brake": {"share": case.share, "constant": throw.brake.constant, "constant_unit": "N m s"},
        "over_run": {"slack": {"value": case.lip_slack, "unit": "m"}, "share_of_casts": case.over_runs},
        "losses": {name: {"value": energy, "unit": "J"} for name, energy in case.losses.items()},
        "matters": None if matters is None else _matters_as_data(matters),
        "compared": None if beside is None else _compared_as_data(beside),
        "middle_cast": _series(case.middle),
        "words": [*cast_words.told(case), *cast_words.matters_told(case, matters)],
        "rests_on": list(case.rests_on),
        "notes": list(case.notes),
        "samples": SAMPLES,
        "seed": SEED,
    }
    return told


def value_as_data(value: Predicted) -> dict[str, Any]:
    """SI with the expanded uncertainty and the 90 % interval."""
    return {
        "value": value.middle,
        "uncertainty": 2 * value.deviation,
        "coverage_factor": 2,
        "low": value.low,
        "high": value.high,
        "coverage": COVERAGE,
        "unit": DIMENSIONS[value.dimension].si,
    }


def _matters_as_data(matters: Matters) -> dict[str, Any]:
    changes = [
        {
            "key": change.key,
            "what": change.what,
            "gain": {"value": change.gain, "unit": "m"},
            "more_slack": {"value": change.more_slack, "unit": "m"},
            "brake_again": change.again,
            "gain_again": None if change.gain_again is None else {"value": change.gain_again, "unit": "m"},
        }
        for change in matters.changes
    ]
    return {"perfect_thumb": {"value": matters.ideal, "unit": "m"}, "changes": changes}


def _compared_as_data(found: Compared) -> dict[str, Any]:
    again = found.gain_again
    return {
        "works": list(found.works),
        "gain": value_as_data(found.gain),
        "more_slack": value_as_data(found.more_slack),
        "brake_again": None if found.again is None else found.again.share,
        "gain_again": None if again is None else value_as_data(again),
    }


def _series(trace: Any) -> Mapping[str, Any]:
    """The cast against time, thinned to what a chart needs."""
    count = len(trace.time)
    kept = np.unique(np.linspace(0, count - 1, min(POINTS, count)).round().astype(int))
    return {name: {"unit": unit, "values": np.asarray(getattr(trace, name))[kept].tolist()}
            for name, unit in SERIES.items()}  # fmt: skip
