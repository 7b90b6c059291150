"""`spoolwright gauge-study FILE`: how far tries of one instrument differ, by one hand and between hands."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from spoolwright.quantities import DIMENSIONS, SYSTEMS, NotAQuantity, read, show, show_interval

SUMMARY = "read a repeatability study: how far tries differ, by the same hand, between hands, between parts"
TYPED = 'gauge-study FILE [--of length] [--unit mm] [--tolerance "0.2 mm"] [--json]'

_MEASURED = ("length", "force", "mass", "time", "angle", "torque", "temperature", "line_length", "rotation")


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE", help="headings part, person and value; then one line a try")
    parser.add_argument(
        "--of", choices=_MEASURED, default="length", help="what was measured (default: length)"
    )
    parser.add_argument("--unit", default="", metavar="UNIT", help="of values that stand without one")
    parser.add_argument("--tolerance", metavar="WIDTH", help='from limit to limit, such as "0.2 mm"')
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def run(args: argparse.Namespace) -> int:
    from spoolwright.bench import gauge_study, gauge_study_file

    path = Path(args.file)
    tries = gauge_study_file.read(path.read_bytes(), args.of, unit=args.unit, name=path.name)
    found = gauge_study.read(tries.values, _tolerance(args.tolerance, args.of))
    if args.json:
        print(json.dumps(_as_data(found, tries, args.of), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(found, tries, args.of, args.units)))
    return 0


def _tolerance(text: str | None, dimension: str) -> float | None:
    from spoolwright.sheets.instrument_kinds import step_dimension

    if text is None:
        return None
    width = read(text, step_dimension(dimension))
    if width <= 0:
        raise NotAQuantity(text, "is not above zero", "the width from limit to limit, such as 0.2 mm")
    return width


def _as_data(found: Any, tries: Any, dimension: str) -> dict[str, Any]:
    return {
        "parts": list(tries.parts),
        "persons": list(tries.persons),
        "tries": found.anova.shape[2],
        "unit": DIMENSIONS[dimension].si,
        "table": [
            {"source": r.source, "squares": r.squares, "freedom": r.freedom, "f": r.f, "p": r.p}
            for r in found.anova.rows
        ],
        "pooled": found.anova.pooled,
        "rule": found.rule,
        "spreads": {
            name: {
                "deviation": one.deviation,
                "low": one.low,
                "high": one.high,
                "share": one.share,
                "below_zero": one.cut,
            }
            for name, one in found.spreads.items()
        },
        "classes": found.classes,
        "of_tolerance": found.of_tolerance,
        "notes": list(found.notes),
    }


def _in_words(found: Any, tries: Any, dimension: str, units: str) -> Iterable[str]:
    from spoolwright.sheets.instrument_kinds import step_dimension

    step = step_dimension(dimension)
    p, o, r = found.anova.shape
    people = "1 person" if o == 1 else f"{o} persons"
    yield f"{p} parts, {people} ({', '.join(tries.persons)}), {r} tries each."
    for name, one in found.spreads.items():
        if name == "reproducibility":
            continue
        size = _two_figures(one.deviation, step, units) if one.deviation else "none to be seen"
        ends = f" ({show_interval(one.low, one.high, step, units)})" if one.high > one.low else ""
        yield f"{one.name.capitalize()}: {size}{ends}, {100 * one.share:.1f} % of the variance."
    if found.classes is not None:
        yield f"It tells these parts apart in {found.classes} classes; five or more are asked for as a rule."
    if found.of_tolerance is not None:
        yield f"Six of its spreads take {100 * found.of_tolerance:.0f} % of the tolerance."
    yield found.rule
    yield from (f"Note: {note}" for note in found.notes)
    yield "Spreads are standard deviations, in brackets from where to where they lie 95 times of 100."


def _two_figures(value: float, dimension: str, units: str) -> str:
    return show(value, dimension, units, value).partition(" ± ")[0]
