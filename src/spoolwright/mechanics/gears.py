"""Spur gears: bending of a tooth, pressure between two, how many share the work."""

from __future__ import annotations

from math import pi, radians

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

STANDARD_PRESSURE_ANGLE = radians(20)

FEWEST_TEETH = 8
_FEW = "12 .245, 13 .261, 14 .277, 15 .290, 16 .296, 17 .303, 18 .309, 19 .314, 20 .322, 21 .328, 22 .331"
_SOME = "24 .337, 26 .346, 28 .353, 30 .359, 34 .371, 38 .384, 43 .397, 50 .409, 60 .422, 75 .435, 100 .447"
_MANY = "150 .460, 300 .472, 400 .480"
LEWIS = tuple(
    (int(teeth), float(y)) for teeth, y in (row.split() for row in f"{_FEW}, {_SOME}, {_MANY}".split(", "))
)
LEWIS_RACK = 0.485
"""Teeth and Y of full-depth gears at 20 degrees, as printed; a rack is a gear without end."""


def form_factor(teeth: Number) -> Number:
    """Lewis form factor of a spur gear: how well its tooth is shaped to stand bending.

    Parameters
    ----------
    teeth : Number
        Teeth of the gear [-], a whole number of 8 or more.

    Returns
    -------
    Number
        Form factor Y on the module [-], shape of the input.

    Raises
    ------
    ValueError
        Fewer than 8 teeth, or not a whole number.

    Notes
    -----
    The printed table from 12 teeth to a rack, straight between rows over 1 / teeth; below 12 Lewis's own
    Y = pi (0.154 - 0.912 / teeth), which meets the table at 12. Full-depth teeth of 20 degrees, not shifted:
    a pinion of few teeth that was shifted outwards, as many are, is stronger than this says.

    Source
    ------
    Shigley's Mechanical Engineering Design, table 14-2 (opened in several public copies that agree); below
    12 teeth Khurmi & Gupta, A Textbook of Machine Design, ch. 28 (from memory).

    Examples
    --------
    >>> form_factor(12), form_factor(60)
    (0.245, 0.422)
    """
    arguments.whole(FEWEST_TEETH, teeth=teeth)
    rows = LEWIS[::-1]
    grid = np.array([0.0, *(1 / row_teeth for row_teeth, _ in rows)])
    printed = np.array([LEWIS_RACK, *(y for _, y in rows)])
    inverse = 1 / np.asarray(teeth, dtype=float)
    few = pi * (0.154 - 0.912 * inverse)
    return arguments.plain(np.where(inverse > grid[-1], few, np.interp(inverse, grid, printed)))


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
    approach, recess = _ways(teeth_a, teeth_b, module, pressure_angle, addendum)
    return arguments.plain((approach + recess) / (pi * module * np.cos(pressure_angle)))


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


def pitch_point_stress(
    tangential_force: Number,
    module: Number,
    teeth_a: Number,
    teeth_b: Number,
    face_width: Number,
    youngs_a: Number,
    poisson_a: Number,
    youngs_b: Number,
    poisson_b: Number,
    pressure_angle: Number = STANDARD_PRESSURE_ANGLE,
) -> Number:
    """Peak pressure between the teeth of two spur gears where they touch on the pitch circles.

    Parameters
    ----------
    tangential_force : Number
        Force at the pitch circle [N], zero or more; one pair of teeth bears it.
    module : Number
        Module [m], above zero.
    teeth_a : Number
        Teeth of one gear [-], a whole number of 3 or more.
    teeth_b : Number
        Teeth of the other [-], a whole number of 3 or more.
    face_width : Number
        Width over which the teeth touch, the narrower of the pair [m], above zero.
    youngs_a : Number
        Young's modulus of the first [Pa], above zero.
    poisson_a : Number
        Poisson's ratio of the first [-], zero to 0.5.
    youngs_b : Number
        Young's modulus of the second [Pa], above zero.
    poisson_b : Number
        Poisson's ratio of the second [-], zero to 0.5.
    pressure_angle : Number
        Pressure angle [rad], above zero, at most 45 degrees.

    Returns
    -------
    Number
        Peak pressure [Pa], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    hertz_line_stress of the normal force Ft / cos(alpha) between cylinders of the flanks' radii
    r sin(alpha), r = m z / 2. Full width in touch, dry, smooth; a shaft that leans takes width away.

    Source
    ------
    Shigley's Mechanical Engineering Design, eqs 14-11 to 14-14; Buckingham's wear load is the same with
    its 0.35 for 1 / (pi (1 - 0.3^2)) and cos(alpha) taken as 1 (both from memory).

    Examples
    --------
    >>> brass = (97e9, 0.34)
    >>> round(pitch_point_stress(100.0, 0.6e-3, 12, 50, 4e-3, *brass, *brass) / 1e6)
    684
    """
    arguments.not_negative(tangential_force=tangential_force)
    arguments.positive(module=module)
    arguments.whole(3, teeth_a=teeth_a, teeth_b=teeth_b)
    arguments.above_up_to(0.0, pi / 4, pressure_angle=pressure_angle)
    flank = module * np.sin(pressure_angle) / 2
    normal_force = tangential_force / np.cos(pressure_angle)
    return hertz_line_stress(
        arguments.plain(normal_force),
        face_width,
        arguments.plain(flank * teeth_a),
        arguments.plain(flank * teeth_b),
        youngs_a,
        poisson_a,
        youngs_b,
        poisson_b,
    )


def sliding_speed(
    speed_a: Number,
    teeth_a: Number,
    teeth_b: Number,
    module: Number,
    pressure_angle: Number = STANDARD_PRESSURE_ANGLE,
    addendum: Number = 1.0,
) -> Number:
    """Fastest rub of one tooth over the other, where a pair begins or ends its touch.

    Parameters
    ----------
    speed_a : Number
        Speed of the first gear [rad/s], zero or more.
    teeth_a : Number
        Its teeth [-], a whole number of 3 or more.
    teeth_b : Number
        Teeth of the other [-], a whole number of 3 or more.
    module : Number
        Module [m], above zero.
    pressure_angle : Number
        Pressure angle [rad], above zero, at most 45 degrees.
    addendum : Number
        Height of the tooth above the pitch circle, in modules [-], above zero, at most 1.5.

    Returns
    -------
    Number
        Sliding speed [m/s], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    (w_a + w_b) times the longer of the ways of approach and recess, w_b = w_a z_a / z_b. At the pitch point
    itself nothing slides. Undercut teeth leave the touch earlier than this takes.

    Source
    ------
    Khurmi & Gupta, Theory of Machines, ch. 12 (worked example opened).

    Examples
    --------
    >>> round(sliding_speed(24.0, 20, 40, 0.005), 4)
    0.4553
    """
    arguments.not_negative(speed_a=speed_a)
    ways = _ways(teeth_a, teeth_b, module, pressure_angle, addendum)
    return arguments.plain(speed_a * (1 + teeth_a / teeth_b) * np.maximum(*ways))


def _ways(
    teeth_a: Number, teeth_b: Number, module: Number, pressure_angle: Number, addendum: Number
) -> tuple[Number, Number]:
    """Lengths of the path of contact before and after the pitch point: of gear b's tip and of gear a's."""
    arguments.whole(3, teeth_a=teeth_a, teeth_b=teeth_b)
    arguments.positive(module=module)
    arguments.above_up_to(0.0, pi / 4, pressure_angle=pressure_angle)
    arguments.above_up_to(0.0, 1.5, addendum=addendum)
    cosine, sine = np.cos(pressure_angle), np.sin(pressure_angle)

    def beyond(teeth: Number) -> Number:
        pitch = module * teeth / 2
        reach = np.sqrt((pitch + addendum * module) ** 2 - (pitch * cosine) ** 2)
        return arguments.plain(reach - pitch * sine)

    return beyond(teeth_b), beyond(teeth_a)
