"""A chipped tooth in, its wheel out, or nothing said; sound gears are never called chipped."""

from functools import cache
from math import pi

import numpy as np
import pytest

from spoolwright.bench import gear_noise
from spoolwright.bench.gear_noise import GearNoise, Gears
from spoolwright.bench.recording import Recording
from spoolwright.bench.unreadable import Unreadable
from tests.meshing import Mesh, recording

SHORT = {"seconds": 8.0, "turns_a_second": 2.2}


@cache
def heard(mesh: Mesh, off: float = 0.05) -> GearNoise:
    speed = 2 * pi * mesh.turns_a_second * (1 + off)
    return gear_noise.listen(recording(mesh), Gears(mesh.main, mesh.pinion, mesh.idler), speed)


@pytest.mark.parametrize("kind", ["main", "pinion", "sound"])
def test_truth_in_truth_out(kind: str) -> None:
    found = heard(Mesh(kind, clear=0.05, seed=3, **SHORT))
    assert found.verdict == kind
    assert 0.5 < found.confidence <= 1
    assert found.speed == pytest.approx(2 * pi * 2.2, rel=0.02)
    assert set(found.beside) == {"main", "pinion"}


@pytest.mark.parametrize("kind", ["main", "pinion"])
def test_teeth_that_divide_do_not_confuse_the_wheels(kind: str) -> None:
    assert heard(Mesh(kind, main=84, pinion=21, clear=0.3, seed=3, **SHORT)).verdict == kind


def test_a_wheel_between_them_is_told_apart() -> None:
    assert heard(Mesh("idler", main=80, pinion=18, idler=31, clear=0.1, seed=4, **SHORT)).verdict == "idler"


@pytest.mark.parametrize("seed", [21])
def test_sound_gears_are_never_called_chipped(seed: int) -> None:
    found = heard(Mesh("sound", uneven=0.05, seed=seed, **SHORT))
    assert found.verdict in ("sound", "cannot tell")


def test_a_mesh_that_is_not_heard_proves_nothing() -> None:
    found = heard(Mesh("pinion", tone=0.0, clear=0.3, seed=5, **SHORT))
    assert found.verdict == "cannot tell"
    assert "not heard" in found.evidence[0]


def test_a_few_turns_tell_nothing_and_say_so() -> None:
    few = Recording(np.ones(24000, np.float32), 12000.0)
    found = gear_noise.listen(few, Gears(98, 17), 2 * pi)
    assert found.verdict == "cannot tell"
    assert "2 turns" in found.evidence[0]


@pytest.mark.parametrize(
    ("gears", "speed", "what"), [(Gears(98, 17), 0.0, "speed"), (Gears(98, 2), 9.0, "teeth")]
)
def test_what_cannot_be_is_refused(gears: Gears, speed: float, what: str) -> None:
    with pytest.raises(Unreadable, match=what):
        gear_noise.listen(Recording(np.ones(24000, np.float32), 12000.0), gears, speed)
