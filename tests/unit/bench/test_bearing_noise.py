"""Noise of bearings with a known damage in, that damage out: or nothing said."""

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


@pytest.mark.parametrize("kind", ["outer", "inner", "ball", "cage", "sound"])
def test_truth_in_truth_out(kind: str) -> None:
    found = heard(Case(kind, 1790.0, clear=1.0, seed=4))
    assert found.verdict == kind
    assert 0.5 < found.confidence <= 1
    assert found.evidence


@pytest.mark.parametrize("kind", ["outer", "inner", "ball"])
def test_a_miniature_bearing_too(kind: str) -> None:
    case = Case(kind, 1234.0, balls=7, ball=1.588e-3, pitch=6.175e-3, clear=1.0, seed=2)
    assert heard(case).verdict == kind


def test_a_speed_that_is_typed_a_little_off_is_put_right() -> None:
    found = heard(Case("outer", 1790.0, seed=5), off=0.02)
    assert found.verdict == "outer"
    assert found.turns_heard
    assert found.turns * 60 == pytest.approx(1790.0, rel=0.002)


def test_a_knock_of_another_bearing_is_not_pinned_on_this_one() -> None:
    other = recording(Case("outer", 1790.0, clear=3.0, seed=6))
    assert listen(other, Bearing(8, 1.588e-3, 7.6e-3), 1790.0 * 2 * pi / 60).verdict == "cannot tell"


def test_a_few_turns_tell_nothing_and_say_so() -> None:
    found = heard(Case("outer", 1790.0, turns=15.0))
    assert found.verdict == "cannot tell"
    assert "15 turns" in found.evidence[0]
    assert found.confidence == 0


def test_knocks_that_are_too_quick_for_the_recording_are_not_read() -> None:
    found = heard(Case("sound", 60000.0, rate=8000.0, turns=3000.0))
    assert found.verdict == "cannot tell"


def test_clipping_is_told() -> None:
    loud = recording(Case("outer", 1790.0, seed=4))
    clipped = Recording(np.clip(loud.samples * 20, -1, 1), loud.rate)
    assert any("clipped" in note for note in listen(clipped, KNOWN, 187.0).notes)


@pytest.mark.parametrize("speed", [0.0, -3.0, float("nan")])
def test_a_speed_that_is_none_is_refused(speed: float) -> None:
    with pytest.raises(Unreadable, match="speed"):
        listen(recording(Case("sound", 1790.0)), KNOWN, speed)


def test_every_verdict_is_one_of_the_six_words() -> None:
    assert bearing_noise.VERDICTS == ("outer", "inner", "ball", "cage", "sound", "cannot tell")
