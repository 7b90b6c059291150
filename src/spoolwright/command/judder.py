"""`spoolwright judder SHEET`: how hard the drag of a reel starts, and whether the pull then judders."""

from __future__ import annotations

import argparse
import json
from typing import Any

from spoolwright.command.fish import fish_arguments, fish_asked, numbers, the_works, value
from spoolwright.judgement.run_test import RunTest, run_test
from spoolwright.judgement.run_words import LOADED_CAUTION, judder_words
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

SUMMARY = "say how hard a drag starts and whether it judders, with so much line out at such a speed"
TYPED = 'judder SHEET [--pull "3 kg"] [--speed "4 m/s"] [--out "20 m"] [--line "nylon 0.40 mm"] [--json]'


def arguments(parser: argparse.ArgumentParser) -> None:
    fish_arguments(parser)


def run(args: argparse.Namespace) -> int:
    sheet = reel_sheet.load(args.sheet)
    works = the_works(args.work, sheet.reel.kind)
    test = run_test(sheet, {}, works, fish=fish_asked(args))
    if args.json:
        print(json.dumps(_as_data(sheet, test), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(sheet, test, args.units)))
    return 0


def _in_words(sheet: ReelSheet, test: RunTest, system: str) -> list[str]:
    reel = sheet.reel
    lines = [f"{reel.maker} {reel.model}, {reel.kind}: as a fish takes line.", *judder_words(test, system)]
    if test.judder is None:
        return lines
    lines += ["", "What this rests on:", *(f"  {why}" for why in test.rests_on[-2:])]
    return [*lines, *(f"Look: {note}" for note in test.notes), LOADED_CAUTION]


def _as_data(sheet: ReelSheet, test: RunTest) -> dict[str, Any]:
    reel, told = sheet.reel, test.judder
    head = {"slug": reel.slug, "maker": reel.maker, "model": reel.model, "kind": reel.kind}
    if told is None:
        return head | {"why_not": test.why_not}
    return head | {
        "why_not": "",
        "static": value(told.static),
        "running": value(told.running),
        "start_up_peak": value(told.start_up_peak),
        "highest": value(told.highest),
        "lowest": value(told.lowest),
        "swing": value(told.swing),
        "frequency": value(told.frequency),
        "smooth_above": value(told.smooth_above),
        "runs_smooth": told.runs_smooth,
        "line_goes_slack": told.slack,
        "mass": {"value": told.mass, "unit": "kg"},
        "line_stiffness": {"value": told.stiffness, "unit": "N/m"},
        "trace": {"time_s": numbers(told.time), "pull_n": numbers(told.pull)},
        "words": list(judder_words(test)),
        "rests_on": list(test.rests_on[-2:]),
        "notes": list(test.notes),
        "caution": LOADED_CAUTION,
        "samples": test.samples,
        "seed": test.seed,
    }
