"""How the load lies on meshed teeth: how many pairs share it, how evenly along the face, what parts them."""

from __future__ import annotations

from math import pi, radians

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

STEEL_MODULUS = 206e9
STEEL_MESH_STIFFNESS = 20e9
"""Stiffness of the teeth of two steel gears for each metre of face [N/m^2]: 20 N a mm and micrometre."""
STANDARD_PRESSURE_ANGLE = radians(20)


def separating_force(tangential_force: Number, pressure_angle: Number = STANDARD_PRESSURE_ANGLE) -> Number:
    """Force that pushes two meshed gears apart, onto the bearings of both.

    Parameters
    ----------
    tangential_force : Number
        Force at the pitch circle [N], zero or more.
    pressure_angle : Number
        Pressure angle [rad], above zero, at most 45 degrees.

    Returns
    -------
    Number
        Force along the line of the two axes [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    Ft tan(alpha), spur gears; a helix adds a push along the axis and a little to this.

    Source
    ------
    Wentzell, Machine Design, ch. 12 (worked example opened).

    Examples
    --------
    >>> round(separating_force(100.0), 1)
    36.4
    """
    arguments.not_negative(tangential_force=tangential_force)
    arguments.above_up_to(0.0, pi / 4, pressure_angle=pressure_angle)
    return arguments.plain(tangential_force * np.tan(pressure_angle))


def sharing_factor(contact_ratio: Number) -> Number:
    """Share of Lewis's stress that is left because a second pair of teeth helps at the tip.

    Parameters
    ----------
    contact_ratio : Number
        Contact ratio of the pair [-], 1 to 2.5.

    Returns
    -------
    Number
        Factor on the root stress of a tip-loaded tooth [-], shape of the input.

    Raises
    ------
    ValueError
        A contact ratio outside 1 to 2.5.

    Notes
    -----
    0.25 + 0.75 / contact_ratio: while the load is at the tip a second pair bears, and when one pair is alone
    the load has come down the tooth. For teeth cut truly; badly cut or worn ones share nothing (1).

    Source
    ------
    ISO 6336-3, contact ratio factor for bending (from memory).

    Examples
    --------
    >>> round(sharing_factor(1.6), 3)
    0.719
    """
    arguments.between(1.0, 2.5, contact_ratio=contact_ratio)
    return 0.25 + 0.75 / contact_ratio


def face_load_factor(
    misalignment: Number,
    tangential_force: Number,
    face_width: Number,
    youngs_a: Number,
    youngs_b: Number,
    mesh_stiffness: Number = STEEL_MESH_STIFFNESS,
) -> Number:
    """How much more the loaded end of a tooth bears because two wheels do not lie parallel.

    Parameters
    ----------
    misalignment : Number
        Angle between the two axes [rad], zero or more.
    tangential_force : Number
        Force at the pitch circle [N], above zero.
    face_width : Number
        Width of the face [m], above zero.
    youngs_a : Number
        Young's modulus of one wheel [Pa], above zero.
    youngs_b : Number
        Young's modulus of the other [Pa], above zero.
    mesh_stiffness : Number
        Stiffness of the teeth for each metre of face, were both of steel [N/m^2], above zero.

    Returns
    -------
    Number
        Greatest load on a stretch of the face over the mean [-], 1 or more, broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    With s = misalignment width stiffness / (2 force / width): 1 + s while the whole face touches (s up to 1),
    2 sqrt(s) beyond. The stiffness goes with 2 Ea Eb / (Ea + Eb) over that of steel. Where the angle grows
    with the force, as in a frame, the factor does not depend on the force. Crowning, running in and soft
    teeth that yield at their end all lower it.

    Source
    ------
    ISO 6336-1, face load factor, method C (from memory): teeth as a row of equal springs.

    Examples
    --------
    >>> round(face_load_factor(1e-3, 100.0, 4e-3, 97e9, 97e9), 2)
    1.75
    """
    arguments.not_negative(misalignment=misalignment)
    arguments.positive(tangential_force=tangential_force, face_width=face_width)
    arguments.positive(youngs_a=youngs_a, youngs_b=youngs_b, mesh_stiffness=mesh_stiffness)
    stiffness = mesh_stiffness * 2 * youngs_a * youngs_b / (youngs_a + youngs_b) / STEEL_MODULUS
    lean = misalignment * face_width**2 * stiffness / (2 * tangential_force)
    return arguments.plain(np.where(np.asarray(lean) <= 1, 1 + lean, 2 * np.sqrt(lean)))
