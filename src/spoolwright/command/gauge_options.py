"""What several verbs ask of a gauge and of the line's way to it, and how the answers are read."""

from __future__ import annotations

import argparse
from typing import Any

from spoolwright.quantities import read, read_typed


def gauge_arguments(parser: argparse.ArgumentParser) -> None:
    gauge = parser.add_argument_group("what the gauge's maker says")
    gauge.add_argument("--gauge-accuracy", metavar="SHARE", help='of the reading, such as "0.5 %%"')
    gauge.add_argument(
        "--range-accuracy", metavar="SHARE", help='of the range, such as "0.1 %%"; needs --range'
    )
    gauge.add_argument("--range", metavar="PULL", help='the most it shows, such as "50 kg"')
    gauge.add_argument("--resolution", metavar="PULL", help='step of its display, such as "0.01 kg"')


def way_arguments(parser: argparse.ArgumentParser) -> None:
    way = parser.add_argument_group("what is put right before anything is read")
    way.add_argument("--zero-before", metavar="PULL", help="what the gauge shows before, line slack")
    way.add_argument("--zero-after", metavar="PULL", help="what it shows afterwards, line slack")
    way.add_argument(
        "--line-angle", metavar="ANGLE", help='how far from straight the line leaves, such as "12 deg"'
    )
    way.add_argument("--pulley-up", metavar="PULL", help="pull that lifts a weight over the pulley")
    way.add_argument("--pulley-down", metavar="PULL", help="pull that lets the same weight down")


def gauge_of(args: argparse.Namespace) -> Any:
    from spoolwright.bench.gauge import Gauge
    from spoolwright.bench.unreadable import Unreadable

    if args.range_accuracy and not args.range:
        reason = "an accuracy of the range needs the range"
        raise Unreadable(reason, "--range-accuracy", '--range with the most the gauge shows, such as "50 kg"')
    given = {
        "accuracy_of_reading": _read(args.gauge_accuracy, "ratio"),
        "accuracy_of_range": _read(args.range_accuracy, "ratio"),
        "range": _read(args.range, "force"),
        "resolution": _read(args.resolution, "force"),
    }
    for name, value in given.items():
        if value is not None and value < 0:
            raise Unreadable(f"{name.replace('_', ' ')} is below zero", "the gauge", "zero or more")
    return Gauge(**given)


def way_of(args: argparse.Namespace) -> Any:
    """The line's way to the gauge; what was not typed is not there."""
    from spoolwright.bench import pull_corrections
    from spoolwright.bench.uncertainty import Measured
    from spoolwright.bench.unreadable import Unreadable

    up, down = _pull(args.pulley_up), _pull(args.pulley_down)
    if (up is None) != (down is None):
        raise Unreadable("a pulley is tried both ways", "--pulley-up, --pulley-down", "both, or neither")
    tried = pull_corrections.pulley(up, down) if up is not None and down is not None else None
    angle = _read(args.line_angle, "angle")
    return pull_corrections.LineWay(
        angle=None if angle is None else Measured(angle, pull_corrections.ANGLE_UNSURE, "angle"),
        pulley=tried.factor if tried else None,
        zero_before=_pull(args.zero_before),
        zero_after=_pull(args.zero_after),
    )


def _read(typed: str | None, dimension: str) -> float | None:
    return None if typed is None else read(typed, dimension)


def _pull(typed: str | None) -> Any:
    """A pull read off a display: its last digit is all that is known of how sure it is."""
    from spoolwright.bench.budget import ROUNDING
    from spoolwright.bench.uncertainty import Measured

    if typed is None:
        return None
    shown = read_typed(typed, "force")
    return Measured(shown.value, shown.resolution * ROUNDING, "force")
