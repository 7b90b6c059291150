"""Line wound tight: thin-ring statics, the isotropic limit, and rings put on one by one."""

from __future__ import annotations

from math import log, pi

import numpy as np
import pytest
from scipy.integrate import quad

from spoolwright.mechanics import winding
from tests.reference.published import Published, each

HUB, PACK = 0.010, 0.015
LAY = (10.0, 0.25e-3, 0.25e-3)
STRESS = 10.0 / (0.25e-3 * 0.25e-3)

CHECKS = [
    Published(
        "stiffness alike both ways, closed form, MPa",
        lambda: winding.hub_pressure(*LAY, HUB, PACK) / 1e6,
        77.681,
        1e-3,
        "Altmann 1968, linear orthotropic winding on a rigid core, isotropic",
        "from memory; number of the collection of references",
    ),
    Published(
        "stiffness ratio 25, by quadrature, MPa",
        lambda: winding.hub_pressure(*LAY, HUB, PACK, 5.0) / 1e6,
        49.379,
        1e-3,
        "Altmann 1968, linear orthotropic winding on a rigid core",
        "from memory; number of the collection of references",
    ),
    Published(
        "rings as springs, stiffness alike both ways, MPa",
        lambda: winding.hub_pressure(*LAY, HUB, PACK) / 1e6,
        77.67,
        0.08,
        "collection of references, mechanics: model of 400 rings joined by springs",
        "independent numerical method of the collection (0.1 % for 400 rings)",
    ),
    Published(
        "rings as springs, stiffness ratio 25, MPa",
        lambda: winding.hub_pressure(*LAY, HUB, PACK, 5.0) / 1e6,
        49.31,
        0.1,
        "collection of references, mechanics: model of 400 rings joined by springs",
        "independent numerical method of the collection (0.2 % for 400 rings)",
    ),
    Published(
        "flange force of a rule for winch drums, N",
        lambda: winding.flange_force(1.75 * 10.0 / (0.25e-3 * HUB), HUB, PACK),
        427.61,
        0.02,
        "collection of references, mechanics: flange rule of DNV 2.22 integrated",
        "from memory; integrated numerically by the collection",
    ),
]


CHECKS += [
    Published(
        "drum hoop stress of the certification rule, MPa",
        lambda: winding.pressure_band(100.0, 0.5e-3, 0.5e-3, HUB, PACK)["low"] * HUB / 1.5e-3 / 1e6,
        233.33,
        0.01,
        "DNV Standard for Certification 2.22 (DNVGL-ST-0378), winch drums: C S / (P t), C = 1.75",
        "from memory; a paper that cites its C coefficient was opened: de.scribd.com/document/246478006",
    ),
    Published(
        "no relaxation, as effective layers",
        lambda: winding.pressure_band(*LAY, HUB, PACK)["high"] / (10.0 / (0.25e-3 * HUB)),
        16.2,
        0.05,
        "collection of references, mechanics: s0 ln(b/a) over S / (P R)",
        "thin-ring statics, worked out by the collection",
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_one_thin_layer_is_the_thin_ring() -> None:
    """p = S / (P R) for a first layer (statics of a thin ring, the anchor of wire-wound pipes)."""
    thin = 1e-7
    got = winding.hub_pressure(10.0, 0.25e-3, thin, HUB, HUB + thin)
    assert got == pytest.approx(10.0 / (0.25e-3 * HUB), rel=2e-5)


@pytest.mark.parametrize("ratio", [1.05, 1.5, 3.0])
def test_isotropic_limit(ratio: float) -> None:
    """s0 ln(((b/a)^2 + 1) / 2) (Altmann 1968, from memory)."""
    got = winding.hub_pressure(*LAY, HUB, HUB * ratio)
    assert got == pytest.approx(STRESS * log((ratio**2 + 1) / 2), rel=1e-12)


@pytest.mark.parametrize("anisotropy", [0.5, 1.0, 2.0, 7.0, 20.0, 100.0])
@pytest.mark.parametrize("ratio", [1.01, 1.5, 4.0])
def test_rivals_panels_and_adaptive_quadrature(anisotropy: float, ratio: float) -> None:
    integral = quad(
        lambda x: 2 / (x**anisotropy + x**-anisotropy), 1, ratio, epsabs=0, epsrel=1e-12, limit=500
    )[0]
    assert winding.hub_pressure(*LAY, HUB, HUB * ratio, anisotropy) == pytest.approx(
        STRESS * integral, rel=1e-10
    )


def wound_ring_by_ring(anisotropy: float, ratio: float, rings: int) -> float:
    """Each new ring's pressure is passed inward through the rings below, solved by small steps.

    r^2 u'' + r u' - n^2 u = 0 between a hub that holds u = 0 and a surface under pressure; radial stress is
    u' (radial modulus 1, no sideways squeeze). Central differences on a grid even in log r.
    """
    total = 0.0
    edges = np.linspace(1.0, ratio, rings + 1)
    for inner, outer in zip(edges[:-1], edges[1:], strict=True):
        radius = (inner + outer) / 2
        pressure = (outer - inner) / radius
        n = 400
        h = np.log(radius) / n
        main = np.full(n, 2 + (anisotropy * h) ** 2)
        upper = np.full(n - 1, -1.0)
        lower = upper.copy()
        right = np.zeros(n)
        # surface: du/dr = -p, so du/dlog r = -p r, taken with a ghost point
        lower[-1] = -2.0
        right[-1] = -2 * h * pressure * radius
        matrix = np.diag(main) + np.diag(upper, 1) + np.diag(lower, -1)
        u = np.linalg.solve(matrix, right)
        total += -(4 * u[0] - u[1]) / (2 * h)  # slope at the hub, where u = 0
    return total


@pytest.mark.parametrize("anisotropy", [1.0, 3.0, 5.0])
def test_rivals_closed_form_and_rings_put_on_one_by_one(anisotropy: float) -> None:
    rings = wound_ring_by_ring(anisotropy, 1.5, 40)
    assert winding.hub_pressure(*LAY, HUB, PACK, anisotropy) / STRESS == pytest.approx(rings, rel=2e-3)


def test_softer_packs_press_less_and_more_layers_press_more() -> None:
    ratio = np.linspace(1.0, 3.0, 40)
    assert np.all(np.diff(winding.hub_pressure(*LAY, HUB, HUB * ratio, 3.0)) > 0)
    assert np.all(np.diff(winding.hub_pressure(*LAY, HUB, PACK, np.array([0.5, 1, 2, 5, 10, 20]))) < 0)


def test_the_flange_rule_is_the_integral_of_a_falling_pressure() -> None:
    """Pressure falling evenly from the arbor to the top layer (DNV 2.22, from memory)."""
    peak = 7e6 / 3
    integral = quad(lambda r: 2 * pi * r * peak * (PACK - r) / (PACK - HUB), HUB, PACK)[0]
    assert winding.flange_force(7e6, HUB, PACK) == pytest.approx(integral, rel=1e-12)


def test_the_band_holds_every_published_model_of_a_soft_pack() -> None:
    """Linear orthotropic winding from 20 (soft) up to no relaxation lies in it; a solid on a core above.

    Table of the collection of references, last section: 7.0 < 13.3, 27.5, 49.4 < 64.9 < 77.7 MPa.
    """
    band = winding.pressure_band(*LAY, HUB, PACK)
    for anisotropy, printed in ((20.0, 13.3), (10.0, 27.5), (5.0, 49.4)):
        found = winding.hub_pressure(*LAY, HUB, PACK, anisotropy)
        assert found / 1e6 == pytest.approx(printed, abs=0.06)
        assert band["low"] < found < band["high"]
    assert winding.hub_pressure(*LAY, HUB, PACK, 1.0) > band["high"]


def test_rivals_no_relaxation_summed_layer_by_layer() -> None:
    """p = sum of S / (P R_i) over 20 layers (thin-ring statics)."""
    radii = HUB + 0.25e-3 * (np.arange(20) + 0.5)
    summed = float(np.sum(10.0 / (0.25e-3 * radii)))
    assert winding.pressure_band(*LAY, HUB, PACK)["high"] == pytest.approx(summed, rel=2e-3)


def test_one_layer_is_exact_at_both_ends_of_the_band() -> None:
    """S / (P R) for one layer (thin ring; C = 1 in the rule DNV 2.22, from memory)."""
    band = winding.pressure_band(10.0, 0.25e-3, 1e-5, HUB, HUB + 1e-5)
    for end in ("low", "high"):
        assert band[end] == pytest.approx(10.0 / (0.25e-3 * HUB), rel=1e-3)  # type: ignore[literal-required]
