"""`spoolwright spinlog FILE`: spin times over kinds of bearing to which differences are shown."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from spoolwright.quantities import show

SUMMARY = "compare kinds of bearing by their spin times: which differences are shown, and which are not"
TYPED = "spinlog FILE [--json]"


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE", help="a CSV with the columns bearing, time, reel and side")
    parser.add_argument("--json", action="store_true", help="print one JSON object, seconds inside")


def run(args: argparse.Namespace) -> int:
    from spoolwright.bench import spin_log, spin_log_file
    from spoolwright.judgement.spin_log_words import in_words

    path = Path(args.file)
    log = spin_log.analyse(spin_log_file.read(path.read_bytes(), name=path.name))
    if args.json:
        print(json.dumps(_as_data(log) | {"says": list(in_words(log))}, ensure_ascii=False, indent=2))
    else:
        print("\n".join((*_table(log), "", *in_words(log))))
    return 0


def _as_data(log: Any) -> dict[str, Any]:
    return {
        "kinds": [vars(kind) for kind in log.kinds],
        "pairs": [vars(pair) | {"shown": pair.shown} for pair in log.pairs],
        "scatter_of_log_time": {part.name: part.deviation for part in log.parts},
        "f": log.fisher,
        "p": log.chance,
        "degrees_of_freedom": log.freedom,
        "compared_with": log.basis,
        "turned_over": list(log.turned_over) if log.turned_over else None,
        "spins": log.spins,
        "units": {"time": "s"},
    }


def _table(log: Any) -> Iterable[str]:
    width = max(len(kind.kind) for kind in log.kinds)
    for kind in log.kinds:
        span = f"{show(kind.low, 'time')} to {show(kind.high, 'time')}"
        rests = f"{kind.spins} spins, {kind.units} reel{'s' if kind.units > 1 else ''}"
        yield f"{kind.kind:{width}}  {show(kind.middle, 'time'):>9}  ({span}; {rests})"
