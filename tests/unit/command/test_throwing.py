"""How a throw is typed."""

from __future__ import annotations

import argparse
from math import radians

import pytest

from spoolwright.command.throwing import throw_arguments, throw_of
from spoolwright.judgement.throw import Throw
from spoolwright.quantities import NotAQuantity
from spoolwright.sheets import reel_sheet


def thrown(*typed: str, slug: str = "tarvak-58r", payload: str = "150 g", speed: str = "55 m/s") -> Throw:
    parser = argparse.ArgumentParser()
    throw_arguments(parser)
    args = parser.parse_args(["--payload", payload, "--speed", speed, *typed])
    return throw_of(args, reel_sheet.load(slug))


def test_what_is_not_said_is_as_such_a_reel_is_usually_thrown() -> None:
    throw = thrown()
    assert (throw.payload, throw.speed, throw.shape, throw.wind) == (0.15, 55.0, "bomb lead", 0.0)
    assert throw.diameter == 0.30e-3
    assert throw.brake.is_searched
    assert thrown(slug="ostrell-s71").diameter == 0.25e-3


def test_everything_can_be_said_in_the_units_of_the_person() -> None:
    typed = ["--angle", "42 deg", "--wind", "10 knots", "--line", "braid 0.2 mm", "--fill", "80 %"]
    typed += ["--brake", "1 block", "--shape", "ball lead"]
    throw = thrown(*typed, payload="5 oz", speed="120 mph")
    assert throw.payload == pytest.approx(0.141748, rel=1e-5)
    assert throw.speed == pytest.approx(53.645, rel=1e-4)
    assert throw.angle == pytest.approx(radians(42))
    assert throw.wind == pytest.approx(5.144, rel=1e-3)
    assert (throw.line, throw.diameter, throw.fill) == ("braided polyethylene", 0.2e-3, 0.8)
    assert (throw.brake.blocks, throw.shape) == (1.0, "ball lead")


@pytest.mark.parametrize(
    ("typed", "wind"), [("5 m/s ahead", -5.0), ("5 m/s behind", 5.0), ("-5 m/s", -5.0), ("18 km/h", 5.0)]
)
def test_a_wind_may_come_from_ahead(typed: str, wind: float) -> None:
    assert thrown(f"--wind={typed}").wind == pytest.approx(wind)


@pytest.mark.parametrize(
    ("more", "said"),
    [
        ({"payload": "5 kg"}, "1 g to 2 kg"),
        ({"payload": "150"}, "a mass such as"),
        ({"speed": "1 m/s"}, "2 m/s to 150 m/s"),
        ({"speed": "55 kg"}, "a speed such as"),
    ],
)
def test_a_throw_that_nobody_makes_is_refused(more: dict[str, str], said: str) -> None:
    with pytest.raises(NotAQuantity, match=said):
        thrown(**more)


def test_more_blocks_than_the_reel_has_are_refused() -> None:
    with pytest.raises(NotAQuantity, match="2 blocks at the most"):
        thrown("--brake", "3 blocks")
