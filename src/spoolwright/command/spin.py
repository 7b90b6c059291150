"""`spoolwright spin FILE`: a recording or a list of ticks to what a coast-down says of a spool's drag."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterable
from dataclasses import replace
from math import floor, log10
from pathlib import Path
from typing import Any

from spoolwright.quantities import NotAQuantity, read, show

SUMMARY = "read a spin-down: how fast the spool was, what slows it, when it stops"
TYPED = (
    'spin FILE [--ticks-per-turn N | --hum [--orders N]] [--inertia "3e-5 kg m^2"] [--sheet SHEET] [--json]'
)

INERTIA_IS_KNOWN_TO = 0.0
"""Relative standard uncertainty of an inertia that is typed without one."""

_TORQUE_UNITS = {"constant": "N m", "viscous": "N m s", "quadratic": "N m s^2"}
_PER_INERTIA_UNITS = {"constant": "rad/s^2", "viscous": "1/s", "quadratic": "1/rad"}
_PLAIN = {"initial_speed": "rad/s", "stop_time": "s"}


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "file", metavar="FILE", help="a recording in which each turn ticks, or a CSV of tick times"
    )
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument(
        "--inertia", metavar="I", help='of all that turns, such as "3e-5 kg m^2"; gives torques'
    )
    parser.add_argument(
        "--inertia-uncertainty", metavar="U", help='standard uncertainty of it, such as "2e-6 kg m^2"'
    )
    parser.add_argument("--time-unit", metavar="UNIT", help="of the ticks in a CSV: s, ms or us")
    parser.add_argument(
        "--ticks-per-turn", metavar="N", type=int, default=1, help="marks on the spool (default: 1)"
    )
    parser.add_argument("--hum", action="store_true", help="a spool without ticks: follow its falling tone")
    parser.add_argument(
        "--orders", metavar="N", type=float, default=1.0, help="waves of the hum in one turn (default: 1)"
    )
    parser.add_argument(
        "--sheet", metavar="SHEET", help="reel sheet of the bare spool that was spun; the verdict rests on it"
    )


def run(args: argparse.Namespace) -> int:
    from spoolwright.bench import spin_reading
    from spoolwright.bench.unreadable import Unreadable
    from spoolwright.judgement.spin_verdict import spin_verdict
    from spoolwright.sheets import reel_sheet

    if args.ticks_per_turn < 1:
        raise Unreadable(f"{args.ticks_per_turn} ticks a turn cannot be", "--ticks-per-turn", "1 or more")
    if not args.orders > 0:
        raise Unreadable(f"{args.orders:g} waves a turn cannot be", "--orders", "above zero")
    sheet = reel_sheet.load(args.sheet) if args.sheet else None
    inertia = _inertia(args.inertia, args.inertia_uncertainty)
    path = Path(args.file)
    heard, notes = _heard(path, args.time_unit or "", args.ticks_per_turn)
    way, a_turn = ("hum", args.orders) if args.hum else ("ticks", args.ticks_per_turn)
    result = spin_reading.read(heard, inertia, heard_as=way, a_turn=a_turn)
    result = replace(result, notes=(*notes, *result.notes))
    steps = spin_reading.steps(result)
    verdict = spin_verdict(result, steps, sheet, bare=True)
    if args.json:
        print(json.dumps(_as_data(result) | _said(verdict, steps, result), ensure_ascii=False, indent=2))
    else:
        print("\n".join((*_in_words(result), f"Verdict: {verdict.words}", *verdict.evidence)))
    return 0


def _inertia(typed: str | None, spread: str | None) -> Any:
    from spoolwright.bench.uncertainty import Measured

    if typed is None:
        return None
    value = read(typed, "inertia")
    if value <= 0:
        raise NotAQuantity(typed, "is not above zero", 'a moment of inertia such as "3e-5 kg m^2"')
    deviation = abs(read(spread, "inertia")) if spread else INERTIA_IS_KNOWN_TO * value
    return Measured(value, deviation, "inertia")


def _heard(path: Path, time_unit: str, marks: int) -> tuple[Any, tuple[str, ...]]:
    """Sound or tick times, and what was put right on the way; what the file is decides, not its name."""
    from spoolwright.bench import recording, sound_kinds, ticks

    if recording.is_sound(path) or path.suffix.lower() in sound_kinds.ENDINGS:
        sound = recording.read(path, name=path.name)
        return sound, sound.notes
    return ticks.read_csv(path.read_bytes(), name=path.name, time_unit=time_unit, marks=marks), ()


def _said(verdict: Any, steps: Any, result: Any) -> dict[str, Any]:
    return {
        "heard_as": result.heard_as,
        "verdict": verdict.name,
        "verdict_words": verdict.words,
        "evidence": list(verdict.evidence),
        "steps": {
            "looked_for": steps.looked,
            "losses": [{"time": step.time, "change": step.change} for step in steps.losses],
            "gains": [{"time": step.time, "change": step.change} for step in steps.gains],
            "false_alarm": steps.false_alarm,
        },
        "cut_off": {
            "before": len(result.cut_off.before),
            "after": len(result.cut_off.after),
            "touched": result.cut_off.touched,
        },
    }


def _units(result: Any) -> dict[str, str]:
    return {**_PLAIN, **(_PER_INERTIA_UNITS if result.per_inertia else _TORQUE_UNITS)}


def _as_data(result: Any) -> dict[str, Any]:
    from spoolwright.bench.uncertainty import COVERAGE_FACTOR

    names = ("initial_speed", "constant", "viscous", "quadratic", "stop_time")
    found = {name: getattr(result, name) for name in names}
    return {
        **{name: measured.value for name, measured in found.items()},
        "ticks_used": result.ticks_used,
        "ticks_mended": result.ticks_mended,
        "relative_rms": result.relative_rms,
        "uncertainties": {name: measured.expanded for name, measured in found.items()},
        "coverage_factor": COVERAGE_FACTOR,
        "units": _units(result),
        "per_inertia": result.per_inertia,
        "start": result.start,
        "notes": list(result.notes),
    }


def _in_words(result: Any) -> Iterable[str]:
    speed, stop = result.initial_speed, result.stop_time
    yield f"First speed      {_shown(speed)} ({result.start:.2f} s into the file)"
    yield f"Time to rest     {_shown(stop)} from there"
    yield "What slows it:"
    units = _units(result)
    for name, words in (
        ("constant", "at any speed"),
        ("viscous", "growing with speed"),
        ("quadratic", "growing with its square"),
    ):
        drag = getattr(result, name)
        shown = _per_inertia(drag, units[name]) if result.per_inertia else _shown(drag)
        yield f"  {words:24} {shown}"
    if result.per_inertia:
        yield "  (per moment of inertia; say --inertia and these become torques)"
    if result.heard_as == "hum":
        yield f"Tone: {result.ticks_used} pieces of the sound used, {result.ticks_mended} left out."
    else:
        yield f"Ticks: {result.ticks_used} used, {result.ticks_mended} doubled or missing ones put right."
    yield f"The law fits to {result.relative_rms:.2%} of the first speed. Uncertainties are k = 2."
    yield "A spin time compares a reel with itself only: same spool, same line, same brakes."
    yield from (f"Note: {note}" for note in result.notes)


def _per_inertia(drag: Any, unit: str) -> str:
    """A drag per moment of inertia, for which no scale has a unit, to two figures of its uncertainty."""
    if drag.expanded <= 0:
        return f"{drag.value:.4g} {unit}"
    places = max(0, 1 - floor(log10(drag.expanded)))
    return f"{drag.value:.{places}f} ± {drag.expanded:.{places}f} {unit}"


def _shown(measured: Any) -> str:
    return show(measured.value, measured.dimension, uncertainty=measured.expanded)
