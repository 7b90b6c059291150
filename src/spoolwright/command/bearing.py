"""`spoolwright bearing FILE`: the noise of a bearing at a steady speed to what it says of the bearing."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from spoolwright.quantities import SYSTEMS, NotAQuantity, read, show

SUMMARY = "listen to a bearing at a steady speed: outer ring, inner ring, ball, cage, sound, or cannot tell"
TYPED = (
    'bearing FILE --speed "1750 rpm" (--balls 9 --ball-diameter "7.94 mm" --pitch-diameter "39.04 mm" '
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
    parser.add_argument("--speed", metavar="SPEED", required=True, help='of the shaft, such as "1750 rpm"')
    parser.add_argument("--balls", metavar="N", type=int, help="how many balls the bearing has")
    parser.add_argument("--ball-diameter", metavar="LENGTH", help='such as "7.94 mm"')
    parser.add_argument("--pitch-diameter", metavar="LENGTH", help="of the circle of the balls' middles")
    parser.add_argument("--sheet", metavar="SHEET", help="reel sheet that has it, instead of its sizes")
    parser.add_argument("--place", metavar="PLACE", help='of the bearing, such as "spool shaft, gear side"')
    parser.add_argument("--json", action="store_true", help="print one JSON object, SI units inside")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show (default: metric)")


def run(args: argparse.Namespace) -> int:
    from spoolwright.bench import bearing_noise, recording

    speed = read(args.speed, "rotation")
    if speed <= 0:
        raise NotAQuantity(args.speed, "is not above zero", 'the speed of the shaft, such as "1750 rpm"')
    bearing, remarks = _of_sheet(args.sheet, args.place) if args.sheet else _of_sizes(args)
    path = Path(args.file)
    heard = bearing_noise.listen(recording.read(path, name=path.name), bearing, speed)
    if args.json:
        print(json.dumps(_as_data(heard, bearing, remarks), ensure_ascii=False, indent=2))
    else:
        print("\n".join(_in_words(heard, bearing, remarks, args.units)))
    return 0


def _of_sizes(args: argparse.Namespace) -> tuple[Any, tuple[str, ...]]:
    from spoolwright.bench.bearing_noise import Bearing
    from spoolwright.bench.unreadable import Unreadable

    if args.balls is None or args.ball_diameter is None or args.pitch_diameter is None:
        raise Unreadable("which bearing it is has not been said", "", _SIZES)
    if not 3 <= args.balls <= 40:
        raise Unreadable(f"{args.balls} balls cannot be", "--balls", "3 to 40")
    ball, pitch = read(args.ball_diameter, "length"), read(args.pitch_diameter, "length")
    if not 0 < ball < pitch:
        raise Unreadable(
            f"balls of {args.ball_diameter} do not go on a circle of {args.pitch_diameter}",
            "--ball-diameter",
            "a ball above zero and smaller than the circle of the balls' middles",
        )
    return Bearing(args.balls, ball, pitch), ()


def _of_sheet(name: str, place: str | None) -> tuple[Any, tuple[str, ...]]:
    """The bearing at a place of a reel sheet, by its standard size."""
    from spoolwright.bench.bearing_noise import Bearing
    from spoolwright.bench.unreadable import Unreadable
    from spoolwright.sheets import reel_sheet
    from spoolwright.sheets.bearing_sizes import bearing_size

    on_sheet = {one.place: one for one in reel_sheet.load(name).bearings}
    if place not in on_sheet:
        reason = (
            f"the sheet has no bearing at “{place}”"
            if place
            else "which of the sheet's bearings has not been said"
        )
        raise Unreadable(reason, "--place", ", ".join(f"“{known}”" for known in on_sheet))
    found = on_sheet[place]
    try:
        size = bearing_size(found.size.bore, found.size.outer, found.size.width)
    except KeyError as fault:
        raise Unreadable(str(fault.args[0]), "--place", _SIZES) from None
    if not (size.balls and size.ball_diameter and size.pitch_diameter):
        raise Unreadable(f"how many balls a {size.name} has is not known here", "--place", _SIZES)
    remarks = [f"Balls of a {size.name}: {size.balls_source} ({size.balls_how})."]
    if found.balls and found.balls != size.balls:
        remarks.append(f"The sheet counts {found.balls} balls, the list {size.balls}; the sheet's is used.")
    return Bearing(found.balls or size.balls, size.ball_diameter, size.pitch_diameter), tuple(remarks)


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
            "rates": "Hz",
            "shaft_rate": "Hz",
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
    rates = ", ".join(f"{kind} {rate:.1f} Hz" for kind, rate in heard.rates.items())
    yield f"Rates of its knocks: {rates}."
    yield "What it rests on:"
    yield from (f"  {sentence}" for sentence in heard.evidence)
    yield from (f"Note: {note}" for note in (*remarks, *heard.notes))
    yield "A recording shows damage that knocks. Dirt, dryness and a worn fit are for hand and eye."
    yield _CAUTION
