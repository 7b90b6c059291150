"""`spoolwright sheet ...`: is this reel sheet in order, and what is done to reels of its kind."""

from __future__ import annotations

import argparse
import json
from typing import Any

from spoolwright.judgement.work_words import changes
from spoolwright.judgement.works import Work, all_works
from spoolwright.quantities import SYSTEMS, show
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.drag_stack import Pair, StackReading, slipping_pairs
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_remarks import remarks

SUMMARY = "check a reel sheet, list the works on its kind, or print the schema of one"
TYPED = "sheet check FILE [--json]"


def arguments(parser: argparse.ArgumentParser) -> None:
    below = parser.add_subparsers(title="what to do", metavar="ACT", required=True)
    check = below.add_parser("check", help="check a reel sheet: every fault with its place")
    check.add_argument("file", metavar="FILE", help="a TOML file, or the name of a sheet that comes with us")
    check.add_argument("--json", action="store_true", help="print one JSON object")
    check.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")
    check.set_defaults(act=_check)
    schema = below.add_parser("schema", help="print the JSON Schema of a reel sheet")
    schema.set_defaults(act=_schema)
    shipped = below.add_parser("list", help="name the sheets that come with us")
    shipped.set_defaults(act=_list)
    works = below.add_parser("works", help="list the works done on this kind of reel, and what each changes")
    works.add_argument("file", metavar="FILE", help="a TOML file, or the name of a sheet that comes with us")
    works.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    works.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")
    works.set_defaults(act=_works)


def run(args: argparse.Namespace) -> int:
    return int(args.act(args))


def _check(args: argparse.Namespace) -> int:
    sheet = reel_sheet.load(args.file)
    stack = slipping_pairs(sheet.drag.stack) if sheet.drag else StackReading((), ())
    if args.json:
        print(json.dumps(_as_data(sheet, stack), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(sheet, stack, args.units)))
    return 0


def _schema(args: argparse.Namespace) -> int:
    print(json.dumps(reel_sheet.json_schema(), ensure_ascii=False, indent=2))
    return 0


def _list(args: argparse.Namespace) -> int:
    for slug in reel_sheet.shipped():
        reel = reel_sheet.load(slug).reel
        print(f"{slug:14} {reel.maker} {reel.model}, {reel.kind}")
    return 0


def _works(args: argparse.Namespace) -> int:
    kind = reel_sheet.load(args.file).reel.kind
    done = [work for work in all_works().values() if kind in work.kinds]
    if args.json:
        print(
            json.dumps(
                {"kind": kind, "works": [_work_as_data(work) for work in done]}, ensure_ascii=False, indent=2
            )
        )
        return 0
    print(f"Works on a {kind}, and what each changes:")
    for work in done:
        print(f"{work.id:24} {work.title}")
        for change in changes(work, args.units):
            print(f"{'':24}   {change}")
    return 0


def _work_as_data(work: Work) -> dict[str, Any]:
    effects = [{"on": e.on, "way": e.way, "value": e.value, "mark": e.mark} for e in work.effects]
    return {
        "id": work.id,
        "title": work.title,
        "says": work.says,
        "caution": work.caution,
        "effects": effects,
    }


def _in_words(sheet: ReelSheet, stack: StackReading, system: str) -> list[str]:
    reel = sheet.reel
    lines = [f"{reel.maker} {reel.model}, {reel.kind}: the sheet is in order."]
    if sheet.drag:
        lines.append(f"Slipping pairs in the drag stack: {len(stack.pairs)}.")
        lines.extend(f"  {_pair_in_words(pair, system)}" for pair in stack.pairs)
    lines.extend(f"Look: {remark}" for remark in remarks(sheet))
    return lines


def _pair_in_words(pair: Pair, system: str) -> str:
    outer, inner = (show(2 * r, "length", system) for r in (pair.outer_radius, pair.inner_radius))
    faces = f"{pair.lower} on {pair.upper}"
    return f"{faces}: {pair.face_material}, {pair.lubrication}, {outer} by {inner}"


def _as_data(sheet: ReelSheet, stack: StackReading) -> dict[str, Any]:
    reel = sheet.reel
    return {
        "in_order": True,
        "slug": reel.slug,
        "maker": reel.maker,
        "model": reel.model,
        "kind": reel.kind,
        "slipping_pairs": len(stack.pairs),
        "pairs": [_pair_as_data(pair) for pair in stack.pairs],
        "remarks": list(remarks(sheet)),
    }


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
