"""Disc springs (coned washers): the force of one, and of a pack laid back to back or nested."""

from __future__ import annotations

from math import pi
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

STEPS = 100
"""Ceiling on the steps of both searches here; they end by themselves once nothing changes."""


class _Disc(NamedTuple):
    thickness: Number
    slope: Number
    """Force per unit of the shape curve [N]."""
    cone: Number
    """Cone height in thicknesses [-]."""


def disc_spring_force(
    deflection: Number,
    outer_diameter: Number,
    inner_diameter: Number,
    thickness: Number,
    cone_height: Number,
    youngs_modulus: Number = 206e9,
    poisson: Number = 0.3,
) -> Number:
    """Force of one disc spring pressed down by a deflection.

    Parameters
    ----------
    deflection : Number
        How far the spring is pressed down [m], zero to cone_height (flat).
    outer_diameter : Number
        Outer diameter [m], above inner_diameter.
    inner_diameter : Number
        Inner diameter [m], above zero.
    thickness : Number
        Thickness of the sheet [m], above zero.
    cone_height : Number
        Free height less thickness [m], above zero.
    youngs_modulus : Number
        Young's modulus [Pa], above zero; about 190e9 for spring stainless.
    poisson : Number
        Poisson's ratio [-], zero to 0.5.

    Returns
    -------
    Number
        Force [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range, a deflection beyond flat, an inner diameter that is not inside.

    Notes
    -----
    F = 4 E/(1 - nu^2) t^4/(K1 De^2) (s/t) [(h0/t - s/t)(h0/t - s/2t) + 1],
    K1 = (1/pi) ((d - 1)/d)^2 / ((d + 1)/(d - 1) - 2/ln d), d = De/Di; no contact flats. Above
    h0/t = 1.41 the force falls again before flat is reached. Makers may be 25 % over and 7.5 % under the
    formula below 1.25 mm of thickness, so a measured pack is the better witness.

    Source
    ------
    J. O. Almen and A. Laszlo, Trans. ASME 58 (1936) 305; EN 16984:2016, spring force (from memory,
    formula as printed in shop tables opened; see docs/derivations/springs.md).

    Examples
    --------
    >>> round(disc_spring_force(0.15e-3, 8e-3, 4.2e-3, 0.4e-3, 0.2e-3), 1)
    209.6
    """
    disc = _disc(outer_diameter, inner_diameter, thickness, cone_height, youngs_modulus, poisson)
    arguments.not_negative(deflection=deflection)
    arguments.at_most("deflection", deflection, "cone_height", cone_height)
    return disc.slope * _shape(deflection / thickness, disc.cone)


def stack_force(
    deflection: Number,
    outer_diameter: Number,
    inner_diameter: Number,
    thickness: Number,
    cone_height: Number,
    arrangement: str = "()",
    youngs_modulus: Number = 206e9,
    poisson: Number = 0.3,
) -> Number:
    """Force of a pack of equal disc springs pressed down by a deflection.

    Parameters
    ----------
    deflection : Number
        How far the whole pack is pressed down [m], zero to cone_height times the number of groups (flat).
    outer_diameter : Number
        Outer diameter of a spring [m], above inner_diameter.
    inner_diameter : Number
        Inner diameter of a spring [m], above zero.
    thickness : Number
        Thickness of a spring [m], above zero.
    cone_height : Number
        Free height less thickness of a spring [m], above zero.
    arrangement : str
        One bracket for each spring in its order [-]: "()" is two back to back, "))" two nested,
        "(())" two nested pairs back to back.
    youngs_modulus : Number
        Young's modulus [Pa], above zero.
    poisson : Number
        Poisson's ratio [-], zero to 0.5.

    Returns
    -------
    Number
        Force [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        As disc_spring_force; also an arrangement with anything but brackets in it.

    Notes
    -----
    Nested springs share the force, groups back to back share the deflection. Groups of unequal number
    are followed until the strongest lies flat. Friction between nested springs (2 to 3 % for each
    contact) is left out; so is the snapping of single groups where h0/t is above 1.41.

    Source
    ------
    EN 16984:2016, parallel and series stacking (from memory).

    Examples
    --------
    >>> round(stack_force(0.30e-3, 8e-3, 4.2e-3, 0.4e-3, 0.2e-3, "(())"), 1)
    419.2
    """
    disc = _disc(outer_diameter, inner_diameter, thickness, cone_height, youngs_modulus, poisson)
    groups = _groups(arrangement)
    arguments.not_negative(deflection=deflection)
    arguments.at_most("deflection", deflection, "cone_height of all groups", len(groups) * cone_height)
    if len(set(groups)) == 1:
        return groups[0] * disc.slope * _shape(deflection / (len(groups) * thickness), disc.cone)
    return _force_of_unequal(disc, groups, deflection)


def stack_deflection(
    force: Number,
    outer_diameter: Number,
    inner_diameter: Number,
    thickness: Number,
    cone_height: Number,
    arrangement: str = "()",
    youngs_modulus: Number = 206e9,
    poisson: Number = 0.3,
) -> Number:
    """How far a force presses a pack of equal disc springs down.

    Parameters
    ----------
    force : Number
        Force on the pack [N], zero or more.
    outer_diameter : Number
        Outer diameter of a spring [m], above inner_diameter.
    inner_diameter : Number
        Inner diameter of a spring [m], above zero.
    thickness : Number
        Thickness of a spring [m], above zero.
    cone_height : Number
        Free height less thickness of a spring [m], above zero.
    arrangement : str
        One bracket for each spring in its order [-], as in stack_force.
    youngs_modulus : Number
        Young's modulus [Pa], above zero.
    poisson : Number
        Poisson's ratio [-], zero to 0.5.

    Returns
    -------
    Number
        Deflection of the whole pack [m], broadcast shape of the inputs; a force that lays springs flat
        gives the deflection at which they are flat, because they then go no further.

    Raises
    ------
    ValueError
        As stack_force.

    Notes
    -----
    The inverse of stack_force on the rising part of its curve. Where h0/t is above 1.41 a spring snaps
    flat once the force passes the peak of the curve.

    Source
    ------
    As stack_force.

    Examples
    --------
    >>> round(stack_deflection(419.2, 8e-3, 4.2e-3, 0.4e-3, 0.2e-3, "(())") * 1e3, 3)
    0.3
    """
    disc = _disc(outer_diameter, inner_diameter, thickness, cone_height, youngs_modulus, poisson)
    arguments.not_negative(force=force)
    return arguments.plain(_deflection(disc, _groups(arrangement), force))


def _disc(
    outer: Number, inner: Number, thickness: Number, cone_height: Number, modulus: Number, poisson: Number
) -> _Disc:
    arguments.positive(outer_diameter=outer, inner_diameter=inner, thickness=thickness)
    arguments.positive(cone_height=cone_height, youngs_modulus=modulus)
    arguments.between(0.0, 0.5, poisson=poisson)
    arguments.less("inner_diameter", inner, "outer_diameter", outer)
    k1 = _k1(arguments.plain(np.log1p((outer - inner) / inner)))
    slope = 4 * modulus / (1 - poisson**2) * thickness**4 / (k1 * outer**2)
    return _Disc(thickness, slope, cone_height / thickness)


def _k1(u: Number) -> Number:
    """((q - 1) / q)^2 / ((q + 1) / (q - 1) - 2 / ln q) / pi for u = ln q, q the ratio of the diameters.

    For rings as narrow as a hair the difference below loses all its digits; its series does not.
    """
    difference = np.where(u < 0.02, u / 6 * (1 - u**2 / 60 + u**4 / 2520), 1 / np.tanh(u / 2) - 2 / u)
    return arguments.plain(np.expm1(-u) ** 2 / difference / pi)


def _shape(x: Number, cone: Number) -> Number:
    """The cubic of Almen and Laszlo: x is the deflection in thicknesses."""
    return x * ((cone - x) * (cone - x / 2) + 1)


def _groups(arrangement: str) -> tuple[int, ...]:
    """Numbers of nested springs, group after group: "(())" is (2, 2)."""
    if not isinstance(arrangement, str) or not arrangement or set(arrangement) - set("()"):
        raise ValueError(
            f'arrangement must be brackets, one for each spring, such as "()" or "(())"; came {arrangement!r}'
        )
    parts = arrangement.replace("()", "(|)").replace(")(", ")|(").split("|")
    return tuple(len(part) for part in parts)


def _deflection(disc: _Disc, groups: tuple[int, ...], force: Number) -> Number:
    total: Number = 0.0
    for number in set(groups):
        target = force / (number * disc.slope)
        total = total + groups.count(number) * disc.thickness * _shape_inverse(target, disc.cone)
    return total


def _shape_inverse(target: Number, cone: Number) -> Number:
    """First x whose shape value is `target`, or `cone` (flat) where the rising curve never reaches it.

    The curve is concave up to flat, so Newton from zero climbs towards the answer and never passes it.
    """
    crest = cone - np.sqrt(np.maximum(cone**2 - 2, 0.0) / 3)
    flat = target >= _shape(crest, cone)
    target = np.where(flat, 0.0, target)
    x: NDArray[np.float64] = np.zeros(np.broadcast(target, cone).shape)
    for _ in range(STEPS):
        short = target - _shape(x, cone)
        slope = 1.5 * x**2 - 3 * cone * x + cone**2 + 1
        further = x + short / np.where(slope > 0, slope, 1.0)
        further = np.minimum(np.maximum(further, x), crest)
        if np.array_equal(further, x):
            break
        x = further
    answer: Number = np.where(flat, cone, x)
    return answer


def _force_of_unequal(disc: _Disc, groups: tuple[int, ...], deflection: Number) -> Number:
    """Halve the range of forces: groups of unequal number have no closed form."""
    low = np.zeros(np.broadcast(deflection, disc.thickness, disc.slope, disc.cone).shape)
    high = low + max(groups) * disc.slope * np.maximum(_shape(disc.cone, disc.cone), _crest_value(disc.cone))
    for _ in range(STEPS):
        middle = (low + high) / 2
        enough = _deflection(disc, groups, middle) >= deflection
        low, high = np.where(enough, low, middle), np.where(enough, middle, high)
        if np.all(high - low <= 4 * np.spacing(high)):
            break
    return arguments.plain(high)


def _crest_value(cone: Number) -> Number:
    return _shape(cone - np.sqrt(np.maximum(cone**2 - 2, 0.0) / 3), cone)
