"""Spur gears: bending of a tooth, pressure between two, how many share the work."""

from __future__ import annotations

from math import pi, radians

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

STANDARD_PRESSURE_ANGLE = radians(20)


def lewis_stress(
    tangential_force: Number,
    module: Number,
    face_width: Number,
    form_factor: Number,
    velocity_factor: Number = 1.0,
) -> Number:
    """Bending stress at the root of a spur gear's tooth that carries the whole load.

    Parameters
    ----------
    tangential_force : Number
        Force at the pitch circle [N], zero or more.
    module : Number
        Module [m], above zero.
    face_width : Number
        Width of the tooth, the narrower of the pair [m], above zero.
    form_factor : Number
        Lewis form factor Y on the module [-], above zero: 0.245 for 12 teeth to 0.47 for 300 at 20 degrees.
    velocity_factor : Number
        Dynamic factor [-], 1 or more; 1 for a gear turned by hand.

    Returns
    -------
    Number
        Bending stress [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    sigma = Kv Ft / (b m Y). Load at the tip, no stress concentration at the fillet, no help from a second
    pair of teeth: on the safe side for sound teeth, not for worn ones. Y on the module is pi times the
    y of older tables.

    Source
    ------
    Shigley's Mechanical Engineering Design, 9th ed., eqs 14-2 and 14-7 (from memory).

    Examples
    --------
    >>> round(lewis_stress(100.0, 0.6e-3, 4e-3, 0.245) / 1e6)
    170
    """
    arguments.not_negative(tangential_force=tangential_force)
    arguments.positive(module=module, face_width=face_width, form_factor=form_factor)
    arguments.from_up(1.0, velocity_factor=velocity_factor)
    return velocity_factor * tangential_force / (face_width * module * form_factor)


def contact_ratio(
    teeth_a: Number,
    teeth_b: Number,
    module: Number,
    pressure_angle: Number = STANDARD_PRESSURE_ANGLE,
    addendum: Number = 1.0,
) -> Number:
    """Transverse contact ratio of two standard spur gears: pairs of teeth in touch, on average.

    Parameters
    ----------
    teeth_a : Number
        Teeth of one gear [-], a whole number of 3 or more.
    teeth_b : Number
        Teeth of the other [-], a whole number of 3 or more.
    module : Number
        Module [m], above zero; it cancels, and only checks that the gears are real.
    pressure_angle : Number
        Pressure angle [rad], above zero, at most 45 degrees.
    addendum : Number
        Height of the tooth above the pitch circle, in modules [-], above zero, at most 1.5.

    Returns
    -------
    Number
        Contact ratio [-], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    (sqrt(ra1^2 - rb1^2) + sqrt(ra2^2 - rb2^2) - a sin alpha) / (pi m cos alpha), unshifted profiles at
    standard centre distance. Pinions of few teeth (below 17 at 20 degrees) are undercut where they are
    not shifted, and then keep less than this.

    Source
    ------
    ISO 21771, transverse contact ratio (from memory); Khurmi & Gupta, Theory of Machines, ch. 12 (worked
    examples opened).

    Examples
    --------
    >>> round(contact_ratio(20, 40, 0.001), 4)
    1.6352
    """
    arguments.whole(3, teeth_a=teeth_a, teeth_b=teeth_b)
    arguments.positive(module=module)
    arguments.above_up_to(0.0, pi / 4, pressure_angle=pressure_angle)
    arguments.above_up_to(0.0, 1.5, addendum=addendum)
    pitch_a, pitch_b = module * teeth_a / 2, module * teeth_b / 2
    tip = addendum * module
    cosine, sine = np.cos(pressure_angle), np.sin(pressure_angle)
    reach_a = np.sqrt((pitch_a + tip) ** 2 - (pitch_a * cosine) ** 2)
    reach_b = np.sqrt((pitch_b + tip) ** 2 - (pitch_b * cosine) ** 2)
    path = reach_a + reach_b - (pitch_a + pitch_b) * sine
    return arguments.plain(path / (pi * module * cosine))


def hertz_line_stress(
    force: Number,
    length: Number,
    radius_a: Number,
    radius_b: Number,
    youngs_a: Number,
    poisson_a: Number,
    youngs_b: Number,
    poisson_b: Number,
) -> Number:
    """Peak pressure between two parallel cylinders, as between two teeth or a pawl and its worm.

    Parameters
    ----------
    force : Number
        Force that presses them together [N], zero or more.
    length : Number
        Length of the line of touch [m], above zero.
    radius_a : Number
        Radius of one surface [m], above zero; infinity for a flat.
    radius_b : Number
        Radius of the other [m], above zero; infinity for a flat, but not both.
    youngs_a : Number
        Young's modulus of the first [Pa], above zero.
    poisson_a : Number
        Poisson's ratio of the first [-], zero to 0.5.
    youngs_b : Number
        Young's modulus of the second [Pa], above zero.
    poisson_b : Number
        Poisson's ratio of the second [-], zero to 0.5.

    Returns
    -------
    Number
        Peak pressure [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, or two flats.

    Notes
    -----
    p0 = sqrt(F / (pi L) (1/Ra + 1/Rb) / ((1 - nu_a^2)/Ea + (1 - nu_b^2)/Eb)). Smooth, elastic, no edge
    load at the ends.

    Source
    ------
    H. Hertz 1881; K. L. Johnson, Contact Mechanics, eq. 4.45 (from memory); Boresi & Schmidt, Advanced
    Mechanics of Materials, ch. 17 (worked example opened).

    Examples
    --------
    >>> round(hertz_line_stress(1000.0, 0.01, 0.01, 0.01, 206e9, 0.3, 206e9, 0.3) / 1e6)
    849
    """
    arguments.not_negative(force=force)
    arguments.positive(length=length, youngs_a=youngs_a, youngs_b=youngs_b)
    arguments.positive_or_infinite(radius_a=radius_a, radius_b=radius_b)
    arguments.between(0.0, 0.5, poisson_a=poisson_a, poisson_b=poisson_b)
    curvature = 1 / radius_a + 1 / radius_b
    arguments.positive(curvature_of_the_pair=curvature)
    give = (1 - poisson_a**2) / youngs_a + (1 - poisson_b**2) / youngs_b
    return arguments.plain(np.sqrt(force * curvature / (pi * length * give)))
