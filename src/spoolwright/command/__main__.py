"""Finds the verb that was typed, runs it, and turns a refusal into one plain message."""

import argparse
import json
import os
import sys
from collections.abc import Callable, Sequence
from typing import Any, Protocol

from spoolwright.command import house


class Verb(Protocol):
    """What a file in this folder has to offer to be a verb."""

    SUMMARY: str
    TYPED: str

    def arguments(self, parser: argparse.ArgumentParser) -> None: ...

    def run(self, args: argparse.Namespace) -> int: ...


# A verb's file is imported only when the verb is asked for: `spin` reads a recording without waiting for the
# database, and the server starts without the mathematics.
def _serve() -> Verb:
    from spoolwright.command import serve

    return serve


def _demo() -> Verb:
    from spoolwright.command import demo

    return demo


def _sheet() -> Verb:
    from spoolwright.command import sheet

    return sheet


def _drag() -> Verb:
    from spoolwright.command import drag

    return drag


def _ladder() -> Verb:
    from spoolwright.command import ladder

    return ladder


def _pull() -> Verb:
    from spoolwright.command import pull

    return pull


def _series() -> Verb:
    from spoolwright.command import series

    return series


def _gauge() -> Verb:
    from spoolwright.command import gauge

    return gauge


def _spin() -> Verb:
    from spoolwright.command import spin

    return spin


def _spinlog() -> Verb:
    from spoolwright.command import spinlog

    return spinlog


def _inertia() -> Verb:
    from spoolwright.command import inertia

    return inertia


def _bearing() -> Verb:
    from spoolwright.command import bearing

    return bearing


def _gearnoise() -> Verb:
    from spoolwright.command import gearnoise

    return gearnoise


def _gauge_study() -> Verb:
    from spoolwright.command import gauge_study

    return gauge_study


def _run_verb() -> Verb:
    from spoolwright.command import run

    return run


def _judder() -> Verb:
    from spoolwright.command import judder

    return judder


def _wear() -> Verb:
    from spoolwright.command import wear

    return wear


def _cast() -> Verb:
    from spoolwright.command import cast

    return cast


def _sweep() -> Verb:
    from spoolwright.command import sweep

    return sweep


def _book() -> Verb:
    from spoolwright.command import book

    return book


def _speed() -> Verb:
    from spoolwright.command import speed

    return speed


VERBS: dict[str, Callable[[], Verb]] = {
    "serve": _serve,
    "demo": _demo,
    "sheet": _sheet,
    "drag": _drag,
    "ladder": _ladder,
    "pull": _pull,
    "series": _series,
    "gauge": _gauge,
    "gauge-study": _gauge_study,
    "spin": _spin,
    "spinlog": _spinlog,
    "inertia": _inertia,
    "bearing": _bearing,
    "gearnoise": _gearnoise,
    "run": _run_verb,
    "judder": _judder,
    "cast": _cast,
    "sweep": _sweep,
    "wear": _wear,
    "book": _book,
    "speed": _speed,
}


def build_parser(wanted: Sequence[str]) -> argparse.ArgumentParser:
    """A parser that knows the wanted verbs; only their files are imported."""
    parser = argparse.ArgumentParser(
        prog="spoolwright",
        description="Workbench software for a small shop that repairs, tunes and resells fishing reels.",
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    verbs = parser.add_subparsers(title="verbs", metavar="VERB", required=True)
    found = {name: VERBS[name]() for name in wanted}
    parser.epilog = "\n".join(["typed as:", *(f"  spoolwright {verb.TYPED}" for verb in found.values())])
    for name, verb in found.items():
        below = verbs.add_parser(name, help=verb.SUMMARY, description=verb.SUMMARY)
        verb.arguments(below)
        below.set_defaults(run=verb.run)
    return parser


def refusals() -> tuple[type[Exception], ...]:
    """What the person at the keyboard can put right: everything else is our own mistake and shows as one."""
    from spoolwright.bench.unreadable import Unreadable
    from spoolwright.judgement.no_cluster import NoCluster
    from spoolwright.quantities import NotAQuantity
    from spoolwright.sheets.reel_sheet import SheetFault
    from spoolwright.shop.acts.refused import Refused
    from spoolwright.shop.errands.gauge_port import NoGauge

    files = (FileNotFoundError, IsADirectoryError, NotADirectoryError, PermissionError)
    return (NotAQuantity, SheetFault, Unreadable, Refused, NoCluster, NoGauge, *files)


def in_words(fault: Exception) -> str:
    if isinstance(fault, OSError):
        return f"{fault.filename}: {(fault.strerror or 'cannot be read').lower()}."
    return str(getattr(fault, "words", "") or fault)


def as_json(fault: Exception) -> str:
    """The refusal for a program to read: its kind, the words, and whatever it says about where and what."""
    told: dict[str, Any] = {"kind": type(fault).__name__, "words": in_words(fault)}
    for name in ("typed", "reason", "where", "accepted"):
        if (value := getattr(fault, name, None)) is not None:
            told[name] = value
    faults = getattr(fault, "faults", ())
    if faults:
        told["faults"] = [{"where": f.where, "what": f.what, "accepted": f.accepted} for f in faults]
    return json.dumps({"error": told}, ensure_ascii=False, default=str)


def main(argv: Sequence[str] | None = None) -> int:
    """Run one verb; 0 when it did its work, 2 when what was typed or given cannot be used."""
    words = list(sys.argv[1:] if argv is None else argv)
    asked = [words[0]] if words and words[0] in VERBS else list(VERBS)
    args = build_parser(asked).parse_args(words)
    house.keep_compiled(getattr(args, "data", None))
    try:
        return _run(args)
    except BrokenPipeError:  # whoever read along has read enough; what is left must not be flushed at the end
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 1


def _run(args: argparse.Namespace) -> int:
    try:
        done = int(args.run(args))
        sys.stdout.flush()
        return done
    except refusals() as fault:
        if getattr(args, "json", False):
            print(as_json(fault), flush=True)
        else:
            print(in_words(fault), file=sys.stderr)
        return 2


if __name__ == "__main__":
    sys.exit(main())
