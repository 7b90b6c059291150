"""`spoolwright sheet check FILE`: is this reel sheet in order, and how many faces of its drag slip."""

from __future__ import annotations

import argparse
import json
from typing import Any

from spoolwright.quantities import SYSTEMS, show
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.drag_stack import Pair, StackReading, slipping_pairs
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_remarks import remarks

SUMMARY = "check a reel sheet, or print the schema of one"
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
