"""A drag stack as heat sees it: layers, faces that slip, where the heat leaks to, the run that makes it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics import arguments
from spoolwright.mechanics.arguments import Number

Array = NDArray[np.float64]

SHARES_WITHIN = 1e-6
"""How far the shares of the slipping faces may add up to something else than one."""


@dataclass(frozen=True)
class Layer:
    """One disc: thickness [m], conductivity [W/(m K)], density [kg/m^3], specific heat [J/(kg K)], area
    [m^2].

    `loss` [W/K] goes from the whole layer to the surroundings. Each a float, or an array over the cases.
    """

    thickness: Number
    conductivity: Number
    density: Number
    specific_heat: Number
    area: Number
    loss: Number = 0.0

    @property
    def heat_capacity(self) -> Number:
        """Heat for each kelvin of the whole layer [J/K]."""
        return self.thickness * self.area * self.density * self.specific_heat


@dataclass(frozen=True)
class Face:
    """A face that slips, between the layer at position `below` and the next one.

    `share` of the whole friction torque at the reference temperature [-]; `fade`, the share of its friction
    lost for each kelvin above that [1/K]; `least`, the share of its friction that never goes [-].
    """

    below: int
    share: Number
    fade: Number = 0.0
    least: Number = 0.2


@dataclass(frozen=True)
class Body:
    """A lump that takes heat from the stack: gear, sleeve, housing. Heat capacity [J/K], loss [W/K]."""

    heat_capacity: Number
    loss: Number = 0.0


@dataclass(frozen=True)
class Link:
    """A way for heat beside the stack, [W/K]: between two positions, layers first, then bodies."""

    one: int
    other: int
    conductance: Number


@dataclass(frozen=True)
class Run:
    """A fish's run: moments [s], line speed [m/s] and pull [N] at them, shape (m,) or (cases, m), m >= 2.

    Between two moments the heat, pull times speed, is taken as straight.
    """

    time: Array
    speed: Array
    pull: Array

    @property
    def power(self) -> Array:
        """Heat born with no fade [W], shape (m,) or (cases, m)."""
        return np.asarray(self.speed * self.pull, dtype=np.float64)

    @property
    def energy(self) -> Number:
        """Heat of the whole run with no fade [J]."""
        middle = (self.power[..., 1:] + self.power[..., :-1]) / 2
        return arguments.plain(np.sum(middle * np.diff(self.time), axis=-1))


def constant_run(duration: float, speed: Number, pull: Number) -> Run:
    """A run at one speed against one pull.

    Parameters
    ----------
    duration : float
        How long the line runs [s], above zero.
    speed : Number
        Speed of the line [m/s], zero or more.
    pull : Number
        Pull of the line [N], zero or more.

    Returns
    -------
    Run
        Two moments, start and end [s], [m/s], [N].

    Raises
    ------
    ValueError
        A value outside its range.

    Notes
    -----
    100 m at 4 m/s is 25 s; against 50 N that is 200 W, 5 kJ.

    Source
    ------
    Work is force times way.

    Examples
    --------
    >>> constant_run(25.0, 4.0, 50.0).energy
    5000.0
    """
    arguments.positive(duration=duration)
    arguments.not_negative(speed=speed, pull=pull)
    both = np.ones(2)
    speeds, pulls = (np.asarray(value, dtype=np.float64)[..., np.newaxis] * both for value in (speed, pull))
    return Run(np.array([0.0, duration]), speeds, pulls)


def check(
    layers: Sequence[Layer], faces: Sequence[Face], bodies: Sequence[Body], links: Sequence[Link]
) -> None:
    """Refuse a stack that cannot be: every value by its name and position.

    Parameters
    ----------
    layers : sequence of Layer
        The discs in their order [SI].
    faces : sequence of Face
        The faces that slip [SI].
    bodies : sequence of Body
        What takes heat beside them [SI].
    links : sequence of Link
        Ways for heat beside the stack [W/K].

    Returns
    -------
    None

    Raises
    ------
    ValueError
        A value outside its range, a position that does not exist, shares that do not add up to one.

    Notes
    -----
    Positions count from 0: layers in their order, bodies after them.

    Source
    ------
    Our own rules.

    Examples
    --------
    >>> steel = Layer(1e-3, 17.0, 7900.0, 460.0, 4e-4)
    >>> check([steel, steel], [Face(0, 1.0)], [], [])
    """
    arguments.whole(2, layers=len(layers))
    for n, layer in enumerate(layers):
        held = {f"layers[{n}].{name}": value for name, value in vars(layer).items()}
        arguments.not_negative(**{f"layers[{n}].loss": held.pop(f"layers[{n}].loss")})
        arguments.positive(**held)
    for n, body in enumerate(bodies):
        arguments.positive(**{f"bodies[{n}].heat_capacity": body.heat_capacity})
        arguments.not_negative(**{f"bodies[{n}].loss": body.loss})
    for n, face in enumerate(faces):
        arguments.between(0, len(layers) - 2, **{f"faces[{n}].below": face.below})
        arguments.between(0.0, 1.0, **{f"faces[{n}].share": face.share, f"faces[{n}].least": face.least})
        arguments.not_negative(**{f"faces[{n}].fade": face.fade})
    last = len(layers) + len(bodies) - 1
    for n, link in enumerate(links):
        arguments.between(0, last, **{f"links[{n}].one": link.one, f"links[{n}].other": link.other})
        arguments.not_negative(**{f"links[{n}].conductance": link.conductance})
    if faces:
        total = sum(np.asarray(face.share) for face in faces)
        arguments.between(1 - SHARES_WITHIN, 1 + SHARES_WITHIN, **{"sum of the faces' shares": total})


def check_run(run: Run) -> None:
    """Refuse a run that cannot be: time that does not rise, a negative speed or pull.

    Parameters
    ----------
    run : Run
        The run [s], [m/s], [N].

    Returns
    -------
    None

    Raises
    ------
    ValueError
        Fewer than two moments, moments that do not rise from zero or later, a negative value.

    Notes
    -----
    A line that is wound in makes no heat in the drag: write its speed as zero.

    Source
    ------
    Our own rules.

    Examples
    --------
    >>> check_run(constant_run(25.0, 4.0, 50.0))
    """
    arguments.not_negative(**{"run.time": run.time, "run.speed": run.speed, "run.pull": run.pull})
    arguments.whole(2, **{"number of moments in run.time": np.size(run.time)})
    arguments.positive(**{"step of run.time": np.diff(run.time)})
    arguments.at_most("last axis of run.power", run.power.shape[-1], "size of run.time", len(run.time))
