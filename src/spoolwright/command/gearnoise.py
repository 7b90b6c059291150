"""`spoolwright gearnoise FILE`: the noise of gears, the handle turned evenly, to what it says of teeth."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from spoolwright.quantities import SYSTEMS, NotAQuantity, read, show

SUMMARY = "listen to gears turned evenly: a tooth of the main gear, of the pinion, sound, or cannot tell"
TYPED = (
    'gearnoise FILE (--teeth "98, 17" | --sheet SHEET [--low]) (--speed "100 rpm" | --clicker-teeth N) '
    "[--json]"
)

_LINES = {
    "main": "A tooth of the main gear knocks",
    "pinion": "A tooth of the pinion knocks",
    "idler": "A tooth of the wheel between them knocks",
    "sound": "Sound, as far as this recording can show",
    "cannot tell": "Cannot tell",
}


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE", help="a recording of the handle turned at one even speed")
    parser.add_argument("--teeth", metavar="TEETH", help='main gear, pinion, a wheel between them: "98, 17"')
    parser.add_argument("--sheet", metavar="SHEET", help="reel sheet that has the gears, instead of --teeth")
    parser.add_argument("--low", action="store_true", help="the low gear was in, with --sheet")
    parser.add_argument("--speed", metavar="SPEED", help='of the handle within a fifth, such as "100 rpm"')
    parser.add_argument(
        "--clicker-teeth", metavar="N", type=int, help="the spool's clicker was on: teeth of its wheel"
    )
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def run(args: argparse.Namespace) -> int:
    from spoolwright.bench import gear_noise, recording

    gears = _gears(args)
    path = Path(args.file)
    sound = recording.read(path, name=path.name)
    heard = gear_noise.listen(sound, gears, _speed(args, sound, gears))
    if args.json:
        print(json.dumps(_as_data(heard, gears), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(heard, gears, args.units)))
    return 0


def _gears(args: argparse.Namespace) -> Any:
    from spoolwright.bench import gears_on_sheet
    from spoolwright.bench.unreadable import Unreadable
    from spoolwright.sheets import reel_sheet

    if bool(args.teeth) == bool(args.sheet):
        raise Unreadable("say the gears once", "--teeth or --sheet", gears_on_sheet.ACCEPTED)
    if args.teeth:
        return gears_on_sheet.typed(args.teeth, "--teeth")
    return gears_on_sheet.at(reel_sheet.load(args.sheet), low=args.low, where="--sheet")


def _speed(args: argparse.Namespace, sound: Any, gears: Any) -> float:
    """Of the handle: as typed, or from the clicks of the spool's clicker."""
    from spoolwright.bench import clicker, ticks
    from spoolwright.bench.unreadable import Unreadable

    if bool(args.speed) == bool(args.clicker_teeth):
        reason = "say once how fast the handle turned"
        raise Unreadable(reason, "--speed or --clicker-teeth", 'such as --speed "100 rpm"')
    if args.clicker_teeth:
        spool = clicker.speed(ticks.find(sound), args.clicker_teeth)
        return spool.value * gears.pinion / gears.main
    speed = read(args.speed, "rotation")
    if speed <= 0:
        raise NotAQuantity(args.speed, "is not above zero", 'the speed of the handle, such as "100 rpm"')
    return speed


def _as_data(heard: Any, gears: Any) -> dict[str, Any]:
    return {
        "verdict": heard.verdict,
        "confidence": heard.confidence,
        "evidence": list(heard.evidence),
        "handle_speed": heard.speed,
        "mesh_rate": heard.mesh_rate,
        "teeth": gears.wheels,
        "loudest_tooth": {
            name: {
                "swelling": one.swelling,
                "turns": one.turns,
                "log_chance_of_noise": one.log_chance,
                "band": [one.low, one.high],
            }
            for name, one in heard.loudest.items()
        },
        "sidebands": heard.beside,
        "units": {"handle_speed": "rad/s", "mesh_rate": "Hz", "swelling": "1", "sidebands": "1"},
        "notes": list(heard.notes),
    }


def _in_words(heard: Any, gears: Any, units: str) -> Iterable[str]:
    sure = f" (grade of the evidence {heard.confidence:.2f} of 1)" if heard.confidence else ""
    yield f"{_LINES[heard.verdict]}{sure}."
    wheels = ", ".join(f"{name} {teeth} teeth" for name, teeth in gears.wheels.items())
    yield f"Gears: {wheels}; the handle at {show(heard.speed, 'rotation', system=units)}."
    yield "What it rests on:"
    yield from (f"  {sentence}" for sentence in heard.evidence)
    yield from (f"Note: {note}" for note in heard.notes)
    yield "A recording shows a tooth that knocks. Even wear and play are for the caliper and the eye."
    yield "Fingers, sleeves and line stay off whatever turns; a motor on the handle has to be able to slip."
