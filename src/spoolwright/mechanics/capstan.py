"""Line that rubs round a guide, a ring or an arbor: how its pull grows, and what presses on the guide."""

from __future__ import annotations

import numpy as np

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number


def pull_ratio(friction: Number, wrap_angle: Number) -> Number:
    """By how much the pull grows on its way round something that does not turn.

    Parameters
    ----------
    friction : Number
        Coefficient of friction [-], zero or more; nylon on polished ceramic 0.05 to 0.15.
    wrap_angle : Number
        Angle that the line is bent round, all bends together [rad], zero or more.

    Returns
    -------
    Number
        Pull on the side that it is drawn to, over pull on the other side [-], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    T2 / T1 = exp(mu beta). Round guides; in a groove or a worn ring friction counts two to three times.

    Source
    ------
    Euler and Eytelwein's rope friction, any statics text (worked examples opened in tests/reference).

    Examples
    --------
    >>> round(pull_ratio(0.3, 6.283185307), 2)
    6.59
    """
    arguments.not_negative(friction=friction, wrap_angle=wrap_angle)
    return arguments.plain(np.exp(np.multiply(friction, wrap_angle)))


def friction_of(pull_ratio: Number, wrap_angle: Number) -> Number:
    """Coefficient of friction from two pulls, one on either side of a bend.

    Parameters
    ----------
    pull_ratio : Number
        Larger pull over smaller one [-], 1 or more.
    wrap_angle : Number
        Angle that the line is bent round [rad], above zero.

    Returns
    -------
    Number
        Coefficient of friction [-], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    mu = ln(T2 / T1) / beta: two spring scales and a rod ring are enough to measure a guide.

    Source
    ------
    Euler and Eytelwein's rope friction, any statics text.

    Examples
    --------
    >>> round(friction_of(50.0, 12.566370614), 4)
    0.3113
    """
    arguments.from_up(1.0, pull_ratio=pull_ratio)
    arguments.positive(wrap_angle=wrap_angle)
    return arguments.plain(np.log(pull_ratio) / wrap_angle)


def guide_load(pull: Number, bend: Number) -> Number:
    """Force with which a bent line presses on its guide.

    Parameters
    ----------
    pull : Number
        Pull in the line [N], zero or more.
    bend : Number
        Angle by which the line changes direction [rad], zero to pi.

    Returns
    -------
    Number
        Force on the guide [N], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    F = 2 T sin(bend / 2), pulls on both sides taken as equal.

    Source
    ------
    Statics.

    Examples
    --------
    >>> round(guide_load(10.0, 1.5707963268), 2)
    14.14
    """
    arguments.not_negative(pull=pull)
    arguments.between(0.0, np.pi, bend=bend)
    return arguments.plain(2 * pull * np.sin(np.divide(bend, 2)))
