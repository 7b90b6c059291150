"""Noise of bearings with a known damage in, that damage out: or nothing said."""

from functools import cache
from math import pi

import numpy as np
import pytest

from spoolwright.bench import bearing_noise
from spoolwright.bench.bearing_noise import Bearing, BearingNoise, listen
from spoolwright.bench.recording import Recording
from spoolwright.bench.unreadable import Unreadable
from tests.knocking import Case, recording

KNOWN = Bearing(9, 7.94e-3, 39.04e-3)


def heard(case: Case, off: float = 0.0) -> BearingNoise:
    bearing = Bearing(case.balls, case.ball, case.pitch)
    return listen(recording(case), bearing, (1 + off) * case.rpm * 2 * pi / 60)


@cache
def outer() -> Recording:
    return recording(Case("outer", 1790.0, turns=60.0, seed=5))


@pytest.mark.parametrize("kind", ["outer", "inner", "ball", "cage", "sound"])
def test_truth_in_truth_out_of_a_miniature_bearing_with_a_speed_typed_a_little_off(kind: str) -> None:
    case = Case(kind, 2234.0, balls=7, ball=1.588e-3, pitch=6.175e-3, turns=80.0, seed=2)
    found = heard(case, off=0.01)
    assert found.verdict == kind
    assert 0.5 < found.confidence <= 1
    assert found.evidence
    assert found.turns_heard
    assert found.turns * 60 == pytest.approx(2234.0, rel=0.002)


@pytest.mark.parametrize("clear", [0.3, 0.001])
@pytest.mark.parametrize("kind", ["outer", "inner", "ball", "cage"])
def test_damage_is_never_another_part_and_sound_only_where_it_is_far_below_the_noise(
    kind: str, clear: float
) -> None:
    found = heard(Case(kind, 1450.0, clear=clear, turns=60.0, seed=7), off=-0.01).verdict
    assert found in (kind, "cannot tell", *(["sound"] if clear < 0.01 else []))


def test_a_knock_of_another_bearing_is_not_pinned_on_this_one() -> None:
    assert listen(outer(), Bearing(8, 1.588e-3, 7.6e-3), 1790.0 * 2 * pi / 60).verdict == "cannot tell"


@pytest.mark.parametrize("off", [0.0, 0.015])
def test_a_loose_fit_that_knocks_at_the_shaft_and_its_halves_is_no_damage(off: float) -> None:
    rng = np.random.default_rng(8)
    time = np.arange(30000) / 12000.0
    loose = np.maximum(
        0.0, 1 + sum(rng.uniform(0.2, 0.6) * np.cos(2 * pi * 29.9 * k * time) for k in np.arange(0.5, 8, 0.5))
    )
    sound = Recording((0.05 * loose * rng.normal(size=len(time))).astype(np.float32), 12000.0)
    assert listen(sound, KNOWN, 29.9 * 2 * pi * (1 + off)).verdict == "cannot tell"


def test_bangs_over_it_do_not_drown_what_the_bearing_says() -> None:
    banged = outer().samples.copy()
    for at in (5000, 11000, 17000):
        banged[at : at + 300] += np.random.default_rng(at).normal(0.0, 2.0, 300)
    found = listen(Recording(banged, 12000.0), KNOWN, 187.4)
    assert found.verdict == "outer"
    assert any("turned down" in note for note in found.notes)


def test_a_few_turns_tell_nothing_and_say_so() -> None:
    found = heard(Case("outer", 1790.0, turns=15.0))
    assert found.verdict == "cannot tell"
    assert "15 turns" in found.evidence[0]
    assert found.confidence == 0


def test_knocks_that_are_too_quick_for_the_recording_are_not_read() -> None:
    found = heard(Case("sound", 60000.0, rate=8000.0, turns=3000.0))
    assert found.verdict == "cannot tell"


def test_clipping_is_told() -> None:
    clipped = Recording(np.clip(outer().samples * 20, -1, 1), 12000.0)
    assert any("clipped" in note for note in listen(clipped, KNOWN, 187.0).notes)


@pytest.mark.parametrize("speed", [0.0, -3.0, float("nan")])
def test_a_speed_that_is_none_is_refused(speed: float) -> None:
    with pytest.raises(Unreadable, match="speed"):
        listen(outer(), KNOWN, speed)


def test_every_verdict_is_one_of_the_six_words() -> None:
    assert bearing_noise.VERDICTS == ("outer", "inner", "ball", "cage", "sound", "cannot tell")
