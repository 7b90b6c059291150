"""`spoolwright ladder SHEET`: at which pull each part of a reel gives, and whether the drag gives first."""

from __future__ import annotations

import argparse
import json
from typing import Any

from spoolwright.judgement.load_ladder import Ladder, load_ladder
from spoolwright.judgement.prediction import COVERAGE, Predicted
from spoolwright.judgement.rung import Rung
from spoolwright.judgement.works import all_works
from spoolwright.quantities import SYSTEMS, NotAQuantity, show, show_interval
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

SUMMARY = "say at which pull each part of a reel gives, and whether the drag gives first"
TYPED = 'ladder SHEET [--work ID ...] [--line "nylon 0.40 mm"] [--fill 0.8] [--json]'


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "sheet", metavar="SHEET", help="a TOML file, or the name of a sheet that comes with us"
    )
    parser.add_argument(
        "--work", metavar="ID", action="append", default=[], help="a work of the list; may be given again"
    )
    parser.add_argument(
        "--line",
        metavar="LINE",
        default="",
        help='the line on it, such as "nylon 0.40 mm" or "braid 0.25 mm 20 kg"',
    )
    parser.add_argument(
        "--fill", metavar="SHARE", default="1", help="share of a full spool's line that is left, 0 to 1"
    )
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def run(args: argparse.Namespace) -> int:
    sheet = reel_sheet.load(args.sheet)
    fill = _share(args.fill)
    try:
        ladder = load_ladder(sheet, {}, args.work, line=args.line, fill=fill, system=args.units)
    except ValueError as fault:
        if isinstance(fault, NotAQuantity):
            raise
        raise NotAQuantity(", ".join(args.work), *_refused(fault)) from None
    if args.json:
        print(json.dumps(_as_data(sheet, ladder), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(sheet, ladder, args.units)))
    return 0


def _share(typed: str) -> float:
    try:
        share = float(typed.replace(",", "."))
    except ValueError:
        share = -1.0
    if not 0 <= share <= 1:
        raise NotAQuantity(
            typed, "is not a share of the line that is left", "a number from 0 to 1, such as 0.8"
        )
    return share


def _refused(fault: ValueError) -> tuple[str, str]:
    """What judgement says of a work, as reason and as what is accepted."""
    reason, _, accepted = str(fault).removeprefix("works: ").partition("; ")
    return f"cannot be done: {reason}", accepted.removeprefix("accepted: ")


def _in_words(sheet: ReelSheet, ladder: Ladder, system: str) -> list[str]:
    reel = sheet.reel
    lines = [
        f"{reel.maker} {reel.model}, {reel.kind}: a sound reel as its sheet describes it{_after(ladder)}."
    ]
    if ladder.why_not:
        return [*lines, ladder.why_not]
    radius = show(ladder.radius, "length", system)
    lines += [
        "",
        f"Pull at the line at which each part gives, the line leaving at {radius} (in brackets what",
    ]
    lines += [f"{COVERAGE:.0%} of such reels give), and what that is of the drag that it has to hold:"]
    lines += [_rung_in_words(one, system) for one in ladder.rungs]
    lines += ["", *ladder.words, "", "What the limits are:"]
    lines += [
        f"  {_capital(one.name)}: {one.what_gives}. {_capital(one.source)}; {one.mark}."
        for one in ladder.rungs
    ]
    lines += [f"Look: {note}" for note in ladder.notes]
    return [*lines, "", _LEAVES_OUT, _CAUTION]


_LEAVES_OUT = (
    "Not reckoned: shock, worn or cracked parts, corrosion, the rod and its seat. A limit is a reckoned "
    "band, not a measurement."
)
_CAUTION = (
    "Line under load whips back: pull in a straight line, eyes covered, nobody in line with it, and never up "
    "to a limit of this table."
)


def _after(ladder: Ladder) -> str:
    titles = [all_works()[name].title for name in ladder.works]
    return f", after: {'; '.join(titles)}" if titles else ""


def _rung_in_words(one: Rung, system: str) -> str:
    pull = show(one.limit.middle, "force", system)
    span = show_interval(one.limit.low, one.limit.high, "force", system)
    over = (
        ""
        if one.borne == "drag"
        else f"{one.over.middle:5.2f} times ({one.over.low:.2f} to {one.over.high:.2f})"
    )
    return f"  {_capital(one.name):34} {pull:>8}  {'(' + span + ')':20} {over}".rstrip()


def _capital(text: str) -> str:
    return text[0].upper() + text[1:]


def _as_data(sheet: ReelSheet, ladder: Ladder) -> dict[str, Any]:
    reel = sheet.reel
    return {
        "slug": reel.slug,
        "maker": reel.maker,
        "model": reel.model,
        "kind": reel.kind,
        "works": list(ladder.works),
        "line": ladder.line,
        "fill": ladder.fill,
        "radius": {"value": ladder.radius, "unit": "m"},
        "why_not": ladder.why_not,
        "rungs": [_rung_as_data(one) for one in ladder.rungs],
        "drag": _value(ladder.drag.limit) if ladder.drag else None,
        "drag_set": _value(ladder.drag_set.limit) if ladder.drag_set else None,
        "weakest": ladder.weakest.part if ladder.weakest else None,
        "weakest_before": _weakest_before(ladder),
        "margin": _value(ladder.margin) if ladder.margin else None,
        "margin_asked_for": ladder.needed,
        "drag_first": ladder.drag_first,
        "enough": ladder.enough,
        "chance_that_the_drag_gives_first": ladder.chance,
        "most": _value(ladder.most) if ladder.most else None,
        "words": list(ladder.words),
        "notes": list(ladder.notes),
        "samples": ladder.samples,
        "seed": ladder.seed,
    }


def _weakest_before(ladder: Ladder) -> str | None:
    before = ladder.before
    return before.weakest.part if before and before.weakest else None


_SI_UNITS = {"force": "N", "ratio": "1"}


def _value(value: Predicted) -> dict[str, Any]:
    """SI with the expanded uncertainty and the 90 % interval."""
    return {
        "value": value.middle,
        "uncertainty": 2 * value.deviation,
        "coverage_factor": 2,
        "low": value.low,
        "high": value.high,
        "coverage": COVERAGE,
        "unit": _SI_UNITS[value.dimension],
    }


def _rung_as_data(one: Rung) -> dict[str, Any]:
    return {
        "part": one.part,
        "name": one.name,
        "what_gives": one.what_gives,
        "limit": _value(one.limit),
        "over": _value(one.over),
        "held_against": one.borne,
        "lasts": _value(one.lasts) if one.lasts else None,
        "source": one.source,
        "mark": one.mark,
    }
