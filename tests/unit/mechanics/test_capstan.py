"""Line round a guide."""

from __future__ import annotations

import pytest

from spoolwright.mechanics import capstan


def test_no_bend_or_no_friction_costs_nothing() -> None:
    assert capstan.pull_ratio(0.0, 3.0) == 1.0
    assert capstan.pull_ratio(0.3, 0.0) == 1.0
    assert capstan.guide_load(10.0, 0.0) == 0.0


def test_measuring_friction_undoes_it() -> None:
    assert capstan.friction_of(capstan.pull_ratio(0.12, 2.0), 2.0) == pytest.approx(0.12)


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: capstan.pull_ratio(-0.1, 1.0), "friction must be zero or more"),
        (lambda: capstan.pull_ratio(0.1, -1.0), "wrap_angle must be zero or more"),
        (lambda: capstan.friction_of(0.9, 1.0), "pull_ratio must be 1 or more"),
        (lambda: capstan.friction_of(2.0, 0.0), "wrap_angle must be above zero"),
        (lambda: capstan.guide_load(1.0, 4.0), "bend must be between 0"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]
