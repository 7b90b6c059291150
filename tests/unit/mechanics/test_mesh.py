"""Load along and across meshed teeth."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import mesh

BRASS = (97e9, 97e9)


def test_one_pair_alone_bears_all_of_it() -> None:
    assert mesh.sharing_factor(1.0) == 1.0
    assert np.all(np.diff(mesh.sharing_factor(np.linspace(1, 2.5, 9))) < 0)


def test_steeper_flanks_push_apart_harder() -> None:
    assert mesh.separating_force(0.0) == 0.0
    assert np.all(np.diff(mesh.separating_force(100.0, np.radians([14.5, 20, 25]))) > 0)


def test_wheels_that_lie_parallel_load_the_face_evenly() -> None:
    assert mesh.face_load_factor(0.0, 100.0, 4e-3, *BRASS) == 1.0


def test_it_is_smooth_where_the_face_begins_to_lift() -> None:
    """Both branches give 2 where the unloaded end just touches."""
    stiffness = 20e9 * 97 / 206
    just = 2 * 100.0 / (4e-3**2 * stiffness)
    low, high = mesh.face_load_factor(np.array([just * 0.999, just * 1.001]), 100.0, 4e-3, *BRASS)
    assert low == pytest.approx(2.0, abs=2e-3)
    assert high == pytest.approx(2.0, abs=2e-3)


def test_an_angle_that_grows_with_the_force_leaves_the_factor_alone() -> None:
    force = np.array([10.0, 100.0, 400.0])
    factors = mesh.face_load_factor(3e-5 * force, force, 4e-3, *BRASS)
    assert factors == pytest.approx(np.full(3, factors[0]))  # type: ignore[index]


def test_stiffer_wheels_and_a_wider_face_forgive_less() -> None:
    assert mesh.face_load_factor(1e-3, 100.0, 4e-3, 206e9, 206e9) > mesh.face_load_factor(
        1e-3, 100.0, 4e-3, *BRASS
    )
    assert np.all(np.diff(mesh.face_load_factor(1e-3, 100.0, np.linspace(2e-3, 8e-3, 9), *BRASS)) > 0)


def test_it_is_a_row_of_springs_that_push_and_cannot_pull() -> None:
    """The springs solved one by one: raise the bar until they carry the force."""
    force, width, angle = 100.0, 4e-3, 4e-3
    stiffness = 20e9 * 97 / 206
    x = (np.arange(4000) + 0.5) / 4000 * width
    low, high = -angle * width, angle * width
    for _ in range(60):
        middle = (low + high) / 2
        carried = np.sum(np.maximum(stiffness * (middle + angle * x), 0)) * width / 4000
        low, high = (middle, high) if carried < force else (low, middle)
    edge = stiffness * (high + angle * width) / (force / width)
    assert mesh.face_load_factor(angle, force, width, *BRASS) == pytest.approx(edge, rel=1e-3)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: mesh.separating_force(-1.0), "tangential_force must be zero or more"),
        (lambda: mesh.separating_force(1.0, 20.0), "pressure_angle must be above 0 and at most 0.785398"),
        (lambda: mesh.sharing_factor(0.9), "contact_ratio must be between 1 and 2.5"),
        (lambda: mesh.face_load_factor(-1.0, 1.0, 4e-3, *BRASS), "misalignment must be zero or more"),
        (lambda: mesh.face_load_factor(1.0, 0.0, 4e-3, *BRASS), "tangential_force must be above zero"),
        (lambda: mesh.face_load_factor(1.0, 1.0, 4e-3, 0.0, 97e9), "youngs_a must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
