"""`spoolwright bearing FILE`: the noise of a bearing at a steady speed to what it says of the bearing."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from spoolwright.quantities import SYSTEMS, NotAQuantity, read, show

SUMMARY = "listen to a bearing, held at a speed or coasting: outer, inner, ball, cage, sound, or cannot tell"
TYPED = (
    'bearing FILE (--speed "1750 rpm" | --coast) '
    '(--balls 9 --ball-diameter "7.94 mm" --pitch-diameter "39.04 mm" '
    '| --sheet SHEET --place "spool shaft, gear side") [--json]'
)

_SIZES = '--balls 9 --ball-diameter "7.94 mm" --pitch-diameter "39.04 mm", or --sheet and --place'
_LINES = {
    "outer": "Outer ring damaged",
    "inner": "Inner ring damaged",
    "ball": "A ball damaged",
    "cage": "Cage damaged",
    "sound": "Sound, as far as this recording can show",
    "cannot tell": "Cannot tell",
}
_CAUTION = "Spin only what is held fast; keep fingers, sleeves and line off whatever turns."


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE", help="a recording of the bearing running at one steady speed")
    parser.add_argument("--speed", metavar="SPEED", help='of the shaft, held steady, such as "1750 rpm"')
    parser.add_argument("--coast", action="store_true", help="the spool spins down freely; its ticks count")
    parser.add_argument(
        "--ticks-per-turn", metavar="N", type=int, default=1, help="marks on the spool, with --coast"
    )
    parser.add_argument("--balls", metavar="N", type=int, help="how many balls the bearing has")
    parser.add_argument("--ball-diameter", metavar="LENGTH", help='such as "7.94 mm"')
    parser.add_argument("--pitch-diameter", metavar="LENGTH", help="of the circle of the balls' middles")
    parser.add_argument("--sheet", metavar="SHEET", help="reel sheet that has it, instead of its sizes")
    parser.add_argument("--place", metavar="PLACE", help='of the bearing, such as "spool shaft, gear side"')
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def run(args: argparse.Namespace) -> int:
    from spoolwright.bench import bearing_noise, recording
    from spoolwright.bench.unreadable import Unreadable

    if bool(args.speed) == args.coast:
        reason = "how fast the shaft turns has not been said" if not args.speed else "both ways were said"
        raise Unreadable(reason, "--speed", 'a steady speed such as "1750 rpm", or --coast')
    speed = _speed(args.speed) if args.speed else 0.0
    bearing, remarks = _of_sheet(args.sheet, args.place) if args.sheet else _of_sizes(args)
    path = Path(args.file)
    sound = recording.read(path, name=path.name)
    heard = _coasting(sound, bearing, args) if args.coast else bearing_noise.listen(sound, bearing, speed)
    if args.json:
        print(json.dumps(_as_data(heard, bearing, remarks), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(heard, bearing, remarks, args.units)))
    return 0


def _speed(typed: str) -> float:
    speed = read(typed, "rotation")
    if speed <= 0:
        raise NotAQuantity(typed, "is not above zero", 'the speed of the shaft, such as "1750 rpm"')
    return speed


def _coasting(sound: Any, bearing: Any, args: argparse.Namespace) -> Any:
    """The spool spins down and its ticks say how far it has turned."""
    from spoolwright.bench import order_tracking, spin_down, ticks, turning
    from spoolwright.bench.unreadable import Unreadable

    if args.ticks_per_turn < 1:
        raise Unreadable(f"{args.ticks_per_turn} ticks a turn cannot be", "--ticks-per-turn", "1 or more")
    spin = spin_down.fit(ticks.mend(ticks.find(sound)), ticks_per_turn=args.ticks_per_turn)
    return order_tracking.listen(sound, bearing, turning.of_coast(spin))


def _of_sizes(args: argparse.Namespace) -> tuple[Any, tuple[str, ...]]:
    from spoolwright.bench import bearing_on_sheet
    from spoolwright.bench.unreadable import Unreadable

    if args.balls is None or args.ball_diameter is None or args.pitch_diameter is None:
        raise Unreadable("which bearing it is has not been said", "", _SIZES)
    ball, pitch = read(args.ball_diameter, "length"), read(args.pitch_diameter, "length")
    return bearing_on_sheet.typed(args.balls, ball, pitch, "--balls and --ball-diameter"), ()


def _of_sheet(name: str, place: str | None) -> tuple[Any, tuple[str, ...]]:
    """The bearing at a place of a reel sheet, by its standard size."""
    from spoolwright.bench import bearing_on_sheet
    from spoolwright.sheets import reel_sheet

    return bearing_on_sheet.at(reel_sheet.load(name), place, "--place")


def _as_data(heard: Any, bearing: Any, remarks: tuple[str, ...]) -> dict[str, Any]:
    return {
        "verdict": heard.verdict,
        "confidence": heard.confidence,
        "evidence": list(heard.evidence),
        "shaft_rate": heard.turns,
        "shaft_heard": heard.turns_heard,
        "rates": heard.rates,
        "found": {kind: _comb_as_data(one) for kind, one in heard.combs.items() if one.standing},
        "bearing": {
            "balls": bearing.balls,
            "ball_diameter": bearing.ball_diameter,
            "pitch_diameter": bearing.pitch_diameter,
        },
        "units": {
            "rates": heard.unit,
            "shaft_rate": heard.unit,
            "ball_diameter": "m",
            "pitch_diameter": "m",
            "depth": "1",
        },
        "notes": [*remarks, *heard.notes],
    }


def _comb_as_data(found: Any) -> dict[str, Any]:
    return {
        "rate": found.rate,
        "depth": found.depth,
        "multiples": list(found.multiples),
        "sidebands": found.sidebands,
        "chance_of_noise": found.chance,
        "band": [found.low, found.high],
    }


def _in_words(heard: Any, bearing: Any, remarks: tuple[str, ...], units: str) -> Iterable[str]:
    sure = f" (grade of the evidence {heard.confidence:.2f} of 1)" if heard.confidence else ""
    yield f"{_LINES[heard.verdict]}{sure}."
    sizes = [show(size, "length", system=units) for size in (bearing.ball_diameter, bearing.pitch_diameter)]
    yield f"Bearing: {bearing.balls} balls of {sizes[0]} on a circle of {sizes[1]}."
    places = 1 if heard.unit == "Hz" else 2
    rates = ", ".join(f"{kind} {rate:.{places}f}" for kind, rate in heard.rates.items())
    yield f"Rates of its knocks, {heard.unit}: {rates}."
    yield "What it rests on:"
    yield from (f"  {sentence}" for sentence in heard.evidence)
    yield from (f"Note: {note}" for note in (*remarks, *heard.notes))
    yield "A recording shows damage that knocks. Dirt, dryness and a worn fit are for hand and eye."
    yield _CAUTION
