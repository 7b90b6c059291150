"""The bearing at a place of a reel's sheet: how many balls, how large, on which circle."""

from __future__ import annotations

from spoolwright.bench.bearing_rates import Bearing
from spoolwright.bench.unreadable import Unreadable
from spoolwright.sheets.bearing_sizes import bearing_size
from spoolwright.sheets.reel_sheet import ReelSheet

TYPED_INSTEAD = "the number of balls, their diameter and that of the circle of their middles, typed"


def at(sheet: ReelSheet, place: str | None, where: str = "") -> tuple[Bearing, tuple[str, ...]]:
    """The inside of the bearing at a place, and where its numbers come from.

    Parameters
    ----------
    sheet : ReelSheet
        The reel's sheet [-].
    place : str or None
        The place as the sheet names it [-].
    where : str
        What to point at in a refusal [-].

    Returns
    -------
    tuple
        The bearing, sizes in [m], and sentences on their source.

    Raises
    ------
    Unreadable
        A place that the sheet does not name, a size of which the balls are not known.

    Notes
    -----
    The sheet's own count of balls stands above the list's.

    Source
    ------
    Sizes as `sheets.bearing_sizes` has them, each with its source.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> at(reel_sheet.load("tarvak-58r"), "spool shaft, gear side")[0].balls
    7
    """
    on_sheet = {one.place: one for one in sheet.bearings}
    if place not in on_sheet:
        reason = (
            f"the sheet has no bearing at “{place}”"
            if place
            else "which of the sheet's bearings has not been said"
        )
        raise Unreadable(reason, where, ", ".join(f"“{known}”" for known in on_sheet) or TYPED_INSTEAD)
    found = on_sheet[place]
    try:
        size = bearing_size(found.size.bore, found.size.outer, found.size.width)
    except KeyError as fault:
        raise Unreadable(str(fault.args[0]), where, TYPED_INSTEAD) from None
    if not (size.balls and size.ball_diameter and size.pitch_diameter):
        raise Unreadable(f"how many balls a {size.name} has is not known here", where, TYPED_INSTEAD)
    remarks = [f"Balls of a {size.name}: {size.balls_source} ({size.balls_how})."]
    if found.balls and found.balls != size.balls:
        remarks.append(f"The sheet counts {found.balls} balls, the list {size.balls}; the sheet's is used.")
    return Bearing(found.balls or size.balls, size.ball_diameter, size.pitch_diameter), tuple(remarks)


def typed(balls: int, ball_diameter: float, pitch_diameter: float, where: str = "") -> Bearing:
    """A bearing by its typed sizes.

    Parameters
    ----------
    balls : int
        Number of balls [-], 3 to 40.
    ball_diameter : float
        Diameter of a ball [m], above zero.
    pitch_diameter : float
        Diameter of the circle of their middles [m], above that of a ball.
    where : str
        What to point at in a refusal [-].

    Returns
    -------
    Bearing
        Sizes in [m].

    Raises
    ------
    Unreadable
        A count or sizes that no bearing has.

    Source
    ------
    Geometry: balls that touch need a circle of their diameter over sin(pi / balls).

    Examples
    --------
    >>> typed(9, 7.94e-3, 39.04e-3).balls
    9
    """
    from math import pi, sin

    if not 3 <= balls <= 40:
        raise Unreadable(f"{balls} balls cannot be", where, "3 to 40")
    if not 0 < ball_diameter < pitch_diameter or ball_diameter > 1.02 * pitch_diameter * sin(pi / balls):
        small, large = ball_diameter * 1e3, pitch_diameter * 1e3
        reason = f"{balls} balls of {small:.3g} mm do not go on a circle of {large:.3g} mm"
        raise Unreadable(reason, where, "balls above zero that have room beside one another on their circle")
    return Bearing(balls, ball_diameter, pitch_diameter)
