"""`spoolwright pull FILE`: a gauge's file to start-up pull, running pull, their ratio, judder and drift."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from spoolwright.command.gauge_options import gauge_arguments, gauge_of, way_arguments, way_of
from spoolwright.quantities import DIMENSIONS, SYSTEMS, read, show

SUMMARY = "read a pull trace: start-up pull, running pull, judder and drift of a drag"
TYPED = "pull FILE [--json]"

_RESULTS = ("start_up", "running", "start_up_ratio", "judder", "drift")
_WORDS = {
    "start_up": "Start-up pull",
    "running": "Running pull",
    "start_up_ratio": "Start-up ratio",
    "judder": "Judder",
    "drift": "Drift over the run",
}


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE", help="time and force, as any gauge writes them")
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")
    parser.add_argument("--pull", type=int, metavar="N", help="which pull of several (default: the last)")
    answers = parser.add_argument_group("what the file does not say")
    answers.add_argument("--force-unit", default="", metavar="UNIT", help="N, kgf, kg, g, lbf, lb or oz")
    answers.add_argument("--time-unit", default="", metavar="UNIT", help="s, ms, us, min")
    answers.add_argument("--rate", metavar="RATE", help='samples a second, such as "100 Hz"')
    answers.add_argument(
        "--delimiter", default="", metavar="MARK", help="tab, semicolon, bar, comma or space"
    )
    answers.add_argument("--decimal", default="", metavar="MARK", help="point or comma")
    answers.add_argument(
        "--column", default="", metavar="NAME", help="the pull's column: its title or number"
    )
    answers.add_argument("--time-column", default="", metavar="NAME", help="the time's column")
    gauge_arguments(parser)
    way_arguments(parser)


def run(args: argparse.Namespace) -> int:
    from spoolwright.bench import pull_corrections, pull_trace
    from spoolwright.bench.unreadable import NeedsAnswer

    path = Path(args.file)
    gauge, form, way = gauge_of(args), _form(args), way_of(args)
    try:
        trace = pull_trace.read(path.read_bytes(), name=path.name, form=form)
    except NeedsAnswer as asked:
        raise _by_option(asked) from None
    put_right, unsure = pull_corrections.corrected(trace, gauge, way)
    result = pull_trace.analyse(put_right, unsure, pull=args.pull)
    if args.json:
        print(json.dumps(_as_data(trace, result), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(result, args.units)))
    return 0


def _by_option(asked: Any) -> Exception:
    """The same questions, with the options that answer them."""
    from spoolwright.bench.unreadable import NeedsAnswer, Question

    option = {"force_column": "--column"}
    named = (
        Question(option.get(it.key, f"--{it.key.replace('_', '-')}"), it.words, it.accepted)
        for it in asked.questions
    )
    return NeedsAnswer(tuple(named), asked.where)


def _form(args: argparse.Namespace) -> Any:
    from spoolwright.bench.trace import TraceForm

    return TraceForm(
        delimiter=args.delimiter,
        decimal=args.decimal,
        time_column=args.time_column,
        force_column=args.column,
        time_unit=args.time_unit,
        force_unit=args.force_unit,
        rate=_rate(args.rate),
    )


def _rate(typed: str | None) -> float | None:
    if typed is None:
        return None
    plain = typed.strip().replace(",", ".")
    return read(f"{plain} Hz" if plain.replace(".", "", 1).isdigit() else typed, "frequency")


def _as_data(trace: Any, result: Any) -> dict[str, Any]:
    from dataclasses import asdict

    from spoolwright.bench.uncertainty import COVERAGE_FACTOR

    found = {name: getattr(result, name) for name in _RESULTS}
    return {
        **{
            name: {"value": it.value, "uncertainty": it.expanded, "unit": DIMENSIONS[it.dimension].si}
            for name, it in found.items()
        },
        "start_up_ratio_interval": _interval(result),
        "coverage_factor": COVERAGE_FACTOR,
        "samples": result.samples,
        "slip_start": result.slip_start,
        "slip_end": result.slip_end,
        "pull_number": result.pull_number,
        "pulls": result.pulls,
        "read_as": asdict(trace.found),
        "budget": [asdict(row) for row in result.budget],
        "notes": list(result.notes),
    }


def _interval(result: Any) -> list[float] | None:
    """Where the start-up ratio lies, lopsided as it is; nothing where it may be anything."""
    from math import isfinite

    from spoolwright.bench.pull_ratio import ratio_interval

    ends = ratio_interval(result)
    return list(ends) if all(map(isfinite, ends)) else None


def _in_words(result: Any, system: str) -> Iterable[str]:
    for name in _RESULTS:
        found = getattr(result, name)
        unit = "%" if name in ("judder", "drift") else None
        shown = show(found.value, found.dimension, system, uncertainty=found.expanded, unit=unit)
        yield f"{_WORDS[name]:20} {shown}"
    slips = f"from {result.slip_start:.2f} s to {result.slip_end:.2f} s"
    yield f"The drag slips {slips}. Uncertainties are k = 2."
    yield "A pull says little without the radius at which the line leaves the spool: write it beside it."
    yield from (f"Note: {note}" for note in result.notes)
