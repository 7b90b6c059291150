"""A cast keeps its energy in sight, whatever reel throws it, and its error does what its tolerance says."""

from __future__ import annotations

from math import inf
from typing import Any

import numpy as np
import pytest

from spoolwright.command.some_casts import some_casts
from spoolwright.mechanics import cast

LOSSES = (
    "brake_energy",
    "bearing_energy",
    "windage_energy",
    "thumb_energy",
    "payload_air_energy",
    "line_air_energy",
    "guide_energy",
    "slack_energy",
    "join_energy",
)
CLOSES = 1e-4


@pytest.fixture(scope="module")
def drawn() -> dict[str, Any]:
    return some_casts(1000, 11)


@pytest.fixture(scope="module")
def flown(drawn: dict[str, Any]) -> cast.Casts:
    return cast.simulate(**drawn)


def left_over(casts: cast.Casts) -> np.ndarray:
    """Energy that nobody can account for, as a share of what there was at release."""
    lost = sum(casts[name] for name in LOSSES)
    return np.asarray((casts.start_energy - casts.end_energy - lost) / casts.start_energy)


def test_energy_is_accounted_for_in_a_thousand_casts(flown: cast.Casts) -> None:
    assert np.max(np.abs(left_over(flown))) < CLOSES
    assert np.sum(flown.peak_slack > 0) > 300
    assert np.sum(flown.join_energy > 0) > 200
    assert np.sum(flown.thumb_energy > 0) > 200
    assert np.sum(flown.landed) > 900


@pytest.mark.parametrize("variant", ["ideal thumb", "fixed spool"])
def test_and_in_every_variant(drawn: dict[str, Any], variant: str) -> None:
    few = {name: values[:200] for name, values in drawn.items()}
    casts = cast.simulate(**few, variant=variant, lip_friction=0.02)
    assert np.max(np.abs(left_over(casts))) < CLOSES
    assert np.all(casts.peak_slack == 0)


def test_nothing_that_takes_energy_gives_any(flown: cast.Casts) -> None:
    for name in ("brake_energy", "bearing_energy", "windage_energy", "thumb_energy", "guide_energy"):
        assert np.all(flown[name] >= 0), name
    assert np.all(flown.join_energy >= 0)


def test_the_arc_is_never_shorter_than_the_way_and_the_line_out_never_shorter_than_the_arc(
    flown: cast.Casts, drawn: dict[str, Any]
) -> None:
    drop = np.where(flown.landed, drawn["release_height"], 0.0)
    assert np.all(flown.arc >= np.hypot(flown.distance, drop) * (1 - 1e-9))
    assert np.all(flown.line_out >= flown.arc)
    assert np.all(flown.line_out <= drawn["line_length"] * (1 + 1e-6))


def test_the_error_falls_as_its_tolerance_does(drawn: dict[str, Any]) -> None:
    """The step is chosen so that the error of one is what is allowed: ten times less allowed, ten times less
    made, in the middle of many casts."""
    few = {name: values[:300] for name, values in drawn.items()}
    true = cast.simulate(**few, rtol=1e-12).distance
    tolerances = np.array([1e-5, 1e-6, 1e-7, 1e-8, 1e-9])
    errors = [np.median(np.abs(cast.simulate(**few, rtol=rtol).distance / true - 1)) for rtol in tolerances]
    slope = np.polyfit(np.log(tolerances), np.log(errors), 1)[0]
    assert 0.8 < slope < 1.3
    assert np.all(np.array(errors) < tolerances)


def test_an_ideal_thumb_is_a_thumb_that_allows_no_slack_and_is_strong_enough(drawn: dict[str, Any]) -> None:
    few = {name: values[:50] for name, values in drawn.items()}
    ideal = cast.simulate(**few, variant="ideal thumb")
    strong = cast.simulate(**{**few, "slack_limit": 0.0, "thumb_force": 1e4})
    for name in ("distance", "flight_time", "thumb_energy"):
        assert strong[name] == pytest.approx(ideal[name], rel=1e-9, abs=1e-9)


def test_each_cast_is_the_same_alone_and_among_others(drawn: dict[str, Any], flown: cast.Casts) -> None:
    for number in (0, 17, 999):
        alone = cast.simulate(**{name: float(values[number]) for name, values in drawn.items()})
        for name in flown:
            assert alone[name] == flown[name][number], name


def test_a_thumb_keeps_the_slack_in_bounds(drawn: dict[str, Any]) -> None:
    free = cast.simulate(**{**drawn, "slack_limit": inf})
    held = cast.simulate(**{**drawn, "slack_limit": 0.5, "thumb_force": 20.0})
    assert np.all(held.peak_slack <= np.maximum(free.peak_slack, 0.0) * (1 + 1e-6))
    assert np.sum(held.peak_slack < 0.8 * free.peak_slack) > 100
