"""What `run` and `judder` ask alike: the fish, the line, the works; and how they hand numbers on."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

from spoolwright import quantities
from spoolwright.bench import run_record
from spoolwright.bench.trace import TraceForm
from spoolwright.bench.unreadable import NeedsAnswer, Question
from spoolwright.judgement.fish_run import FishRun
from spoolwright.judgement.line_said import read_line
from spoolwright.judgement.prediction import COVERAGE, Predicted
from spoolwright.judgement.works import all_works
from spoolwright.quantities import SYSTEMS, NotAQuantity

_ORDINARY = FishRun()
_SI = {
    "force": "N",
    "temperature": "K",
    "time": "s",
    "energy": "J",
    "ratio": "1",
    "speed": "m/s",
    "frequency": "Hz",
}


def fish_arguments(parser: argparse.ArgumentParser) -> None:
    """The questions of a run."""
    parser.add_argument(
        "sheet", metavar="SHEET", help="a TOML file, or the name of a sheet that comes with us"
    )
    parser.add_argument("--pull", metavar="PULL", help="set on the drag (default: half of its greatest)")
    parser.add_argument("--turns", type=float, metavar="N", help="turns of the star or knob in its place")
    parser.add_argument("--speed", metavar="SPEED", help="how fast the line runs (default: 4 m/s)")
    parser.add_argument("--distance", default="100 m", metavar="LENGTH", help="how far the fish runs")
    parser.add_argument("--out", default="20 m", metavar="LENGTH", help="line that is out as it begins")
    parser.add_argument("--fill", default="100 %", metavar="SHARE", help="line on the spool as it begins")
    parser.add_argument("--line", default="", metavar="LINE", help='such as "nylon 0.40 mm" (default: that)')
    parser.add_argument(
        "--recorded", metavar="FILE", help="a run as the bench recorded it: time, pull and line speed"
    )
    parser.add_argument("--force-unit", default="", metavar="UNIT", help="of that file, where it says none")
    parser.add_argument("--time-unit", default="", metavar="UNIT", help="of that file, where it says none")
    parser.add_argument(
        "--work", metavar="ID", action="append", default=[], help="a work to count as done; may be said again"
    )
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def fish_asked(args: argparse.Namespace) -> FishRun:
    """The run that was typed, in SI."""
    if args.line.strip():
        read_line(args.line)
    fish = FishRun(
        distance=_above_zero(args.distance, "line_length"),
        speed=_above_zero(args.speed, "speed") if args.speed else _ORDINARY.speed,
        pull=_above_zero(args.pull, "force") if args.pull else None,
        turns=_turns(args.turns),
        fill=_share(args.fill),
        line=args.line,
        line_out=_above_zero(args.out, "line_length"),
    )
    return replace(fish, recorded=_recorded(args)) if args.recorded else fish


def _recorded(args: argparse.Namespace) -> run_record.RunRecord:
    path = Path(args.recorded)
    speed = _above_zero(args.speed, "speed") if args.speed else None
    form = TraceForm(time_unit=args.time_unit, force_unit=args.force_unit)
    try:
        return run_record.read(path.read_bytes(), name=path.name, speed=speed, form=form)
    except NeedsAnswer as asked:
        named = (Question(f"--{q.key.replace('_', '-')}", q.words, q.accepted) for q in asked.questions)
        raise NeedsAnswer(tuple(named), asked.where) from None


def _above_zero(text: str, dimension: str) -> float:
    found = quantities.read(text, dimension)
    if not found > 0:
        example = quantities.DIMENSIONS[dimension].examples[0]
        raise NotAQuantity(text, "is not above zero", f"more than nothing, such as {example}")
    return found


def _share(text: str) -> float:
    found = quantities.read(text, "ratio")
    if not 0 < found <= 1:
        raise NotAQuantity(text, "is no share of a full spool", "more than 0 %, at most 100 %")
    return found


def _turns(turns: float | None) -> float | None:
    if turns is not None and not 0 < turns <= 100:
        raise NotAQuantity(f"{turns:g}", "is no number of turns", "more than 0, such as 1.5")
    return turns


def the_works(names: Sequence[str], kind: str) -> tuple[str, ...]:
    """The works that were named, all of them done on this kind of reel."""
    fitting = [work.id for work in all_works().values() if kind in work.kinds]
    for name in names:
        if name not in fitting:
            raise NotAQuantity(name, "is no work that is done on such a reel", ", ".join(fitting))
    return tuple(names)


def value(told: Predicted | None) -> dict[str, Any] | None:
    """SI with its 90 % band and its expanded uncertainty; None where there is none."""
    if told is None:
        return None
    return {
        "value": told.middle,
        "low": told.low,
        "high": told.high,
        "coverage": COVERAGE,
        "uncertainty": 2 * told.deviation,
        "coverage_factor": 2,
        "unit": _SI[told.dimension],
    }


def numbers(values: Iterable[float]) -> list[float]:
    """An array for JSON, no longer than it tells anything."""
    return [float(f"{one:.6g}") for one in values]
