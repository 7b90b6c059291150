"""The verdict on spins whose condition is known, and what it says when it cannot tell."""

from __future__ import annotations

from collections import Counter

import numpy as np
import pytest

from spoolwright.bench import mending, speed_steps, spin_down
from spoolwright.bench.speed_steps import NOT_LOOKED, Step, Steps
from spoolwright.bench.spin_down import SpinDown
from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import free_spin
from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.reel_state import as_built
from spoolwright.judgement.spin_verdict import VERDICTS, spin_verdict
from spoolwright.sheets import reel_sheet
from tests.unit.bench import spins

SHEET = reel_sheet.load("tarvak-54c")
STATE = as_built(SHEET)
INERTIA = free_spin.bare_inertia(SHEET)
NO_STEPS = Steps((), (), 0.005, 0.5)
SPINS = 3


def slowing(condition: str, seed: int):
    """Slowing [rad/s^2] of one good spool of the sheet, made dry, thick with grease, held, or left so."""
    ranges = {name: held.distribution for name, held in STATE.ranges.items()}
    one = draw({**free_spin.SPIN_DRAWS, **ranges}, samples=100, seed=99)
    own = {name: values[seed] for name, values in one.items()}
    rng = np.random.default_rng(seed)

    def torque(speed):
        good = free_spin.spool_torque(SHEET, STATE, own, speed)
        bearings = free_spin.bearing_torque(SHEET, STATE, own, speed)
        slow = float(free_spin.bearing_torque(SHEET, STATE, own, np.array([50.0]))[0])
        if condition == "dry":
            return good - bearings + dry * slow
        return good + (thick * bearings if condition == "thick" else held if condition == "held" else 0.0)

    dry, thick, held = rng.uniform(3.0, 7.0), rng.uniform(2.5, 6.0), rng.uniform(0.6e-3, 1.2e-3)
    return lambda speed: torque(speed) / INERTIA


def spun(condition: str, seed: int) -> tuple[SpinDown, Steps]:
    rng = np.random.default_rng(1000 + seed)
    losses = ()
    if condition == "gritty":
        at = np.sort(rng.uniform(0.25, 0.95, 7))[::-1]
        losses = tuple((float(a), float(rng.uniform(0.015, 0.035))) for a in at)
    clean = spins.coast_under(slowing(condition, seed), 150.0, losses=losses)
    heard = spins.faulty(spins.jittered(clean, rng), rng, 0.02, 0.02)
    found = spin_down.fit(mending.mend(heard), Measured(INERTIA, 0.05 * INERTIA, "inertia"))
    return found, speed_steps.look(found.used, found.residuals)


@pytest.mark.parametrize(
    ("condition", "name"),
    [("good", "free"), ("dry", "dry"), ("thick", "dragging"), ("held", "dragging"), ("gritty", "gritty")],
)
def test_each_condition_is_named_rightly_or_it_cannot_tell(condition: str, name: str) -> None:
    named = Counter(spin_verdict(*spun(condition, seed), SHEET, bare=True).name for seed in range(SPINS))
    assert set(named) <= {name, "cannot tell"}
    assert named[name] >= SPINS // 2


def good_spin() -> SpinDown:
    return spun("good", 0)[0]


def test_steps_are_believed_only_where_they_are_losses() -> None:
    down = tuple(Step(k, -1.0, 2.0) for k in range(4))
    up = tuple(Step(k + 0.5, 1.0, 2.0) for k in range(4))
    spin = good_spin()
    assert spin_verdict(spin, Steps(down, (), 0.005, 0.5), None, bare=True).name == "gritty"
    assert spin_verdict(spin, Steps(down, up, 0.005, 0.5), SHEET, bare=True).name != "gritty"
    assert spin_verdict(spin, Steps(down[:2], (), 0.005, 0.5), SHEET, bare=True).name != "gritty"


@pytest.mark.parametrize(
    ("sheet", "bare", "words"),
    [(None, True, "no reel sheet"), (SHEET, False, "Line or brakes were on")],
)
def test_without_a_sheet_or_with_the_line_on_it_cannot_tell(sheet, bare: bool, words: str) -> None:
    said = spin_verdict(good_spin(), NO_STEPS, sheet, bare=bare)
    assert (said.name, said.words) == ("cannot tell", "cannot tell")
    assert words in said.evidence[0]


def test_it_says_what_it_rests_on_with_numbers() -> None:
    said = spin_verdict(good_spin(), NO_STEPS, SHEET, bare=True)
    told = " ".join(said.evidence)
    assert "times as much as foretold" in told
    assert "growing with speed" in told
    assert "judgement prior" in told
    assert "rpm" in told
    hum = spin_verdict(good_spin(), NOT_LOOKED, SHEET, bare=True)
    assert "not looked for" in " ".join(hum.evidence)


def test_drags_per_inertia_are_compared_with_the_sheets_own_inertia() -> None:
    heard = spins.jittered(spins.coast_under(slowing("good", 0), 150.0), np.random.default_rng(1))
    bare = spin_down.fit(mending.mend(heard))
    assert spin_verdict(bare, NO_STEPS, SHEET, bare=True).name == "free"


def test_every_verdict_has_its_words() -> None:
    from spoolwright.judgement import spin_verdict as module

    assert set(module._lines()["says"]) == set(VERDICTS)
    assert module._lines()["says"]["gritty"] == "gritty: speed falls in steps"
