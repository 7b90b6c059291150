"""What is asked of the reel."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.throw import LIMITS, THROW_DRAWS, Throw, thrown, usual_throw

DRAWS = draw(THROW_DRAWS, samples=400, seed=3)


def middle(throw: Throw) -> float:
    return float(np.median(thrown(throw, DRAWS).drag_area))


def test_eight_times_the_mass_has_four_times_the_area() -> None:
    assert middle(Throw(0.160, 50.0)) == pytest.approx(4 * middle(Throw(0.020, 50.0)), rel=1e-9)


def test_a_spoon_is_held_back_more_than_a_jig_of_the_same_mass() -> None:
    assert middle(Throw(0.02, 30.0, shape="spoon")) > 3 * middle(Throw(0.02, 30.0, shape="metal jig"))


def test_one_casters_throws_are_alike_within_a_twentieth() -> None:
    speed = thrown(Throw(0.15, 60.0), DRAWS).speed
    assert speed.min() > 56.9
    assert speed.max() < 63.1
    assert np.median(speed) == pytest.approx(60.0, rel=0.01)


def test_the_density_of_a_line_is_that_of_its_material() -> None:
    nylon, braid = (
        thrown(Throw(0.1, 40.0, line=name), DRAWS).line_density for name in ("nylon", "braided polyethylene")
    )
    assert nylon.min() > 1100
    assert braid.max() < 1000


@pytest.mark.parametrize("name", LIMITS)
@pytest.mark.parametrize("end", [0, 1])
def test_a_throw_that_nobody_makes_is_refused_by_name(name: str, end: int) -> None:
    low, high, _ = LIMITS[name]
    value = low - 1e-3 if end == 0 else high * 1.1
    with pytest.raises(ValueError, match=f"{name}: .* is accepted; got"):
        replace(Throw(0.15, 50.0), **{name: value})


@pytest.mark.parametrize(("field", "value"), [("shape", "brick"), ("line", "silk")])
def test_an_unknown_shape_or_line_lists_the_known_ones(field: str, value: str) -> None:
    with pytest.raises(KeyError, match="known: "):
        replace(Throw(0.15, 50.0), **{field: value})


def test_a_usual_throw_is_there_for_every_kind_and_for_one_we_do_not_know() -> None:
    assert usual_throw("lever drag").payload > usual_throw("low-profile multiplier").payload
    assert usual_throw("hand line") == usual_throw("round multiplier")
