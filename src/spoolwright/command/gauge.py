"""`spoolwright gauge`: live pulls from a gauge on a serial line, kept as a file that the diary reads."""

from __future__ import annotations

import argparse
import json
import sys
import time
from collections.abc import Callable
from contextlib import ExitStack
from pathlib import Path
from typing import Any, TextIO

from spoolwright.quantities import SYSTEMS, show

SUMMARY = "listen to a force gauge on a USB or Bluetooth serial port, and keep the pull as a file"
TYPED = "gauge --port PORT [--like FILE] [--watch] [--out FILE] [--json]"
SHOWN_EVERY = 0.2
"""Seconds between two lines on the screen: no eye reads faster."""


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--port", metavar="PORT", help="such as /dev/ttyUSB0 or COM3; without it, those there are"
    )
    parser.add_argument("--like", metavar="FILE", help="how the gauge talks, as a TOML file (docs/gauges.md)")
    parser.add_argument(
        "--baud", type=int, metavar="N", help="speed of the line (default: 9600, or as in FILE)"
    )
    parser.add_argument("--unit", metavar="UNIT", help="of numbers that carry none, such as kg, N or lb")
    parser.add_argument("--watch", action="store_true", help="show the pull only, and keep nothing")
    parser.add_argument(
        "--out", metavar="FILE", help='the file to write (else "pull" with day and hour .csv)'
    )
    parser.add_argument("--seconds", type=float, metavar="S", help="stop after so long (else at Ctrl-C)")
    parser.add_argument("--units", choices=SYSTEMS, default="metric", help="units to show")
    parser.add_argument("--json", action="store_true", help="print at the end what came as one JSON object")


def run(args: argparse.Namespace) -> int:
    """Listen until Ctrl-C, the seconds are over or the line breaks; what came until then is in the file."""
    from spoolwright.shop.errands import gauge_port

    if not args.port:
        return _tell_ports(args.json)
    protocol = _protocol(args)
    with gauge_port.open_port(args.port, protocol) as port, ExitStack() as held:
        path, out = _file(args, held)
        log, ended = _listen(args, port, protocol, out)
    if path and not log.pulls:
        path.unlink()
        path = None
    return _told(args, log, ended, path)


def _tell_ports(as_json: bool) -> int:
    from spoolwright.shop.errands import gauge_port

    found = gauge_port.ports()
    if as_json:
        print(json.dumps({"ports": found}))
    else:
        print(
            "\n".join(found)
            or "This computer has no serial port just now. Is the gauge plugged in, or paired?"
        )
    return 0


def _protocol(args: argparse.Namespace) -> Any:
    from dataclasses import asdict

    from spoolwright.bench import gauge_protocol

    like = Path(args.like) if args.like else None
    said = gauge_protocol.read_toml(_text(like), like.name) if like else gauge_protocol.GaugeProtocol()
    typed = {"baud": args.baud, "unit": args.unit}
    given = {key: value for key, value in typed.items() if value is not None}
    return gauge_protocol.from_mapping({**asdict(said), **given}, "--")


def _text(file: Path) -> str:
    from spoolwright.bench.unreadable import Unreadable

    try:
        return file.read_text("utf-8")
    except UnicodeDecodeError:
        raise Unreadable(
            "this is no text in UTF-8", file.name, "a TOML file as docs/gauges.md has it"
        ) from None


def _file(args: argparse.Namespace, held: ExitStack) -> tuple[Path | None, TextIO | None]:
    """A new file; one that is there already is somebody's pull and is never written over."""
    from spoolwright.bench.gauge_lines import CSV_HEAD
    from spoolwright.bench.unreadable import Unreadable

    if args.watch:
        return None, None
    path = Path(args.out or time.strftime("pull %Y-%m-%d %H.%M.%S.csv"))
    try:
        out = held.enter_context(path.open("x", encoding="ascii"))
    except FileExistsError:
        raise Unreadable(
            "there is such a file already", str(path), "--out with a name that is not taken"
        ) from None
    out.write(CSV_HEAD)
    return path, out


def _listen(args: argparse.Namespace, port: Any, protocol: Any, out: TextIO | None) -> tuple[Any, str]:
    from spoolwright.bench.gauge_lines import GaugeLog
    from spoolwright.sheets.cautions import LINE_UNDER_LOAD
    from spoolwright.shop.errands import gauge_port

    print(LINE_UNDER_LOAD, file=_screen(args), flush=True)
    log, began = GaugeLog(protocol), time.monotonic()
    told = _teller(args, log, began, out)
    try:
        ends = began + args.seconds if args.seconds else float("inf")
        ended = gauge_port.listen(port, log, lambda: time.monotonic() < ends, told)
    except KeyboardInterrupt:
        ended = ""
    return log, ended or gauge_port.silence(log, time.monotonic() - began) or log.complaint()


def _screen(args: argparse.Namespace) -> TextIO:
    """Where a person reads along: beside the one JSON object, if that was asked for."""
    return sys.stderr if args.json else sys.stdout


def _teller(
    args: argparse.Namespace, log: Any, began: float, out: TextIO | None
) -> Callable[[list[float]], None]:
    """Writes each number at once, so that none is lost with the line; shows the newest now and then."""
    from spoolwright.shop.errands import gauge_port

    screen, last = _screen(args), [began, began]

    def told(new: list[float]) -> None:
        now = time.monotonic()
        if new and out:
            out.writelines(log.csv_rows(len(log.pulls) - len(new)))
            out.flush()
        if new and now - last[0] >= SHOWN_EVERY:
            last[0] = now
            highest = show(max(log.pulls), "force", args.units)
            print(
                f"{now - began:6.1f} s  {show(new[-1], 'force', args.units)}  highest {highest}", file=screen
            )
            screen.flush()
        if not new and now - last[1] >= gauge_port.SILENT and (said := gauge_port.silence(log, now - began)):
            last[1] = now
            print(said, file=sys.stderr, flush=True)

    return told


def _told(args: argparse.Namespace, log: Any, ended: str, path: Path | None) -> int:
    lasted = log.times[-1] - log.times[0] if log.times else 0.0
    if args.json:
        facts = {
            "numbers": len(log.pulls),
            "seconds": lasted,
            "highest_n": max(log.pulls, default=None),
            "unread_lines": log.unread,
            "why_unread": log.why_unread,
            "ended": ended,
            "file": str(path) if path else None,
        }
        print(json.dumps(facts, ensure_ascii=False))
    else:
        print("\n".join(_in_words(args, log, lasted, path)))
    if ended:
        print(ended, file=sys.stderr)
    return 1 if ended else 0


def _in_words(args: argparse.Namespace, log: Any, lasted: float, path: Path | None) -> list[str]:
    if not log.pulls:
        return ["No number came, so there is no file."]
    highest = show(max(log.pulls), "force", args.units)
    words = [f"{len(log.pulls)} numbers in {lasted:.1f} s, the highest {highest}."]
    if log.unread:
        words.append(f"{log.unread} lines were no numbers and were left out. The first: {log.why_unread}")
    if path:
        words.append(f"Kept in {path}: spoolwright pull reads it, and so does the diary.")
    return words
