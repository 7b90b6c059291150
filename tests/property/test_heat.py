"""Heat of a run for any stack: it scales, it never comes from nowhere, and more of it is never cooler."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.mechanics.heat import ROOM, Face, Layer, StackTemperatures, constant_run, stack_temperatures

few = settings(max_examples=5, deadline=None)
discs = st.builds(
    Layer,
    thickness=st.floats(3e-4, 5e-3),
    conductivity=st.floats(0.05, 200.0),
    density=st.floats(200.0, 9000.0),
    specific_heat=st.floats(350.0, 1900.0),
    area=st.floats(1e-4, 2e-3),
    loss=st.floats(0.0, 0.1),
)
stacks = st.lists(discs, min_size=2, max_size=6)
pulls = st.floats(0.5, 80.0)


def run(layers: list[Layer], pull: float, fade: float = 0.0, duration: float = 20.0) -> StackTemperatures:
    faces = [Face(n, 1 / (len(layers) - 1), fade) for n in range(len(layers) - 1)]
    return stack_temperatures(layers, faces, constant_run(duration, 4.0, pull), cells=2, steps=12, wait=30.0)


@few
@given(stacks, pulls)
def test_twice_the_pull_is_twice_the_rise_and_the_balance_closes(layers: list[Layer], pull: float) -> None:
    once, twice = run(layers, pull), run(layers, 2 * pull)
    assert twice.faces - ROOM == pytest.approx(2 * (once.faces - ROOM), rel=1e-6, abs=1e-9)
    assert once.heat_in == pytest.approx(once.heat_lost + once.heat_stored, rel=1e-6)
    assert once.heat_in == pytest.approx(20.0 * 4.0 * pull, rel=1e-9)


@few
@given(stacks, pulls, st.floats(1e-4, 5e-3))
def test_fade_never_heats_and_never_adds_pull(layers: list[Layer], pull: float, fade: float) -> None:
    plain, fading = run(layers, pull), run(layers, pull, fade)
    assert fading.peak <= plain.peak + 1e-6
    assert np.all(fading.pull_left <= 1 + 1e-12)
    assert 0 <= fading.pull_lost <= 0.8 + 1e-12


@few
@given(stacks, pulls)
def test_nothing_is_cooler_than_the_room_and_the_end_of_a_steady_run_is_the_hottest(
    layers: list[Layer], pull: float
) -> None:
    told = run(layers, pull)
    rise = float(told.peak) - ROOM
    assert np.min(told.layers) >= ROOM - 1e-3 * rise - 1e-9
    assert told.after_run == pytest.approx(told.peak, abs=2e-3 * rise + 1e-9)


@few
@given(stacks, pulls)
def test_a_stack_laid_the_other_way_round_gets_as_hot(layers: list[Layer], pull: float) -> None:
    there, back = run(layers, pull), run(layers[::-1], pull)
    assert there.faces == pytest.approx(back.faces[::-1], rel=1e-6)


@few
@given(stacks, pulls, st.floats(1.2, 4.0))
def test_discs_of_more_substance_and_greater_loss_stay_cooler(
    layers: list[Layer], pull: float, more: float
) -> None:
    heavy = [Layer(**{**vars(disc), "specific_heat": more * disc.specific_heat}) for disc in layers]
    lossy = [Layer(**{**vars(disc), "loss": disc.loss + 0.05 * more}) for disc in layers]
    plain = run(layers, pull).after_run
    assert run(heavy, pull).after_run <= plain + 1e-6
    assert run(lossy, pull).after_run <= plain + 1e-6
