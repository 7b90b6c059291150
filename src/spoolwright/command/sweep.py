"""`spoolwright sweep SHEET`: many casts over all that is not known, for every option, on every core."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable
from typing import Any

from spoolwright.command import throwing
from spoolwright.command.cast import read_works, value_as_data
from spoolwright.judgement.cast_words import gain_words, length_words
from spoolwright.judgement.sweep import (
    Sweep,
    SweepRow,
    cast_options,
    counted,
    in_threads,
    on_workers,
    sweep,
)
from spoolwright.judgement.works import all_works
from spoolwright.quantities import SYSTEMS, NotAQuantity, show, show_interval
from spoolwright.sheets import reel_sheet

SUMMARY = "cast a reel thousands of times over all that is not known, with every option, on all cores"
TYPED = f"sweep SHEET {throwing.TYPED} [--samples N] [--cluster ADDRESS] [--json]"

SAMPLES, SEED = 20_000, 1
WIDTH = 40
SHOWN_WEIGHTS = 6
MOST = 10_000_000


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "sheet", metavar="SHEET", help="a TOML file, or the name of a sheet that comes with us"
    )
    throwing.throw_arguments(parser)
    parser.add_argument(
        "--option",
        metavar="IDS",
        action="append",
        help="works of one option, commas between; may be said again (default: all that touch a cast)",
    )
    parser.add_argument(
        "--samples", type=int, default=SAMPLES, help=f"casts of every option (default: {SAMPLES})"
    )
    parser.add_argument(
        "--seed", type=int, default=SEED, help=f"the same seed gives the same numbers (default: {SEED})"
    )
    parser.add_argument(
        "--cluster", metavar="ADDRESS", help="cast on a Dask cluster instead of this machine's cores"
    )
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def run(args: argparse.Namespace) -> int:
    if not 100 <= args.samples <= MOST or args.seed < 0:
        typed = str(args.samples if not 100 <= args.samples <= MOST else args.seed)
        raise NotAQuantity(typed, "is out of range", f"100 to {MOST} samples, a seed of 0 or more")
    sheet = reel_sheet.load(args.sheet)
    kind = sheet.reel.kind
    throw = throwing.throw_of(args, sheet)
    options = cast_options(kind) if args.option is None else _options(args.option, kind)
    cast_with = on_workers(args.cluster) if args.cluster else in_threads
    if sys.stderr.isatty():
        cast_with = counted(cast_with, progress_bar(sys.stderr.write, sys.stderr.flush))
    found = sweep(
        sheet, None, options, throw=throw, samples=args.samples, seed=args.seed, cast_with=cast_with
    )
    if args.json:
        print(json.dumps(_as_data(found), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(found, args.units)))
    return 0


def _options(typed: list[str], kind: str) -> dict[str, tuple[str, ...]]:
    found = {}
    for text in typed:
        works = read_works([word.strip() for word in text.split(",") if word.strip()], kind)
        found[" + ".join(all_works()[work].title for work in works)] = works
    return found


def progress_bar(write: Callable[[str], Any], flush: Callable[[], Any]) -> Callable[[int, int], None]:
    """A bar on one line, gone when the work is done."""

    def told(done: int, of: int) -> None:
        filled = WIDTH * done // of
        write(f"\r  [{'=' * filled}{' ' * (WIDTH - filled)}] {done} of {of}")
        if done == of:
            write(f"\r{' ' * (WIDTH + 30)}\r")
        flush()

    return told


def _in_words(found: Sweep, system: str) -> list[str]:
    reel = found.sheet.reel
    lines = [
        f"{reel.maker} {reel.model}, {reel.kind}: {found.samples} casts of every option, seed {found.seed}."
    ]
    if found.why_not:
        return [lines[0].split(":")[0] + ".", found.why_not]
    for row in found.rows:
        lines += ["", row.name[0].upper() + row.name[1:], *_row_in_words(row, found, system)]
    lines += ["", "What decides how far today's reel casts, as a share of the spread:"]
    lines += [f"  {weight.words:44} {100 * weight.share:5.1f} %" for weight in found.weights[:SHOWN_WEIGHTS]]
    return lines


def _row_in_words(row: SweepRow, found: Sweep, system: str) -> list[str]:
    distance, slack = row.values["distance"], row.values["peak_slack"]
    spread = show_interval(distance.low, distance.high, "line_length", system)
    lines = [f"  goes {show(distance.middle, 'line_length', system)}, nine in ten {spread}"]
    if found.lip_slack > 0 and slack.high > 0:
        ahead = show_interval(slack.low, slack.high, "line_length", system)
        lines.append(
            f"  spool ahead of the line {length_words(slack.middle, system)}, nine in ten {ahead}; "
            f"{100 * row.over_runs:.1f} % over the lip"
        )
    if row.gain is not None:
        lines.append(f"  against today, brake untouched: {gain_words(row.gain, system)}")
    if row.gain_again is not None:
        share = f"{100 * (row.share_again or 0):.0f} %"
        lines.append(f"  with the brake set again, at {share}: {gain_words(row.gain_again, system)}")
    return lines


def _as_data(found: Sweep) -> dict[str, Any]:
    reel = found.sheet.reel
    return {
        "slug": reel.slug,
        "maker": reel.maker,
        "model": reel.model,
        "kind": reel.kind,
        "why_not": found.why_not or None,
        "samples": found.samples,
        "seed": found.seed,
        "chunks": found.chunks,
        "brake_share": found.share,
        "over_run_slack": {"value": found.lip_slack, "unit": "m"},
        "options": [_row_as_data(row) for row in found.rows],
        "weights": [{"name": w.name, "words": w.words, "share": w.share} for w in found.weights],
    }


def _row_as_data(row: SweepRow) -> dict[str, Any]:
    return {
        "name": row.name,
        "works": list(row.works),
        **{name: value_as_data(value) for name, value in row.values.items()},
        "over_runs": row.over_runs,
        "gain": None if row.gain is None else value_as_data(row.gain),
        "brake_again": row.share_again,
        "gain_again": None if row.gain_again is None else value_as_data(row.gain_again),
    }
