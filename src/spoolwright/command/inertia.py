"""`spoolwright inertia WAY`: weights, a ring, pendulums, a spring or sizes to a spool's inertia."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from spoolwright.quantities import SYSTEMS, show

SUMMARY = "find a spool's moment of inertia: falling weights, a ring, pendulums, a spring, its sizes"
TYPED = (
    'inertia fall --mass-1 "2.00 g" --time-1 "1.58 s; 1.60 s; 1.59 s" --mass-2 "5.00 g" '
    '--time-2 "1.01 s" --height "0.800 m" --radius "20.0 mm" [--sheet SHEET] [--json]'
)


def arguments(parser: argparse.ArgumentParser) -> None:
    from spoolwright.sheets import inertia_methods

    ways = parser.add_subparsers(title="ways", metavar="WAY", required=True, dest="way")
    for method in inertia_methods.methods().values():
        _of_method(ways.add_parser(method.id, help=method.title, description=method.says), method)
    swing = ways.add_parser("swing", help="period and decay of a recorded swing")
    swing.add_argument("file", metavar="FILE", help="a CSV of time and angle or angular velocity")
    swing.add_argument(
        "--column", metavar="COLUMN", default="", help="the one that swings, by title or number"
    )
    both = ways.add_parser("together", help="weigh several results, and say whether they agree")
    both.add_argument("files", metavar="FILE", nargs="+", help="what --json printed of each")
    for way in (swing, both):
        _common(way)


def _of_method(parser: argparse.ArgumentParser, method: Any) -> None:
    for one in method.asks:
        timed = method.takes_record and one.key in ("time", "swings")
        option = f"--{one.key.replace('_', '-')}"
        words = f'{one.words.lower()}, such as "{one.example}"'
        parser.add_argument(option, metavar="X", required=not timed, help=words)
    if method.takes_record:
        parser.add_argument("--record", metavar="FILE", help="of the swing, instead of --swings and --time")
        parser.add_argument("--column", metavar="COLUMN", default="", help="of the record that swings")
    parser.add_argument("--by-hand", action="store_true", help="times by a stopwatch, not from a video")
    parser.add_argument("--sheet", metavar="SHEET", help="reel sheet to set it beside")
    parser.add_argument("--line-on", action="store_true", help="the spool turned full of line")
    _common(parser)


def _common(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def run(args: argparse.Namespace) -> int:
    if args.way == "swing":
        return _said(args, *_swing(args))
    if args.way == "together":
        return _said(args, *_together(args))
    return _said(args, *_method(args))


def _said(args: argparse.Namespace, data: dict[str, Any], lines: Iterable[str]) -> int:
    print(json.dumps(data, ensure_ascii=False, indent=2) if args.json else "\n".join(lines))
    return 0


def _recorded(path: str, column: str) -> tuple[Any, tuple[str, ...]]:
    from spoolwright.bench import swing, swing_file

    file = Path(path)
    record = swing_file.read(file.read_bytes(), name=file.name, column=column)
    found = swing.fit(record.time, record.signal)
    return found, (*record.notes, *found.notes)


def _swing(args: argparse.Namespace) -> tuple[dict[str, Any], list[str]]:
    found, notes = _recorded(args.file, args.column)
    data = {
        **{name: _plain(getattr(found, name)) for name in ("period", "decay", "damping")},
        "swings": found.swings,
        "relative_rms": found.relative_rms,
        "units": {"period": "s", "decay": "1/s", "damping": "1"},
        "notes": list(notes),
    }
    percent = show(found.damping.value, "ratio", uncertainty=found.damping.expanded, unit="%")
    lines = [
        f"One swing there and back: {_shown(found.period, args.units)}, over {found.swings:.1f} swings.",
        f"Damping: {percent} of what would stop it from swinging.",
        f"The fit leaves over {found.relative_rms:.1%} of the swing. Uncertainties are k = 2.",
    ]
    return data, [*lines, *(f"Note: {note}" for note in notes)]


def _method(args: argparse.Namespace) -> tuple[dict[str, Any], list[str]]:
    from spoolwright.bench import inertia
    from spoolwright.bench.uncertainty import COVERAGE_FACTOR
    from spoolwright.sheets import inertia_methods

    method = inertia_methods.method(args.way)
    typed = {one: getattr(args, one.key) for one in method.asks}
    given = {
        one.key: inertia.known(one, text, by_hand=args.by_hand)
        for one, text in typed.items()
        if text is not None
    }
    swung, notes = None, ()
    if method.takes_record and args.record:
        swung, notes = _recorded(args.record, args.column)
    found = inertia.read(method.id, given, swung)
    said = _beside_sheet(args, found.inertia)
    data = {
        "way": method.id,
        "inertia": _plain(found.inertia),
        "friction": _plain(found.friction) if found.friction else None,
        "units": {"inertia": "kg m^2", "friction": "N m"},
        "coverage_factor": COVERAGE_FACTOR,
        "budget": [vars(row) for row in found.budget],
        "sheet": said[1],
        "notes": [*found.notes, *notes],
    }
    return data, list(_in_words(method, found, said[0], notes, args.units))


def _beside_sheet(args: argparse.Namespace, found: Any) -> tuple[str, dict[str, Any] | None]:
    if not args.sheet:
        return "", None
    from spoolwright.judgement import agreement, sheet_inertia
    from spoolwright.sheets import reel_sheet

    stated, _ = sheet_inertia.of_sheet(reel_sheet.load(args.sheet), line_on=args.line_on)
    words = agreement.beside(found, ("The sheet", stated), args.units)
    return words, {"inertia": _plain(stated), "agrees": agreement.agrees(found, stated)}


def _in_words(method: Any, found: Any, sheet: str, notes: tuple[str, ...], units: str) -> Iterable[str]:
    from spoolwright.bench.inertia_reading import RESULT

    yield f"Moment of inertia {_shown(found.inertia, units)} (k = 2), by {method.title}."
    if found.friction is not None:
        yield f"Friction torque   {_shown(found.friction, units)}"
    yield "What the uncertainty is made of:"
    own = [row for row in found.budget if row.result == RESULT and row.uncertainty > 0]
    for row in sorted(own, key=lambda row: -row.uncertainty):
        yield f"  {show(row.uncertainty, 'inertia', units):>18}  {row.source}"
    if sheet:
        yield sheet
    yield from (f"Note: {note}" for note in (*found.notes, *notes))
    if method.caution:
        yield f"{method.caution} Local rules come before these words."


def _together(args: argparse.Namespace) -> tuple[dict[str, Any], list[str]]:
    from spoolwright.bench import consistency
    from spoolwright.bench.unreadable import Unreadable
    from spoolwright.judgement import agreement

    results = [_kept(Path(path)) for path in args.files]
    if len(results) < 2:
        raise Unreadable("one result agrees with itself", "", "two files or more")
    mean, words = agreement.together(results, args.units)
    found = consistency.combine([one for _, one in results])
    data = {
        "inertia": _plain(mean),
        "agree": found.agree,
        "chi_squared": found.chi_squared,
        "degrees_of_freedom": found.freedom,
        "chance": found.chance,
        "birge_ratio": found.birge,
        "farthest": results[found.apart][0],
        "units": {"inertia": "kg m^2"},
    }
    return data, [*(f"{name}: {_shown(one, args.units)}" for name, one in results), words]


def _kept(path: Path) -> tuple[str, Any]:
    from spoolwright.bench.uncertainty import Measured
    from spoolwright.bench.unreadable import Unreadable

    try:
        data = json.loads(path.read_text(encoding="utf-8"))
        value, spread = float(data["inertia"]["value"]), float(data["inertia"]["standard_uncertainty"])
        name = str(data["way"])
    except (ValueError, KeyError, TypeError):
        raise Unreadable(
            "this is no result of spoolwright inertia", path.name, "what --json printed"
        ) from None
    if not spread > 0:
        raise Unreadable("the result has no uncertainty", path.name, "what --json printed")
    return name, Measured(value, spread, "inertia")


def _plain(one: Any) -> dict[str, float]:
    return {
        "value": one.value,
        "standard_uncertainty": one.uncertainty,
        "expanded_uncertainty": one.expanded,
    }


def _shown(one: Any, units: str) -> str:
    return show(one.value, one.dimension, units, one.expanded)
