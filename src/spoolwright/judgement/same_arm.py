"""How fast would the same arm throw if the spool, the line or the payload were another?"""

from __future__ import annotations

import numpy as np

from spoolwright.judgement.cast_inputs import CastInputs
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.mechanics import spool

ROD_SHARE = 0.4
"""Mass of the rod's tip that is brought up to speed with the payload, as a share of it: judgement prior, from
60 g beside a 150 g lead."""


def speed_with(now: CastInputs, then: CastInputs) -> Sample:
    """Release speed of the same arm with other inputs: it brings up the same energy.

    Parameters
    ----------
    now : CastInputs
        The cast whose release speed is known **[SI]**.
    then : CastInputs
        The cast with another spool, line or payload **[SI]**.

    Returns
    -------
    array
        Speed **[m/s]**, shape of the inputs.

    Notes
    -----
    E = (m + m_rod + I / r^2) v^2 / 2 with m_rod = 0.4 m: the spool's turning mass is thrown as well. A spool
    jerked up to speed by the flying payload alone would lose more: speed falls as m / (m + I / r^2) there, by
    momentum, not by energy.

    Source
    ------
    docs/derivations/cast_case.md; ROD_SHARE is a judgement prior.

    Examples
    --------
    >>> from spoolwright.judgement.cast_case import cast_case
    >>> from spoolwright.judgement.throw import Throw
    >>> from spoolwright.sheets import reel_sheet
    >>> case = cast_case(reel_sheet.load("tarvak-58r"), throw=Throw(0.150, 55.0), samples=100)
    >>> now = case.inputs.middle
    >>> bool(55.0 < speed_with(now, now.with_plain(spool_inertia=now.plain["spool_inertia"] / 2))[0] < 60.0)
    True
    """
    return np.asarray(now.plain["release_speed"] * np.sqrt(_thrown_mass(now) / _thrown_mass(then)))


def _thrown_mass(inputs: CastInputs) -> Sample:
    """Payload, rod tip, spool and line as one mass at the speed of the line [kg]."""
    plain = {name: np.asarray(value) for name, value in inputs.plain.items()}
    radius = plain["full_radius"]
    line = spool.line_inertia(
        plain["arbor_radius"], radius, plain["spool_width"], plain["line_density"], plain["packing"]
    )
    turning = (plain["spool_inertia"] + line) / radius**2
    return np.asarray(plain["payload_mass"] * (1 + ROD_SHARE) + turning)
