"""`spoolwright series FILE`: pulls at several settings, one after the other, or slow and fast."""

from __future__ import annotations

import argparse
import json
from pathlib import Path
from typing import Any

from spoolwright.command.gauge_options import gauge_arguments, gauge_of, way_arguments, way_of
from spoolwright.quantities import DIMENSIONS, SYSTEMS, read

SUMMARY = "read a series of pulls: where the drag bites, what a turn adds, and what is wrong with it"
TYPED = "series FILE --sheet SHEET [--radius RADIUS] [--json]"

_ALONG = ("turns", "number", "time", "temperature", "speed")


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "file", metavar="FILE", help="a table: turns, start-up pull, running pull, units in its first row"
    )
    parser.add_argument("--along", choices=_ALONG, default="turns", help="what changes from pull to pull")
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")
    drag = parser.add_argument_group("what is known of the drag")
    drag.add_argument("--sheet", metavar="SHEET", help="a TOML file, or a sheet that comes with us")
    drag.add_argument(
        "--radius", metavar="RADIUS", help="where the line leaves (default: a full spool by the sheet)"
    )
    drag.add_argument(
        "--felt", action="store_true", help="free was found by feel, not by a stop or a mark that stays"
    )
    drag.add_argument("--earlier", metavar="FILE", help="the same table from when the drag was sound")
    drag.add_argument(
        "--lost", metavar="THICKNESS", help='thickness lost by all discs together, such as "0.4 mm"'
    )
    drag.add_argument(
        "--not", dest="ruled_out", metavar="CAUSE", action="append", default=[],
        help="a cause that was looked for and is not there: worn, glazed, oiled, weak, misstacked",
    )  # fmt: skip
    gauge_arguments(parser)
    way_arguments(parser)


def run(args: argparse.Namespace) -> int:
    from spoolwright.bench import pull_corrections
    from spoolwright.bench.uncertainty import COVERAGE_FACTOR

    taken, gauge = _taken(args, args.file)
    said, data = {"turns": _settings, "speed": _speed}.get(args.along, _fade)(args, taken, gauge)
    data["notes"] += pull_corrections.said(way_of(args))
    data["coverage_factor"] = COVERAGE_FACTOR
    if args.json:
        print(json.dumps(data, ensure_ascii=False, indent=2))
    else:
        print("\n".join([*said, *(f"Note: {note}" for note in data["notes"])]))
    return 0


def _taken(args: argparse.Namespace, name: str) -> tuple[Any, Any]:
    from spoolwright.bench import pull_corrections, pull_table

    path = Path(name)
    shown = pull_table.read(path.read_bytes(), name=path.name, along=args.along)
    return pull_corrections.corrected_pulls(shown, gauge_of(args), way_of(args))


def _settings(args: argparse.Namespace, taken: Any, gauge: Any) -> tuple[list[str], dict[str, Any]]:
    from spoolwright.bench import pull_series
    from spoolwright.judgement import drag_series_words
    from spoolwright.sheets import reel_sheet
    from spoolwright.sheets.drag_setting import setting_of

    sheet = reel_sheet.load(args.sheet) if args.sheet else None
    series = pull_series.fit(taken, gauge)
    found = _weighed(args, sheet, series) if sheet is not None else None
    said = [*drag_series_words.read_out(series, args.units, setting_of(sheet))]
    if found is not None:
        said += ["", drag_series_words.verdict_words(found), *drag_series_words.evidence(found, args.units)]
    else:
        said.append("Name the reel's sheet with --sheet to hear what may be wrong with the drag.")
    return said, _as_data(args, series, found)


def _weighed(args: argparse.Namespace, sheet: Any, series: Any) -> Any:
    from spoolwright.bench import pull_series
    from spoolwright.bench.uncertainty import Measured
    from spoolwright.bench.unreadable import Unreadable
    from spoolwright.judgement import drag_faults, drag_series

    strange = [key for key in args.ruled_out if key not in drag_faults.KEYS]
    if strange or set(args.ruled_out) >= set(drag_faults.KEYS):
        raise Unreadable(f"“{', '.join(args.ruled_out)}” cannot be ruled out", "--not", _causes(drag_faults))
    if sheet.drag is None:
        raise Unreadable("this sheet has no drag", "--sheet", "the sheet of a reel with a drag")
    radius = read(args.radius, "length") if args.radius else sheet.spool.full_radius
    if not radius > 0:
        raise Unreadable("the radius is not above zero", "--radius", 'such as "21 mm"')
    earlier = pull_series.fit(*_taken(args, args.earlier)) if args.earlier else None
    lost = Measured(read(args.lost, "length"), 0.05e-3, "length") if args.lost else None
    case = drag_series.Case(sheet, series, radius, args.felt, earlier, lost, frozenset(args.ruled_out))
    return drag_series.weigh(case)


def _causes(drag_faults: Any) -> str:
    return ", ".join(key for key in drag_faults.KEYS if key != drag_faults.SOUND)


def _as_data(args: argparse.Namespace, series: Any, found: Any) -> dict[str, Any]:
    from spoolwright.judgement import drag_series_words

    data: dict[str, Any] = {
        "pulls": len(series.pulls),
        "settings": [
            {"at": one.at, "running": _value(one.running), "pulls": one.pulls} for one in series.settings
        ],
        "pull_per_turn": _value(series.per_turn),
        "onset": _value(series.onset),
        "levels_off": _value(series.levels_off),
        "start_up_ratio": _value(series.start_up_ratio),
        "misfit": series.misfit,
        "notes": list(series.notes),
    }
    if found is None:
        return data
    return data | {
        "verdict": found.verdict,
        "between": list(found.between),
        "chances": dict(found.chances),
        "words": drag_series_words.verdict_words(found),
        "evidence": list(drag_series_words.evidence(found, args.units)),
        "friction": _value(found.known.friction),
        "clamp_force": _value(found.known.clamp),
        "radius": {"value": found.case.radius, "unit": "m"},
    }


def _value(value: Any) -> dict[str, Any] | None:
    if value is None:
        return None
    return {"value": value.value, "uncertainty": value.expanded, "unit": DIMENSIONS[value.dimension].si}


def _fade(args: argparse.Namespace, taken: Any, gauge: Any) -> tuple[list[str], dict[str, Any]]:
    from spoolwright.bench import pull_fade
    from spoolwright.judgement import repeat_words

    found = pull_fade.fit(taken)
    said = list(repeat_words.fade_words(found, args.units))
    data = {
        "verdict": found.verdict,
        "first": _value(found.first),
        "change": _value(found.change),
        "pulls": len(found.pulls),
        "notes": list(found.notes),
    }
    return said, data


def _speed(args: argparse.Namespace, taken: Any, gauge: Any) -> tuple[list[str], dict[str, Any]]:
    from spoolwright.bench import pull_speed
    from spoolwright.judgement import repeat_words

    found = pull_speed.fit(taken)
    said = list(repeat_words.speed_words(found, args.units))
    data = {
        "verdict": found.verdict,
        "per_tenfold": _value(found.per_tenfold),
        "start_up_ratio": _value(found.start_up_ratio),
        "rough_up_to": found.rough_up_to,
        "smooth_from": found.smooth_from,
        "notes": list(found.notes),
    }
    return said, data
