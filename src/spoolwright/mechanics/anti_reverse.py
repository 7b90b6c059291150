"""What keeps the handle from running backwards: a ratchet with its dog, or rollers in a wedge."""

from __future__ import annotations

from math import pi, radians

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

WEDGE_ANGLE = radians(8)
"""Angle between the two surfaces that a roller is wedged between; 6 to 9 degrees are usual (from memory)."""


def ratchet_stress(
    torque: Number,
    contact_radius: Number,
    contact_height: Number,
    root: Number,
    width: Number,
    dogs: Number = 1.0,
) -> dict[str, Number]:
    """Stresses at the root of a ratchet tooth that a dog pushes against.

    Parameters
    ----------
    torque : Number
        Torque on the ratchet [N m], zero or more.
    contact_radius : Number
        Radius at which the dog bears on the tooth [m], above zero.
    contact_height : Number
        Height of that place over the tooth's root [m], zero or more.
    root : Number
        Thickness of the tooth at its root, along the circle [m], above zero.
    width : Number
        Width of the tooth along the axis, the narrower of tooth and dog [m], above zero.
    dogs : Number
        Dogs that share the load [-], above zero; one alone, unless two are known to bear together.

    Returns
    -------
    dict
        Mean stress in "shear" and stress in "bending" at the root [Pa], each of the broadcast shape.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    F = T / (r dogs); shear F / (root width), bending 6 F h / (width root^2). A short tooth goes in shear, a
    tall one in bending; the notch of the corner is left out. Rounded tips carry the load lower and slip.

    Source
    ------
    Strength of materials, any text (short cantilever, direct shear); the choice of the two checks:
    Machinery's Handbook, ratchet gearing (from memory).

    Examples
    --------
    >>> stress = ratchet_stress(2.0, 0.008, 0.8e-3, 2.0e-3, 1.5e-3)
    >>> {name: round(value / 1e6) for name, value in stress.items()}
    {'shear': 83, 'bending': 200}
    """
    arguments.not_negative(torque=torque, contact_height=contact_height)
    arguments.positive(contact_radius=contact_radius, root=root, width=width, dogs=dogs)
    force = torque / (contact_radius * dogs)
    return {
        "shear": force / (root * width),
        "bending": 6 * force * contact_height / (width * root**2),
    }


def dog_pressure(torque: Number, contact_radius: Number, contact_depth: Number, width: Number) -> Number:
    """Pressure between a dog's tip and the face of a ratchet tooth.

    Parameters
    ----------
    torque : Number
        Torque on the ratchet [N m], zero or more.
    contact_radius : Number
        Radius at which the dog bears [m], above zero.
    contact_depth : Number
        How deep the dog lies on the tooth's face [m], above zero; what is left of it once the tip is round.
    width : Number
        Width in touch [m], above zero.

    Returns
    -------
    Number
        Mean pressure [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    T / (r depth width). A face dents for good at about the hardness, and wears its edge off from a third of
    that (any text on contact). One dog alone.

    Source
    ------
    Definition of a mean pressure; K. L. Johnson, Contact Mechanics, ch. 6, for what a face bears (from
    memory).

    Examples
    --------
    >>> round(dog_pressure(2.0, 0.008, 0.8e-3, 1.5e-3) / 1e6)
    208
    """
    arguments.not_negative(torque=torque)
    arguments.positive(contact_radius=contact_radius, contact_depth=contact_depth, width=width)
    return torque / (contact_radius * contact_depth * width)


def roller_clutch_torque(
    rollers: Number,
    roller_diameter: Number,
    roller_length: Number,
    sleeve_radius: Number,
    allowable_pressure: Number,
    youngs_modulus: Number = 208e9,
    poisson: Number = 0.3,
    wedge_angle: Number = WEDGE_ANGLE,
    friction: Number = 0.1,
) -> Number:
    """Torque that the rollers of a one-way clutch hold before they mark their sleeve, or slip.

    Parameters
    ----------
    rollers : Number
        Rollers in the clutch [-], a whole number of 1 or more.
    roller_diameter : Number
        Diameter of a roller [m], above zero.
    roller_length : Number
        Length of a roller [m], above zero.
    sleeve_radius : Number
        Radius of the sleeve or shaft inside them [m], above zero.
    allowable_pressure : Number
        Peak pressure that roller and sleeve bear [Pa], zero or more; hard steel 2.5e9 to 4e9.
    youngs_modulus : Number
        Young's modulus of both [Pa], above zero.
    poisson : Number
        Poisson's ratio of both [-], zero to 0.5.
    wedge_angle : Number
        Angle between the two surfaces at the rollers [rad], above zero, at most 30 degrees.
    friction : Number
        Friction coefficient between roller and sleeve [-], zero or more; grease of the wrong kind takes it.

    Returns
    -------
    Number
        Torque [N m], zero where the rollers slip, broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    Each roller presses with N at which a line contact reaches the pressure, N = pi l p^2 (1 - nu^2) 2 / E /
    (2 / d + 1 / r), and holds N tan(a / 2) at the sleeve's radius; T = n r N tan(a / 2). It holds only while
    tan(a / 2) is not above the friction. All rollers alike: cheap clutches hold with half of them.

    Source
    ------
    Orthwein, Clutches and Brakes, overrunning clutches; Hertz, Johnson, Contact Mechanics, eq. 4.45 (both
    from memory).

    Examples
    --------
    >>> round(roller_clutch_torque(8, 2e-3, 8e-3, 5e-3, 3e9), 1)
    4.6
    """
    arguments.whole(1, rollers=rollers)
    arguments.positive(roller_diameter=roller_diameter, roller_length=roller_length)
    arguments.positive(sleeve_radius=sleeve_radius, youngs_modulus=youngs_modulus)
    arguments.not_negative(allowable_pressure=allowable_pressure, friction=friction)
    arguments.between(0.0, 0.5, poisson=poisson)
    arguments.above_up_to(0.0, radians(30), wedge_angle=wedge_angle)
    give = 2 * (1 - poisson**2) / youngs_modulus
    curvature = 2 / roller_diameter + 1 / sleeve_radius
    pressed = pi * roller_length * allowable_pressure**2 * give / curvature
    grip = np.tan(wedge_angle / 2)
    held = np.where(np.asarray(grip) <= friction, grip, 0.0)
    return arguments.plain(rollers * sleeve_radius * pressed * held)
