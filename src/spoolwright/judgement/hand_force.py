"""How hard has a hand to press the knob to wind line in against a pull?"""

from __future__ import annotations

import numpy as np

from spoolwright import quantities
from spoolwright.judgement.monte_carlo import Triangular
from spoolwright.sheets.reel_sheet import ReelSheet

EFFICIENCY = Triangular(0.70, 0.90)
"""Share of the hand's work that reaches the line, through gears, bushes and guide: judgement prior."""


HARD = 60.0
"""What a hand can turn for long [N]: judgement prior."""

_LIFT = ": more than a hand does for long, so lift with the rod and wind on the way down."


def hand_force(sheet: ReelSheet, pull: float, radius: float) -> tuple[float, float, float] | None:
    """Force of the hand on the knob while winding against a pull: the low end, the middle, the high end.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**, perhaps with a longer handle.
    pull : float
        Pull at the line **[N]**.
    radius : float
        Radius at which the line comes on **[m]**.

    Returns
    -------
    tuple of float or None
        Force **[N]** that leaves 5 % out below, the middle, and the one that leaves 5 % out above; None where
        the sheet names no handle.

    Notes
    -----
    F = pull radius ratio / (efficiency arm): the high gear is reckoned. It says what a hand feels, not what a
    part bears: a longer arm lets the same hand put more on gears, drive shaft and anti-reverse.

    Source
    ------
    Statics; the efficiency is a judgement prior.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> low, middle, high = hand_force(reel_sheet.load("tarvak-58r"), 49.0, 0.022)
    >>> low < middle < high
    True
    """
    if sheet.handle is None:
        return None
    each = pull * radius * sheet.gear_ratio / sheet.handle.arm_length
    half = (EFFICIENCY.high - EFFICIENCY.low) / 2
    # The 5 % and 95 % points of a triangular distribution lie sqrt(0.1) of its half-width inside its ends.
    inset = half * float(np.sqrt(0.1))
    ends = EFFICIENCY.high - inset, (EFFICIENCY.low + EFFICIENCY.high) / 2, EFFICIENCY.low + inset
    low, middle, high = (each / share for share in ends)
    return low, middle, high


def in_words(sheet: ReelSheet, pull: float, radius: float, system: str = "metric") -> tuple[str, ...]:
    """What the hand has to do against the drag's greatest pull.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    pull : float
        Pull at the line **[N]**.
    radius : float
        Radius at which the line comes on **[m]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        One sentence **[-]**; none where the sheet names no handle.

    Source
    ------
    As hand_force.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> in_words(reel_sheet.load("brekkas-9-10"), 30.0, 0.03)[0][:31]
    'To wind in against the drag at '
    """
    found = hand_force(sheet, pull, radius)
    if found is None or sheet.handle is None:
        return ()
    arm = quantities.show(sheet.handle.arm_length, "length", system)
    span = quantities.show_interval(found[0], found[2], "force", system)
    return (
        f"To wind in against the drag at its greatest, a hand presses the knob with {span} on a handle of "
        f"{arm} (70 to 90 % of its work reaches the line: judgement prior)"
        + (_LIFT if found[1] > HARD else "."),
    )
