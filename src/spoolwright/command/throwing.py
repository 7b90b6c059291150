"""How a throw is typed: `--payload "150 g" --speed "55 m/s" --line "nylon 0.30 mm"`."""

from __future__ import annotations

import argparse
from dataclasses import replace

from spoolwright import quantities
from spoolwright.judgement.brake_setting import ACCEPTED, BrakeSetting, read_setting
from spoolwright.judgement.line_said import read_line
from spoolwright.judgement.throw import LIMITS, Throw, usual_throw
from spoolwright.sheets.payloads import payload_names
from spoolwright.sheets.reel_sheet import ReelSheet

TYPED = '--payload "150 g" --speed "55 m/s"'


def throw_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--payload", required=True, metavar="MASS", help='what is thrown, such as "150 g"')
    parser.add_argument(
        "--speed", required=True, metavar="SPEED", help='of the payload at the release, such as "55 m/s"'
    )
    parser.add_argument("--shape", choices=payload_names(), help="what it looks like (default: bomb lead)")
    parser.add_argument("--angle", metavar="ANGLE", help='above the horizon (default: "40 deg")')
    parser.add_argument("--wind", metavar="SPEED", help='from behind; "-5 m/s" or "5 m/s ahead" in the face')
    parser.add_argument("--line", metavar="LINE", help='such as "nylon 0.30 mm"')
    parser.add_argument("--fill", metavar="SHARE", help='line on the spool (default: "100 %%")')
    parser.add_argument("--brake", metavar="SETTING", help=ACCEPTED.replace("%", "%%"))


def throw_of(args: argparse.Namespace, sheet: ReelSheet) -> Throw:
    """The throw as it was typed; what was not said is as such a reel is usually thrown."""
    usual = usual_throw(sheet.reel.kind)
    throw = Throw(_read(args.payload, "mass", "payload"), _read(args.speed, "speed", "speed"), diameter=None)
    throw = replace(throw, shape=args.shape or throw.shape, diameter=usual.diameter)
    if args.angle is not None:
        throw = replace(throw, angle=_read(args.angle, "angle", "angle"))
    if args.wind is not None:
        throw = replace(throw, wind=_wind(args.wind))
    if args.line is not None:
        line = read_line(args.line)
        throw = replace(throw, line=line.material.name, diameter=line.diameter)
    if args.fill is not None:
        throw = replace(throw, fill=_read(args.fill, "ratio", "fill"))
    return replace(throw, brake=_brake(args.brake, sheet)) if args.brake is not None else throw


def _brake(text: str, sheet: ReelSheet) -> BrakeSetting:
    setting = read_setting(text)
    there = (sheet.brakes.blocks or 0) if sheet.brakes else 0
    if setting.blocks is not None and setting.blocks > there:
        raise quantities.NotAQuantity(text, "is more than this reel has", f"{there} blocks at the most")
    return setting


def _read(text: str, dimension: str, name: str) -> float:
    value = quantities.read(text, dimension)
    low, high, words = LIMITS[name]
    if not low <= value <= high * (1 + 1e-9):
        raise quantities.NotAQuantity(text, "is out of range", words)
    return value


def _wind(text: str) -> float:
    """A head wind may be typed with its word, because a dash is easily taken for an option."""
    word = text.strip()
    if word.endswith("ahead"):
        return -abs(_read(word.removesuffix("ahead").strip(), "speed", "wind"))
    return _read(word.removesuffix("behind").strip(), "speed", "wind")
