"""`spoolwright demo`: fill an empty shop with an invented workshop, eight months of it."""

import argparse
import json
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, nullcontext, redirect_stdout
from datetime import datetime

from spoolwright.command import first_start, house

SUMMARY = "fill an empty shop with an invented workshop, to look around in"
TYPED = "demo [--data DIR] [--seed N] [--json]"


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--data", metavar="DIR", help="where the shop's data lies (else shop-data)")
    parser.add_argument("--seed", type=int, default=1, metavar="N", help="another invented workshop (else 1)")
    parser.add_argument("--json", action="store_true", help="print one JSON object at the end")


def run(args: argparse.Namespace) -> int:
    """Load it up to yesterday evening, lay the sample files ready, and say what there is."""
    data = house.open_house(args.data)
    with redirect_stdout(sys.stderr) if args.json else nullcontext():
        first_start.bring_tables_up_to_date()
    from django.utils import timezone

    from spoolwright.demo import load, sample_files

    began = time.monotonic()
    with _hurried_disk(), redirect_stdout(sys.stderr) if args.json else nullcontext():
        loaded = load.load(today=timezone.localdate(), seed=args.seed, told=_progress())
    below = sample_files.write(data, loaded.waiting)
    took = time.monotonic() - began
    if args.json:
        print(json.dumps({"visits": loaded.visits, "just_arrived": loaded.waiting, "files": str(below)}))
        return 0
    print(f"\nThe workshop of Kvie and Vannes: {loaded.visits} visits, all invented, in {took:.0f} s.")
    tags = ", ".join(str(tag) for tag in loaded.waiting)
    print(f"Reels {tags} have just arrived; files to take them on with lie in {below}.", flush=True)
    return 0


@contextmanager
def _hurried_disk() -> Iterator[None]:
    """On SQLite, let the system write when it likes: a filling that is broken off is thrown away anyhow."""
    _write_to_disk("NORMAL")
    try:
        yield
    finally:
        _write_to_disk("FULL")


def _write_to_disk(how: str) -> None:
    from django.db import connection

    if connection.vendor == "sqlite":
        with connection.cursor() as cursor:
            cursor.execute(f"PRAGMA synchronous={how}")


def _progress() -> Callable[[datetime, int, int], None]:
    """One line that is written over on a screen; in a file, one line a month."""
    screen, said = sys.stdout.isatty(), [""]

    def told(moment: datetime, over: int, every: int) -> None:
        words = f"{moment:%B %Y}: {over} of {every} stories told"
        if screen:
            print(f"\rFilling an invented workshop. {words}   ", end="", flush=True)
        elif f"{moment:%B}" != said[0]:
            print(f"Filling an invented workshop. {words}", flush=True)
        said[0] = f"{moment:%B}"

    return told
