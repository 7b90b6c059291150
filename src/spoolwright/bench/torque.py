"""The torque beside a pull: what stays the same when the line leaves the spool at another radius."""

from __future__ import annotations

from math import hypot

from spoolwright.bench.uncertainty import Measured


def pull_torque(pull: Measured, radius: Measured) -> Measured:
    """Torque on the spool from a pull and the radius at which the line leaves it.

    Parameters
    ----------
    pull : Measured
        Pull with its standard uncertainty [N], dimension "force".
    radius : Measured
        Radius with its standard uncertainty [m], dimension "length", above zero.

    Returns
    -------
    Measured
        Torque with its standard uncertainty [N m].

    Raises
    ------
    ValueError
        Something else than a force and a length, a radius that is not above zero.

    Notes
    -----
    torque = pull x radius; the two are measured apart, so their parts add in squares.

    Source
    ------
    Moment of a force, any text on mechanics; JCGM 100:2008, 5.1.2.

    Examples
    --------
    >>> torque = pull_torque(Measured(25.0, 0.0, "force"), Measured(0.02, 0.0, "length"))
    >>> torque.value, torque.dimension
    (0.5, 'torque')
    """
    if (pull.dimension, radius.dimension) != ("force", "length"):
        raise ValueError(f"a force and a length are needed; came {pull.dimension} and {radius.dimension}")
    if not radius.value > 0:
        raise ValueError(f"radius must be above zero; came {radius.value}")
    spread = hypot(pull.uncertainty * radius.value, pull.value * radius.uncertainty)
    return Measured(pull.value * radius.value, spread, "torque")
