"""`spoolwright speed`: how fast the mechanics is on this machine, beside general solvers and beside C."""

from __future__ import annotations

import argparse
import json
import os
import platform
from collections.abc import Sequence
from dataclasses import asdict
from typing import Any, NamedTuple

import numpy as np

from spoolwright.command import speed_casts, speed_drag, speed_start
from spoolwright.command.speed_casts import BesideC, Rate
from spoolwright.command.speed_clock import Error, load
from spoolwright.command.speed_drag import Pair
from spoolwright.command.speed_start import Start

SUMMARY = "measure how fast casts, judder and heat are worked out on this machine"
TYPED = "speed [--casts N] [--most N] [--json]"

CASTS, MOST = 300, 1_000_000
BEYOND_SCIPY, OF_C, OF_TWO, LINEAR_WITHIN, IMPORT_WITHIN = 500.0, 0.9, 1.8, 0.05, 0.3
BUSY, EVEN = 0.5, 1.03


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--casts", type=int, default=CASTS, metavar="N", help=f"casts that SciPy flies too (default: {CASTS})"
    )
    parser.add_argument(
        "--most", type=int, default=MOST, metavar="N", help=f"most casts of one call (default: {MOST})"
    )
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")


def run(args: argparse.Namespace) -> int:
    busy = load()
    measured = {
        "machine": f"{platform.machine()}, {os.cpu_count()} cores, Python {platform.python_version()}",
        "load_before": busy,
        "uneven": speed_casts.how_uneven(),
        "starts": speed_start.starts(max(args.most, 1)),
        "casts": speed_casts.beside_scipy(max(args.casts, 1)),
        "c": speed_casts.beside_c(),
        "threads": speed_casts.in_two_threads(),
        "growth": speed_casts.growth(max(args.most, speed_casts.KINDS)),
        "slips": speed_drag.slips(),
        "stacks": speed_drag.stacks(),
    }
    measured["goals"] = goals(measured)
    if args.json:
        print(json.dumps(measured, default=asdict, ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(measured)))
    return 0


def goals(measured: dict[str, Any]) -> list[dict[str, Any]]:
    """What was aimed at, what was measured, and whether it is reached; nothing where it could not be."""
    casts: dict[str, Rate] = measured["casts"]
    ours, rival = casts["ours"], casts["RK45"]
    as_near = ours.error.middle <= rival.error.middle and ours.error.worst <= rival.error.worst
    found = [
        _goal("casts beside SciPy's RK45", ours.per_second / rival.per_second, BEYOND_SCIPY, "times"),
        {"what": "at an error that is no greater", "reached": as_near},
    ]
    c: BesideC = measured["c"]
    if not c.why_not:
        found.append(_goal("casts beside C on one core", c.ours / c.theirs, OF_C, "times"))
    if measured["threads"]:
        alone, together = measured["threads"]
        found.append(_goal("two threads beside one", together / alone, OF_TWO, "times"))
    apart = line_through(measured["growth"]).apart
    found.append(_goal("growth off a straight line", apart, LINEAR_WITHIN, "of itself", least=False))
    start: Start = measured["starts"]["mechanics"]
    found.append(_goal("import of the mechanics", start.wall, IMPORT_WITHIN, "s", least=False))
    return found


def _goal(what: str, got: float, aim: float, unit: str, *, least: bool = True) -> dict[str, Any]:
    reached = got >= aim if least else got <= aim
    return {"what": what, "measured": got, "aim": aim, "unit": unit, "at_least": least, "reached": reached}


class Straight(NamedTuple):
    """Seconds that a call takes by itself, seconds for each cast, and how far the worst point is off."""

    call: float
    each: float
    apart: float


def line_through(growth: dict[int, float]) -> Straight:
    """The straight line that lies best through times of very different size: relative least squares."""
    counts = np.array(list(growth), dtype=float)
    seconds = counts * np.array(list(growth.values()))
    sides = np.stack([1 / seconds, counts / seconds], axis=1)
    call, each = np.linalg.lstsq(sides, np.ones_like(counts), rcond=None)[0]
    return Straight(float(call), float(each), float(np.max(np.abs(sides @ [call, each] - 1))))


def _in_words(measured: dict[str, Any]) -> list[str]:
    lines = [f"Measured in one run on {measured['machine']}."]
    if (uneven := measured["uneven"]) > EVEN:
        lines.append(
            f"The same work takes {uneven:.2f} times its best time here, as a rule: less is no difference."
        )
    if (busy := measured["load_before"]) is not None and busy > BUSY:
        lines.append(f"The machine is not idle (load {busy:.1f}): these figures are worse than it can do.")
    line = line_through(measured["growth"])
    lines += ["", *_table(measured), "", "From few casts in one call to many (processor time):"]
    told = f"{1e3 * line.call:.2f} ms a call and {1e6 * line.each:.2f} us a cast"
    lines.append(f"  {told}; no point is further than {line.apart:.0%} off that line")
    lines += [f"  {count:>9,} casts   {1e6 * s:6.2f} us a cast" for count, s in measured["growth"].items()]
    lines += ["", "A start, in a process of its own:", *_starts(measured["starts"])]
    return [*lines, "", "What was aimed at:", *(f"  {_aim(goal)}" for goal in measured["goals"])]


def _table(measured: dict[str, Any]) -> list[str]:
    casts: dict[str, Rate] = measured["casts"]
    rows = [("what", "in a second", "error: middle, worst", "")]
    rows.append(_cast_row("casts, this program, one core", casts["ours"], None))
    rows += [_cast_row(f"casts, SciPy {name}", casts[name], casts["ours"]) for name in speed_casts.RIVALS]
    c: BesideC = measured["c"]
    if c.why_not:
        rows.append(("casts, the same in C", "not measured", "", c.why_not))
    else:
        rows.append(("casts, the kernel alone", f"{c.ours:,.0f}", "", "no checks of what is given"))
        beside = f"the kernel does {c.ours / c.theirs:.2f} of it"
        rows.append(("casts, the same in C, one core", f"{c.theirs:,.0f}", f"{c.apart:.1g} m apart", beside))
    if measured["threads"]:
        alone, together = measured["threads"]
        rows.append(("casts, one thread, by the clock", f"{alone:,.0f}", "", ""))
        twice = f"{together / alone:.2f} times one"
        in_c = f"; C comes to {c.two_of_one:.2f} times" if c.two_of_one else ""
        rows.append(("casts, two threads", f"{together:,.0f}", "", twice + in_c))
    else:
        rows.append(("casts, two threads", "not measured", "", "this machine has one core"))
    rows += _pair_rows("slips of a juddering drag", "RK45", measured["slips"])
    rows += _pair_rows("runs of a drag stack", "BDF", measured["stacks"])
    return _lined_up(rows)


def _cast_row(what: str, rate: Rate, ours: Rate | None) -> tuple[str, str, str, str]:
    slower = f"{ours.per_second / rate.per_second:,.0f} times slower; " if ours else ""
    return what, f"{rate.per_second:,.0f}", _error(rate.error), slower + rate.work


def _pair_rows(what: str, rival: str, pair: Pair) -> list[tuple[str, str, str, str]]:
    slower = f"{pair.ours / pair.theirs:,.1f} times slower; {pair.work}"
    return [
        (what, f"{pair.ours:,.0f}", f"{pair.our_error:.0e}", ""),
        (f"the same, SciPy {rival}", f"{pair.theirs:,.0f}", f"{pair.their_error:.0e}", slower),
    ]


def _error(error: Error) -> str:
    return f"{error.middle:.0e}, {error.worst:.0e}"


def _lined_up(rows: Sequence[tuple[str, str, str, str]]) -> list[str]:
    widths = [max(len(row[column]) for row in rows) for column in range(3)]
    return [
        f"  {what:{widths[0]}}  {rate:>{widths[1]}}  {error:{widths[2]}}  {remark}".rstrip()
        for what, rate, error, remark in rows
    ]


def _starts(starts: dict[str, Start]) -> list[str]:
    lines = []
    for what, start in starts.items():
        memory = f"{start.memory / 1e6:6.0f} MB" if start.memory else "memory not told by this system"
        lines.append(f"  {what:26} {start.wall:6.2f} s ({start.processor:5.2f} s of the processor)  {memory}")
    return lines


def _aim(goal: dict[str, Any]) -> str:
    word = "reached" if goal["reached"] else "missed"
    if "measured" not in goal:
        return f"{goal['what']}: {word}"
    side = "at least" if goal["at_least"] else "at most"
    return f"{goal['what']}: {goal['measured']:.3g} {goal['unit']}, {side} {goal['aim']:g}: {word}"
