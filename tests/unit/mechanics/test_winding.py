"""A tight pack of line."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.mechanics import winding

LAY = (10.0, 0.25e-3, 0.25e-3)


def test_an_empty_arbor_feels_nothing() -> None:
    assert winding.hub_pressure(*LAY, 0.010, 0.010) == 0.0
    assert winding.flange_force(7e6, 0.010, 0.010) == 0.0


def test_twice_the_tension_twice_the_pressure() -> None:
    assert winding.hub_pressure(20.0, 0.25e-3, 0.25e-3, 0.010, 0.015) == pytest.approx(
        2 * winding.hub_pressure(*LAY, 0.010, 0.015)
    )


def test_panels_of_one_call_serve_every_element() -> None:
    """A stiff element in an array may not spoil a soft one beside it, nor the other way round."""
    anisotropy = np.array([0.3, 1.0, 50.0])
    together = winding.hub_pressure(*LAY, 0.010, np.array([[0.0105], [0.04]]), anisotropy)
    for i, pack in enumerate((0.0105, 0.04)):
        for j in range(3):
            alone = winding.hub_pressure(*LAY, 0.010, pack, float(anisotropy[j]))
            assert together[i, j] == pytest.approx(alone, rel=1e-12)  # type: ignore[index]


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: winding.hub_pressure(-1.0, 1e-3, 1e-3, 0.01, 0.02), "line_tension must be zero or more"),
        (lambda: winding.hub_pressure(1.0, 0.0, 1e-3, 0.01, 0.02), "pitch must be above zero"),
        (lambda: winding.hub_pressure(1.0, 1e-3, 0.0, 0.01, 0.02), "layer_height must be above zero"),
        (
            lambda: winding.hub_pressure(1.0, 1e-3, 1e-3, 0.01, 0.009),
            "pack_radius must be hub_radius or more",
        ),
        (lambda: winding.hub_pressure(1.0, 1e-3, 1e-3, 0.01, 0.02, 0.0), "anisotropy must be above zero"),
        (lambda: winding.flange_force(-1.0, 0.01, 0.02), "hub_pressure must be zero or more"),
        (lambda: winding.flange_force(1.0, 0.01, 0.02, 1.5), "lateral_ratio must be between 0 and 1"),
        (lambda: winding.flange_force(1.0, 0.02, 0.01), "pack_radius must be hub_radius or more"),
        (lambda: winding.flange_force(1.0, float("nan"), 0.01), "hub_radius must be above zero"),
    ],
)
def test_bad_values_are_refused_by_name(call: object, named: str) -> None:
    with pytest.raises(ValueError, match=named):
        call()  # type: ignore[operator]


def test_the_band_closes_where_the_pack_has_been_measured() -> None:
    band = winding.pressure_band(*LAY, 0.010, 0.015, 7.0)
    assert band["low"] == band["high"] == winding.hub_pressure(*LAY, 0.010, 0.015, 7.0)


def test_the_band_is_never_upside_down() -> None:
    pack = np.linspace(0.010, 0.020, 300)
    band = winding.pressure_band(*LAY, 0.010, pack)
    assert np.all(np.asarray(band["low"]) <= np.asarray(band["high"]))
    assert np.all(np.diff(band["low"]) >= 0)
    assert band["low"][0] == band["high"][0] == 0.0  # type: ignore[index]


def test_a_pack_below_its_arbor_has_no_band() -> None:
    with pytest.raises(ValueError, match="pack_radius must be hub_radius or more"):
        winding.pressure_band(*LAY, 0.010, 0.009)
