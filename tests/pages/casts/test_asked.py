"""What is asked of the picture."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spoolwright.judgement.throw import usual_throw
from spoolwright.pages.casts.asked import CastsForm, starting_throw
from spoolwright.pages.gathered.subject import Subject
from tests.pages.casts.conftest import MOST, TODAY

Made = Callable[..., Subject]


def test_it_starts_with_the_usual_throw_and_the_brake_set_for_it(subject_of: Made) -> None:
    form = CastsForm({}, subject_of(), 0.571)
    assert form.throw.payload == usual_throw("round multiplier").payload
    assert form.throw.brake.share == pytest.approx(0.58)
    assert "state" not in form.fields


def test_every_slider_reaches_the_throw(subject_of: Made) -> None:
    typed = {"payload": "150 g", "speed": "60 m/s", "wind": "-5 m/s", "diameter": "0.35 mm", "fill": "60 %"}
    throw = CastsForm(
        {**typed, "brake": "20 %", "shape": "spoon", "material": "dacron"}, subject_of(), 0.5
    ).throw
    assert (throw.payload, throw.speed, throw.wind, throw.fill) == pytest.approx((0.15, 60.0, -5.0, 0.6))
    assert (throw.shape, throw.line) == ("spoon", "dacron")
    assert throw.diameter == pytest.approx(0.35e-3)
    assert throw.brake.share == pytest.approx(0.2)


def test_what_cannot_be_read_keeps_the_throw_and_is_told(subject_of: Made) -> None:
    form = CastsForm({"payload": "a brick", "speed": "500 m/s", "shape": "brick"}, subject_of(), 0.5)
    assert form.throw.payload == usual_throw("round multiplier").payload
    assert set(form.errors) == {"payload", "speed", "shape"}


def test_a_reel_without_a_brake_has_no_slider_for_one(subject_of: Made) -> None:
    form = CastsForm({}, subject_of("pellmar-30-2"), None)
    assert "brake" not in form.fields
    assert form.throw.brake.is_searched


def test_small_reels_throw_small_things(subject_of: Made) -> None:
    track = CastsForm({}, subject_of("ostrell-s71"), 0.5).fields["payload"].track
    assert (track.low, track.high) == (3.0, 60.0)


def test_the_states_can_be_chosen_where_there_are_several(subject_of: Made) -> None:
    form = CastsForm({"state": "option-0"}, subject_of("tarvak-58r", TODAY, MOST), 0.5)
    assert form.state_key == "option-0"


@pytest.mark.parametrize(
    ("line", "starts"), [("braid 0.2 mm", ("braided polyethylene", 0.2e-3)), ("wool", ("nylon", 0.3e-3))]
)
def test_the_line_of_the_other_pictures_comes_along(
    subject_of: Made, line: str, starts: tuple[str, float]
) -> None:
    throw = starting_throw(subject_of("tarvak-58r", TODAY, line=line, fill=0.7))
    assert (throw.line, throw.diameter) == starts
    assert throw.fill == 0.7


def test_the_measured_line_goes_before_an_example(subject_of: Made) -> None:
    taken = (("line_diameter", 0.4e-3, 1e-5, "length", ()),)
    assert starting_throw(subject_of("tarvak-58r", TODAY, taken=taken)).diameter == 0.4e-3
