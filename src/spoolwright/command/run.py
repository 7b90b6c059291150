"""`spoolwright run SHEET`: how hot a fish's run makes the drag of a reel, and how long it then stays hot."""

from __future__ import annotations

import argparse
import json
from typing import Any

from spoolwright.command.fish import fish_arguments, fish_asked, numbers, the_works, value
from spoolwright.judgement.run_heat import RunHeat
from spoolwright.judgement.run_test import RunTest, run_test
from spoolwright.judgement.run_words import HOT_CAUTION, heat_words
from spoolwright.sheets import reel_sheet
from spoolwright.sheets.reel_sheet import ReelSheet

SUMMARY = "say how hot a fish's run makes a drag, when its discs are at their limit, how long to wait"
TYPED = 'run SHEET [--pull "3 kg"] [--speed "4 m/s"] [--distance "100 m"] [--recorded FILE] [--json]'

SHOWN_AT = (0.1, 0.25, 0.5, 0.75, 1.0)
"""Shares of the run at which its temperature is printed."""


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
    lines = [f"{reel.maker} {reel.model}, {reel.kind}: a run against its drag.", *heat_words(test, system)]
    if test.heat is None:
        return lines
    lines += ["", "Hottest face through the run (in brackets what 90 % of such reels give):"]
    lines += _table(test.heat, system)
    lines += ["", "What this rests on:", *(f"  {why}" for why in test.rests_on)]
    return [*lines, *(f"Look: {note}" for note in test.notes), HOT_CAUTION]


def _table(heat: RunHeat, system: str) -> list[str]:
    from spoolwright.quantities import show, show_interval

    end = float(heat.time[heat.run_end])
    rows = []
    for share in SHOWN_AT:
        at = int(abs(heat.time[: heat.run_end + 1] - share * end).argmin())
        ends = show_interval(float(heat.low[at]), float(heat.high[at]), "temperature", system)
        middle = show(float(heat.middle[at]), "temperature", system)
        rows.append(f"  {show(float(heat.time[at]), 'time', system):>8}  {middle:>8}  ({ends})")
    return rows


def _as_data(sheet: ReelSheet, test: RunTest) -> dict[str, Any]:
    reel, heat = sheet.reel, test.heat
    head = {"slug": reel.slug, "maker": reel.maker, "model": reel.model, "kind": reel.kind}
    if heat is None or test.pull is None or test.greatest is None:
        return head | {"why_not": test.why_not}
    return head | {
        "why_not": "",
        "pull": value(test.pull),
        "greatest_pull": value(test.greatest),
        "way": {"value": test.way, "unit": "m"},
        "radius": {"starts_at": test.starts_at, "falls_to": test.falls_to, "unit": "m"},
        "energy": value(heat.energy),
        "hottest_face": heat.hottest,
        "after_run": value(heat.after_run),
        "limit": {**value(heat.limit), "material": heat.limit_material},
        "reaches_limit": heat.chance,
        "time_to_limit": value(heat.time_to_limit),
        "pull_lost": value(heat.pull_lost),
        "wait_until_touched": value(heat.wait_touch),
        "wait_until_again": value(heat.wait_again),
        "again_possible": heat.again_chance,
        "trace": {
            "time_s": numbers(heat.time),
            "low_k": numbers(heat.low),
            "middle_k": numbers(heat.middle),
            "high_k": numbers(heat.high),
            "run_ends_at": heat.run_end,
        },
        "words": list(heat_words(test)),
        "rests_on": list(test.rests_on),
        "notes": list(test.notes),
        "caution": HOT_CAUTION,
        "samples": test.samples,
        "seed": test.seed,
    }
