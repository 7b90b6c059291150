"""How long does the free spool spin? Bearings, end discs, level wind and air against its inertia."""

from __future__ import annotations

from collections.abc import Mapping
from math import pi

import numpy as np

from spoolwright.judgement.monte_carlo import Distribution, Rectangular, Sample, Triangular
from spoolwright.judgement.reel_state import ReelState
from spoolwright.mechanics import rolling, spool
from spoolwright.mechanics.lubricant import viscosity_at
from spoolwright.sheets import lubricants, materials
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Bearing

GRAVITY = 9.80665
FLICK_MASS, FLICK_FALL = 0.100, 0.5
FLICK_WORDS = "started by 100 g falling half a metre on a thread round the arbor"
AIR_DENSITY = 1.2
NYLON_DENSITY = 1140.0
NODES = 40
F1 = 0.0009 * 0.03
"""Load factor of a small deep-groove bearing under little but the spool's weight: 0.0009 (P0/C0)^0.5."""

SPIN_DRAWS: Mapping[str, Distribution] = {
    "temperature": Rectangular(288.15, 298.15),
    "oil_factor": Triangular(0.5, 1.5),
    "grease_factor": Triangular(1.0, 4.0),
    "air_factor": Triangular(0.005, 0.040),
    "inertia_factor": Triangular(0.95, 1.05),
    "flick_factor": Triangular(0.92, 1.00),
    "packing": Triangular(0.62, 0.80),
}
"""What is not known of a spin besides the reel's state: judgement priors, f0 of the bearings among them."""


def bare_inertia(sheet: ReelSheet) -> float:
    """Moment of inertia of the bare spool: as the sheet states it, else from its sizes and mass.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.

    Returns
    -------
    float
        Inertia **[kg m^2]**.

    Notes
    -----
    Drawn as a tube between two discs; scaled to the mass on the sheet where it is given.

    Source
    ------
    mechanics.spool.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> 2e-6 < bare_inertia(reel_sheet.load("tarvak-52")) < 2e-5
    True
    """
    room = sheet.spool
    if room.inertia is not None:
        return room.inertia
    density = materials.structural_material(room.material or "aluminium alloy").density.middle
    wall = room.wall or 1.5e-3
    sizes = (room.arbor_radius, room.flange_diameter / 2, room.width, wall, density)
    inertia = float(spool.spool_inertia(*sizes))
    if room.mass is None:
        return inertia
    return inertia * room.mass / float(spool.spool_mass(*sizes))


def spin_time(
    sheet: ReelSheet,
    state: ReelState,
    draws: Mapping[str, Sample],
    *,
    line_on: bool = False,
    initial_speed: float | None = None,
) -> Sample:
    """Time from the flick to standstill, for every draw.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        Lubricant of its spool bearings **[-]**.
    draws : mapping of str to array
        SPIN_DRAWS and `bearing_condition` **[-]**, `end_drag` and `train_drag` **[N m]**, shape `(n,)`.
    line_on : bool
        Whether a full spool of nylon turns with it **[-]**.
    initial_speed : float or None
        Speed at the start **[rad/s]**; None: the house's flick.

    Returns
    -------
    array
        Time **[s]**, shape `(n,)`.

    Notes
    -----
    J times the integral of dw / M(w) from 0 to the start, M = bearings (Palmgren) + end discs + level wind
    + air; 40 midpoints. Air: a disc of the flange's size, 0.5 rho c w^2 r^5. Brakes off.

    Source
    ------
    Palmgren (mechanics.rolling); air and ends judgement priors.

    Examples
    --------
    >>> from spoolwright.judgement.monte_carlo import draw
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-54c")
    >>> ranges = {name: held.distribution for name, held in as_built(sheet).ranges.items()}
    >>> draws = draw({**SPIN_DRAWS, **ranges}, samples=200, seed=1)
    >>> bool(np.all(spin_time(sheet, as_built(sheet), draws) > 1.0))
    True
    """
    inertia = bare_inertia(sheet) * draws["inertia_factor"]
    if line_on:
        inertia = inertia + _line_inertia(sheet, draws["packing"])
    start = _flick(sheet, inertia, draws) if initial_speed is None else np.full_like(inertia, initial_speed)
    steps = (np.arange(NODES) + 0.5) / NODES
    speed = start[:, np.newaxis] * steps
    column = {name: draw[:, np.newaxis] for name, draw in draws.items()}
    torque = spool_torque(sheet, state, column, speed)
    return np.asarray(inertia * start * np.mean(1.0 / torque, axis=1))


def _line_inertia(sheet: ReelSheet, packing: Sample) -> Sample:
    room = sheet.spool
    return np.asarray(
        spool.line_inertia(room.arbor_radius, room.full_radius, room.width, NYLON_DENSITY, packing)
    )


def _flick(sheet: ReelSheet, inertia: Sample, draws: Mapping[str, Sample]) -> Sample:
    """Speed that the falling mass has given the spool when the thread runs out [rad/s]."""
    energy = FLICK_MASS * GRAVITY * FLICK_FALL * draws["flick_factor"]
    with_mass = inertia + FLICK_MASS * sheet.spool.arbor_radius**2
    return np.asarray(np.sqrt(2 * energy / with_mass))


def spool_torque(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], speed: Sample | float
) -> Sample:
    """Torque that slows a free spool at a speed: bearings, end discs, level wind and air.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        Lubricant of its spool bearings **[-]**.
    draws : mapping of str to array
        As spin_time; they broadcast with the speeds **[SI]**.
    speed : array or float
        Speed of the spool **[rad/s]**.

    Returns
    -------
    array
        Torque **[N m]**, broadcast shape of draws and speeds.

    Source
    ------
    As spin_time.
    """
    air = 0.5 * AIR_DENSITY * draws["air_factor"] * speed**2 * (sheet.spool.flange_diameter / 2) ** 5
    bearings = bearing_torque(sheet, state, draws, np.asarray(speed))
    return np.asarray(bearings + draws["end_drag"] + draws["train_drag"] + air)


def spool_bearings(sheet: ReelSheet) -> tuple[Bearing, ...]:
    """The bearings on which the spool turns when it is free.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.

    Returns
    -------
    tuple of Bearing
        Those whose place on the sheet names the spool.

    Source
    ------
    The reel sheet.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> len(spool_bearings(reel_sheet.load("tarvak-58r")))
    2
    """
    return tuple(bearing for bearing in sheet.bearings if "spool" in bearing.place.lower())


def bearing_torque(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], speed: Sample) -> Sample:
    """Torque of the spool's bearings, their condition counted in.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        Lubricant of its spool bearings **[-]**.
    draws : mapping of str to array
        `temperature` **[K]**, `oil_factor`, `grease_factor`, `bearing_condition` **[-]**; they broadcast
        with the speeds.
    speed : array
        Speeds of the spool **[rad/s]**.

    Returns
    -------
    array
        Torque **[N m]**, broadcast shape of draws and speeds.

    Source
    ------
    Palmgren (mechanics.rolling).

    Examples
    --------
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-58r")
    >>> draws = {"temperature": 293.0, "oil_factor": 1.0, "grease_factor": 2.0, "bearing_condition": 1.0}
    >>> at = {name: np.array(value) for name, value in draws.items()}
    >>> slow, fast = bearing_torque(sheet, as_built(sheet), at, np.array([300.0, 2400.0]))
    >>> bool(slow < fast < 8 * slow)
    True
    """
    product = lubricants.lubricant(state.bearing_lubricant)
    greased = isinstance(product, lubricants.Grease)
    f0 = draws["grease_factor"] if greased else draws["oil_factor"]
    viscosity = viscosity_at(draws["temperature"], product.viscosity_40.middle, product.viscosity_100.middle)
    load = (sheet.spool.mass or 0.03) * GRAVITY / 2
    total = np.zeros_like(speed)
    for bearing in spool_bearings(sheet):
        pitch = (bearing.size.bore + bearing.size.outer) / 2
        total = total + rolling.friction_torque(speed * 30 / pi, viscosity, pitch, load, f0, F1)
    return np.asarray(total * draws["bearing_condition"])
