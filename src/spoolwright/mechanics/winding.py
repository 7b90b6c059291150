"""What a tight winding does to its spool: pressure on the arbor, and the force that spreads the flanges."""

from __future__ import annotations

from math import pi
from typing import TypedDict

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

MANY_LAYERS = 1.75
"""Effective layers that a certification rule for winch drums takes for two layers and more."""
NODES = 12
"""Gauss points of a panel; a panel is at most one unit of anisotropy times log radius wide."""


def hub_pressure(
    line_tension: Number,
    pitch: Number,
    layer_height: Number,
    hub_radius: Number,
    pack_radius: Number,
    anisotropy: Number = 1.0,
) -> Number:
    """Pressure of many layers of line, wound at one tension, on a rigid arbor.

    Parameters
    ----------
    line_tension : Number
        Tension at which the line went on [N], zero or more.
    pitch : Number
        Distance from turn to turn along the spool [m], above zero.
    layer_height : Number
        Rise from layer to layer [m], above zero.
    hub_radius : Number
        Radius of the arbor [m], above zero.
    pack_radius : Number
        Radius of the finished pack [m], hub_radius or more.
    anisotropy : Number
        Square root of the pack's stiffness around over its stiffness outwards [-], above zero; 1 for a
        solid, 5 to 20 for soft line with air in it.

    Returns
    -------
    Number
        Pressure on the arbor [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or a pack below the arbor.

    Notes
    -----
    p = s0 times the integral from 1 to b/a of 2 dx / (x^n + x^-n), s0 = tension / (pitch layer_height), n
    the anisotropy; ln(((b/a)^2 + 1) / 2) for n = 1. Linear, no sideways squeeze, no slip: published
    simpler rules differ by a factor of ten, so give a band over anisotropy, not a number.

    Source
    ------
    H. C. Altmann, TAPPI 51 (1968) 176, linear orthotropic winding on a rigid core (from memory).

    Examples
    --------
    >>> round(hub_pressure(10.0, 0.25e-3, 0.25e-3, 0.010, 0.015) / 1e6, 1)
    77.7
    """
    arguments.not_negative(line_tension=line_tension)
    arguments.positive(pitch=pitch, layer_height=layer_height, hub_radius=hub_radius, anisotropy=anisotropy)
    arguments.positive(pack_radius=pack_radius)
    arguments.at_least("pack_radius", pack_radius, "hub_radius", hub_radius)
    reach = np.asarray(np.log(pack_radius / hub_radius))
    panels = int(np.ceil(np.max(reach * np.maximum(anisotropy, 1.0)))) + 1
    point, weight = np.polynomial.legendre.leggauss(NODES)
    share = (np.arange(panels)[:, None] + (1 + point) / 2).ravel() / panels
    y = reach[..., None] * share
    with np.errstate(over="ignore"):  # a turn so deep that none of its pressure comes through
        passed = np.exp(y) / np.cosh(np.asarray(anisotropy)[..., None] * y)
    integral = reach * np.sum(passed * np.tile(weight, panels), axis=-1) / (2 * panels)
    return arguments.plain(line_tension / (pitch * layer_height) * integral)


class PressureBand(TypedDict):
    """Pressures on the arbor between which the published models leave the truth, in Pa."""

    low: Number
    high: Number


def pressure_band(
    line_tension: Number,
    pitch: Number,
    layer_height: Number,
    hub_radius: Number,
    pack_radius: Number,
    anisotropy: Number | None = None,
) -> PressureBand:
    """Least and most pressure of a wound pack on its arbor, while nobody has measured how soft the pack is.

    Parameters
    ----------
    line_tension : Number
        Tension at which the line went on [N], zero or more.
    pitch : Number
        Distance from turn to turn [m], above zero.
    layer_height : Number
        Rise from layer to layer [m], above zero.
    hub_radius : Number
        Radius of the arbor [m], above zero.
    pack_radius : Number
        Radius of the finished pack [m], hub_radius or more.
    anisotropy : Number or None
        Square root of the pack's stiffness around over its stiffness outwards [-], above zero, where the
        shop has measured it; None where it has not.

    Returns
    -------
    PressureBand
        Mapping: low and high [Pa], each of the broadcast shape of the inputs. With anisotropy both are
        hub_pressure.

    Raises
    ------
    ValueError
        A value outside its range, or a pack below the arbor.

    Notes
    -----
    low = C S / (P r), C the number of layers, at most 1.75: what a rule for steel rope on steel drums counts.
    high = S / (P h) ln(R / r): every layer presses with all of its tension and none slackens another. Cannot
    tell them apart without a measurement: nylon that creeps and shrinks in water goes to the high end and
    past it, soft braid on stiff metal to the low one.

    Source
    ------
    Rule: DNV Standard for Certification 2.22, winch drums, C = 1 and 1.75 (from memory). No relaxation:
    thin-ring statics. The choice of the two ends: our collection of references on mechanics, last section.

    Examples
    --------
    >>> band = pressure_band(10.0, 0.25e-3, 0.25e-3, 0.010, 0.015)
    >>> round(band["low"] / 1e6, 1), round(band["high"] / 1e6, 1)
    (7.0, 64.9)
    """
    if anisotropy is not None:
        measured = hub_pressure(line_tension, pitch, layer_height, hub_radius, pack_radius, anisotropy)
        return PressureBand(low=measured, high=measured)
    arguments.not_negative(line_tension=line_tension)
    arguments.positive(pitch=pitch, layer_height=layer_height, hub_radius=hub_radius, pack_radius=pack_radius)
    arguments.at_least("pack_radius", pack_radius, "hub_radius", hub_radius)
    layers = (pack_radius - hub_radius) / layer_height
    low = line_tension / (pitch * hub_radius) * np.minimum(layers, MANY_LAYERS)
    high = line_tension / (pitch * layer_height) * np.log(pack_radius / hub_radius)
    return PressureBand(low=arguments.plain(low), high=arguments.plain(np.maximum(low, high)))


def flange_force(
    hub_pressure: Number, hub_radius: Number, pack_radius: Number, lateral_ratio: Number = 1 / 3
) -> Number:
    """Force that a wound pack spreads one flange of its spool with.

    Parameters
    ----------
    hub_pressure : Number
        Pressure of the pack on the arbor [Pa], zero or more.
    hub_radius : Number
        Radius of the arbor [m], above zero.
    pack_radius : Number
        Radius of the pack [m], hub_radius or more.
    lateral_ratio : Number
        Sideways pressure over hub pressure at the arbor [-], zero to 1.

    Returns
    -------
    Number
        Force on one flange [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or a pack below the arbor.

    Notes
    -----
    pi p (R - r) (R + 2 r) / 3, p = lateral_ratio hub_pressure at the arbor, falling evenly to zero at the
    top layer.

    Source
    ------
    Integral of the pressure that rules for winch drums put on flanges (DNV 2.22; from memory).

    Examples
    --------
    >>> round(flange_force(7e6, 0.010, 0.015), 1)
    427.6
    """
    arguments.not_negative(hub_pressure=hub_pressure)
    arguments.positive(hub_radius=hub_radius, pack_radius=pack_radius)
    arguments.between(0.0, 1.0, lateral_ratio=lateral_ratio)
    arguments.at_least("pack_radius", pack_radius, "hub_radius", hub_radius)
    depth = pack_radius - hub_radius
    return pi * lateral_ratio * hub_pressure * depth * (pack_radius + 2 * hub_radius) / 3
