"""Heat of a slipping drag: into one washer, and through the whole stack of them."""

from __future__ import annotations

from collections.abc import Sequence
from math import pi

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number
from spoolwright.mechanics.drag_layers import Body, Face, Layer, Link, Run, check, check_run, constant_run
from spoolwright.mechanics.heat_march import March, Modes, grid, march, modes_of
from spoolwright.mechanics.temperatures import StackTemperatures

__all__ = [
    "ROOM",
    "Body",
    "Face",
    "Layer",
    "Link",
    "Run",
    "StackTemperatures",
    "constant_run",
    "semi_infinite_rise",
    "slip_energy",
    "stack_temperatures",
    "thick_until",
]

Array = NDArray[np.float64]

ROOM = 293.15
"""A room of 20 degrees Celsius [K]."""


def semi_infinite_rise(
    heat_flux: Number,
    time: Number,
    conductivity: Number,
    density: Number,
    specific_heat: Number,
    depth: Number = 0.0,
) -> Number:
    """Rise of temperature of a thick body while a steady heat flows into its surface.

    Parameters
    ----------
    heat_flux : Number
        Heat into the surface for each area [W/m^2], negative where it is drawn out.
    time : Number
        Time since the heat began [s], zero or more.
    conductivity : Number
        Heat conductivity of the body [W/(m K)], above zero.
    density : Number
        Density of the body [kg/m^3], above zero.
    specific_heat : Number
        Specific heat of the body [J/(kg K)], above zero.
    depth : Number
        How far below the surface [m], zero or more.

    Returns
    -------
    Number
        Rise of temperature [K], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    At the surface 2 q sqrt(t / (pi k rho c)); at a depth x that times exp(-z^2) less (q x / k) erfc(z), with
    z = x / (2 sqrt(alpha t)). Holds until the far side feels it (thick_until): 0.05 s for 6 mm of steel. A
    thin washer is hotter after that.

    Source
    ------
    Carslaw & Jaeger, Conduction of Heat in Solids, 2.9 (from memory); worked example of Holman opened.

    Examples
    --------
    >>> round(semi_infinite_rise(3e5, 2.0, 54.0, 7833.0, 465.0), 1)
    34.1
    """
    arguments.finite(heat_flux=heat_flux)
    arguments.not_negative(time=time, depth=depth)
    arguments.positive(conductivity=conductivity, density=density, specific_heat=specific_heat)
    surface = 2 * heat_flux * np.sqrt(time / (pi * (conductivity * density * specific_heat)))
    if np.all(np.asarray(depth) == 0):
        return arguments.plain(surface + 0.0 * depth)
    from scipy.special import erfc  # half a tenth of a second, and only depths need it

    spread = 2 * np.sqrt(conductivity / (density * specific_heat) * np.maximum(time, np.finfo(float).tiny))
    z = depth / spread
    return arguments.plain(surface * np.exp(-(z**2)) - heat_flux * depth / conductivity * erfc(z))


def thick_until(
    half_thickness: Number, conductivity: Number, density: Number, specific_heat: Number
) -> Number:
    """How long a washer that slips on both sides may be taken as thick.

    Parameters
    ----------
    half_thickness : Number
        Half of its thickness [m], above zero.
    conductivity : Number
        Heat conductivity [W/(m K)], above zero.
    density : Number
        Density [kg/m^3], above zero.
    specific_heat : Number
        Specific heat [J/(kg K)], above zero.

    Returns
    -------
    Number
        Time [s], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value that is not above zero and finite.

    Notes
    -----
    t = L^2 / (3.64^2 alpha), alpha = k / (rho c): until then the middle has changed by less than a hundredth
    of what the surface has.

    Source
    ------
    Lienhard, A Heat Transfer Textbook, ex. 5.4 (companion notebook opened).

    Examples
    --------
    >>> round(thick_until(0.35e-3, 15.0, 7950.0, 500.0), 4)
    0.0025
    """
    arguments.positive(half_thickness=half_thickness, conductivity=conductivity)
    arguments.positive(density=density, specific_heat=specific_heat)
    return half_thickness**2 * density * specific_heat / (3.64**2 * conductivity)


def slip_energy(inertia: Number, other_inertia: Number, speed: Number) -> Number:
    """Heat of a slip that ends when both sides turn alike: a spool that is caught by its drag.

    Parameters
    ----------
    inertia : Number
        Moment of inertia of one side [kg m^2], above zero.
    other_inertia : Number
        Moment of inertia of the other side [kg m^2], above zero; infinity for a side that is held.
    speed : Number
        By how much one turns faster than the other at first [rad/s].

    Returns
    -------
    Number
        Heat [J], broadcast shape of the inputs.

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    E = w^2 / (2 (1 / J1 + 1 / J2)), whatever the friction and however long it takes.

    Source
    ------
    Khurmi & Gupta, Theory of Machines, ex. 10.27 (companion notebook opened).

    Examples
    --------
    >>> slip_energy(0.4, float("inf"), 10.0)
    20.0
    """
    arguments.positive_or_infinite(inertia=inertia, other_inertia=other_inertia)
    arguments.finite(speed=speed)
    return arguments.plain(speed**2 / (2 * (1 / np.asarray(inertia) + 1 / np.asarray(other_inertia))))


def stack_temperatures(
    layers: Sequence[Layer],
    faces: Sequence[Face],
    run: Run,
    *,
    bodies: Sequence[Body] = (),
    links: Sequence[Link] = (),
    surroundings: Number = ROOM,
    start: Number | None = None,
    reference: Number = ROOM,
    wait: float = 0.0,
    cells: int | Sequence[int] = 4,
    steps: int = 100,
) -> StackTemperatures:
    """How hot a drag gets in a fish's run, disc by disc, and how long it then stays hot.

    Parameters
    ----------
    layers : sequence of Layer
        The discs in the order in which they lie [m], [W/(m K)], [kg/m^3], [J/(kg K)], [m^2], [W/K].
    faces : sequence of Face
        The faces that slip, their shares of the torque adding up to 1 [-], and their fade [1/K].
    run : Run
        Time [s], line speed [m/s] and pull before any fade [N]; constant_run makes a steady one.
    bodies : sequence of Body
        What takes heat beside the discs: gear, sleeve, housing [J/K], [W/K].
    links : sequence of Link
        Between which positions (layers first, then bodies) heat also goes [W/K].
    surroundings : Number
        Temperature to which all losses go [K], above zero.
    start : Number or None
        Temperature of everything at the start [K], above zero; None: that of the surroundings.
    reference : Number
        Temperature up to which friction has not faded [K], above zero.
    wait : float
        How long it is watched after the run [s], zero or more.
    cells : int or sequence of int
        Cells of every layer, or of each layer [-], 1 or more; one is enough for thin metal between worse
        conductors.
    steps : int
        Steps of the run at least [-], 1 or more.

    Returns
    -------
    StackTemperatures
        Temperatures [K] against time [s], heat [J], share of the pull left [-]; first axis the cases where an
        input is an array of shape (cases,).

    Raises
    ------
    ValueError
        A value outside its range, a position that does not exist, shares that do not add up to one.

    Notes
    -----
    rho c dT/dt = k d2T/dx2 through every layer; at a contact both sides have one temperature, and heat
    share * pull * speed * friction(T) / friction(reference) is born where it slips: how it divides between
    the two sides follows, it is not an input. Friction falls by `fade` a kelvin, down to `least`.
    Finite volumes, second order in space; two-stage implicit steps, second order in time, stable at any
    length; heat in = stored + lost to rounding.
    Leaves out: temperature across the radius (a disc's rim and bore are as hot as its middle), contact
    resistance, flashes at single asperities, grease that melts or burns, properties that change with
    temperature.

    Source
    ------
    Carslaw & Jaeger, Conduction of Heat in Solids (equation and contact, from memory); Patankar, Numerical
    Heat Transfer and Fluid Flow, 4.2; Alexander 1977 (both from memory); derivation in the house.

    Examples
    --------
    >>> steel = Layer(1e-3, 17.0, 7900.0, 460.0, 4e-4)
    >>> fibre = Layer(1e-3, 0.3, 1300.0, 1500.0, 4e-4)
    >>> hot = stack_temperatures([steel, fibre, steel], [Face(0, 1.0)], constant_run(25.0, 4.0, 5.0))
    >>> bool(hot.after_run > 293.15 + 500 / (2 * steel.heat_capacity + fibre.heat_capacity))
    True
    """
    check(layers, faces, bodies, links)
    check_run(run)
    arguments.whole(1, faces=len(faces), cells=np.asarray(cells, dtype=np.float64), steps=steps)
    if not isinstance(cells, int):
        arguments.whole(len(layers), **{"number of cells": len(cells)})
    arguments.positive(surroundings=surroundings, reference=reference)
    arguments.not_negative(wait=wait)
    begin = surroundings if start is None else start
    arguments.positive(start=begin)
    modes = modes_of(layers, faces, bodies, links, cells)
    own = () if len(modes.rates) == 1 else modes.rates.shape[:1]
    shape = np.broadcast_shapes(*map(np.shape, (surroundings, begin, reference)), run.power.shape[:-1], own)
    modes = modes.over(int(np.prod(shape)))
    cases = len(modes.rates)
    room, first, known = (
        np.broadcast_to(np.asarray(t, float), cases) for t in (surroundings, begin, reference)
    )
    moments, end = grid(run.time, wait, steps)
    done = march(modes, faces, run, moments, first - room, known - room)
    return _answered(modes, done, moments, end, room, len(layers), scalar=not shape)


def _answered(
    modes: Modes, done: March, moments: Array, end: int, room: Array, count: int, scalar: bool
) -> StackTemperatures:
    base = room[:, np.newaxis, np.newaxis]
    places = np.einsum("tcn,cnp->cpt", done.modes, modes.places) + base
    first, last = done.modes[0], done.modes[-1]
    stored = np.sum(modes.capacity * (last - first), axis=-1)
    faces, left = np.moveaxis(done.faces, 0, -1) + base, done.left.T
    layers, bodies = places[:, :count], places[:, count:]
    heat_in, heat_lost = done.heat_in[-1], done.heat_lost[-1]
    if not scalar:
        return StackTemperatures(moments, faces, layers, bodies, left, end, heat_in, heat_lost, stored)
    sums = (float(heat_in[0]), float(heat_lost[0]), float(stored[0]))
    return StackTemperatures(moments, faces[0], layers[0], bodies[0], left[0], end, *sums)
