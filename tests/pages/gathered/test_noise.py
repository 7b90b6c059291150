"""A noise in words: the verdict first, its grade called a grade, its limits last."""

from dataclasses import replace

import pytest

from spoolwright.pages.gathered import noise
from spoolwright.shop.questions.kept_noise import GEARS
from tests.shop.records.test_kept_noise import KEPT

WHEEL = replace(
    KEPT,
    about=GEARS,
    verdict="pinion",
    unit="teeth",
    place="main gear of 98 teeth and pinion of 17 teeth",
    named=(("pinion", 17.0),),
    frequencies=tuple(k / 2 for k in range(34)),
    swelling=(0.0,) * 33 + (2.0,),
)


def test_the_verdict_its_grade_the_place_and_what_no_recording_shows() -> None:
    said = noise.in_words(KEPT, "metric")
    assert said[0] == "Outer ring damaged. Grade of the evidence: 0.90 of 1; no measured chance."
    assert said[1].startswith("Spool shaft, gear side. Held at")
    assert "hand and eye" in said[-1]
    assert "Lines stand." in said


def test_a_coast_and_a_cannot_tell_say_so() -> None:
    said = noise.in_words(replace(KEPT, speed=None, verdict="cannot tell", confidence=0.0), "metric")
    assert said[0] == "Cannot tell."
    assert "while the spool coasted" in said[1]


def test_gears_have_their_own_words_and_their_own_picture() -> None:
    said = noise.in_words(WHEEL, "metric")
    assert said[0].startswith("A tooth of the pinion knocks")
    assert "The handle turned at" in said[1]
    assert "caliper" in said[-1]
    assert "17 teeth of the pinion" in noise.chart(WHEEL, "metric").description
    assert "swells" in noise.chart(KEPT, "metric").description


@pytest.mark.parametrize("verdict", ["outer", "inner", "ball", "cage", "sound", "main", "pinion", "idler"])
def test_every_verdict_has_words(verdict: str) -> None:
    assert verdict not in noise.verdict(replace(KEPT, verdict=verdict)).split(".")[0].split()[:1]


def test_without_a_spectrum_nothing_is_drawn() -> None:
    bare = replace(KEPT, frequencies=(), swelling=())
    assert noise.drawn(bare, "metric")["chart"] is None
    assert noise.drawn(KEPT, "metric")["chart"] is not None
