"""A coast-down read whichever way it is heard: one tick a turn, several, or a hum."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from spoolwright.bench import hum, hum_spin, mending, spin_down, tick_sound
from spoolwright.bench.recording import Recording
from spoolwright.bench.speed_steps import NOT_LOOKED, Steps, look
from spoolwright.bench.spin_down import SpinDown
from spoolwright.bench.uncertainty import Measured

HEARD_AS = ("ticks", "hum")

Heard = Recording | NDArray[np.float64]


def read(
    heard: Heard, inertia: Measured | None = None, *, heard_as: str = "ticks", a_turn: float = 1.0
) -> SpinDown:
    """Read a coast-down.

    Parameters
    ----------
    heard : Recording or array
        The sound, full scale 1 [1]; or tick times [s], shape (n,).
    inertia : Measured or None
        Moment of inertia of all that turns [kg m^2]; None: drags per unit inertia.
    heard_as : str
        "ticks" or "hum" [-]; tick times are always ticks.
    a_turn : float
        Ticks or waves of the hum to one turn [-], above zero; ticks are whole.

    Returns
    -------
    SpinDown
        Values with standard uncertainties [rad/s, N m or rad/s^2 and so on, s].

    Raises
    ------
    Unreadable
        Nothing that turns is heard, or what is heard is no coast-down.
    ValueError
        Neither ticks nor a hum was asked for.

    Source
    ------
    `spin_down.fit` and `hum_spin.fit`.

    Examples
    --------
    >>> ticks = 20 - np.sqrt(400 - 4 * np.pi * np.arange(0, 150) / 5)
    >>> round(read(ticks).stop_time.value, 2)
    20.0
    """
    if heard_as not in HEARD_AS:
        raise ValueError(f"heard_as must be one of {', '.join(HEARD_AS)}; came {heard_as!r}")
    if isinstance(heard, Recording) and heard_as == "hum":
        return hum_spin.fit(hum.follow(heard, orders=a_turn), inertia, orders=a_turn)
    marks = max(1, round(a_turn))
    times = tick_sound.find(heard, marks=marks) if isinstance(heard, Recording) else heard
    return spin_down.fit(mending.mend(times, marks=marks), inertia, ticks_per_turn=marks)


def steps(spin: SpinDown) -> Steps:
    """Whether the speed of a coast-down falls in steps.

    Parameters
    ----------
    spin : SpinDown
        The fitted coast-down [s, rad].

    Returns
    -------
    Steps
        Losses and gains [s, rad/s]; not looked for in a hum.

    Source
    ------
    `speed_steps.look`.

    Examples
    --------
    >>> ticks = 20 - np.sqrt(400 - 4 * np.pi * np.arange(0, 150) / 5)
    >>> steps(read(ticks + np.random.default_rng(1).normal(0, 1e-4, 150))).losses
    ()
    """
    if spin.heard_as == "hum":
        return NOT_LOOKED
    return look(spin.used, spin.residuals)
