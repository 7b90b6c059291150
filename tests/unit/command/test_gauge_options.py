"""What the verbs ask of a gauge and of the line's way."""

import argparse

import pytest

from spoolwright.bench.unreadable import Unreadable
from spoolwright.command.gauge_options import gauge_arguments, gauge_of, way_arguments, way_of


def args(*typed: str) -> argparse.Namespace:
    parser = argparse.ArgumentParser()
    gauge_arguments(parser)
    way_arguments(parser)
    return parser.parse_args(list(typed))


def test_nothing_typed_is_nothing_known() -> None:
    assert way_of(args()).straight
    assert not gauge_of(args()).stated


def test_the_last_digit_of_a_zero_is_how_sure_it_is() -> None:
    way = way_of(args("--zero-before", "0.02 kg", "--zero-after", "0.1 kg"))
    assert way.zero_before.uncertainty == pytest.approx(0.01 * 9.80665 / 12**0.5)
    assert way.zero_after.uncertainty == pytest.approx(0.1 * 9.80665 / 12**0.5)


def test_half_a_pulley_and_a_range_without_its_size_are_refused() -> None:
    with pytest.raises(Unreadable, match="both"):
        way_of(args("--pulley-down", "5 kg"))
    with pytest.raises(Unreadable, match="range"):
        gauge_of(args("--range-accuracy", "1 %"))
    assert way_of(args("--pulley-up", "5.2 kg", "--pulley-down", "5.0 kg")).pulley.value > 1
