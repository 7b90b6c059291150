"""Conduction through a stack, in steps that no length can make unstable.

Each layer is cut into cells, thin at its faces, with nodes between them. A slipping face is a node that both
its layers share: what is born there flows off to both sides as one temperature demands. The symmetric
problem is turned once into its own modes, so that an implicit step is a division. Derivation in the house:
docs/derivations/heat.md.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from spoolwright.mechanics.drag_layers import Body, Face, Layer, Link, Run

Array = NDArray[np.float64]

GAMMA = 1 - 1 / np.sqrt(2)
"""Of the two-stage implicit method: second order, and damps whatever is too quick for the step (L-stable)."""

FIRST_STEP, GROWTH = 1e-4, 12.0
"""First step over the run's length; each next one is longer by the share GROWTH / steps, at most by half."""

PASSES = 2
"""How often the heat of a step is put right for the friction at the step's own temperatures."""


@dataclass(frozen=True)
class Modes:
    """The stack in its own modes, arrays over the cases: rates [1/s] (c, n), and what leads in and out.

    `faces` (c, n, f): heat on a face into the modes, and by the same numbers the modes into its temperature;
    `places` (c, n, p): modes into mean temperatures of layers and bodies; `leak` (c, n): modes into heat
    lost [W]; `uniform` (c, n): one kelvin everywhere; `capacity` (c, n): modes into stored heat [J].
    """

    rates: Array
    faces: Array
    places: Array
    leak: Array
    uniform: Array
    capacity: Array

    def over(self, cases: int) -> Modes:
        """The same stack for so many cases, which differ in their run or their surroundings only."""
        if len(self.rates) == cases:
            return self
        parts = (np.broadcast_to(part, (cases, *part.shape[1:])) for part in vars(self).values())
        return Modes(*parts)


@dataclass(frozen=True)
class March:
    """What came of it: modes (t, c, n), face temperatures above the surroundings (t, c, f), share of the
    friction left (t, c), heat put in and lost until then [J] (t, c)."""

    modes: Array
    faces: Array
    left: Array
    heat_in: Array
    heat_lost: Array


def modes_of(
    layers: Sequence[Layer],
    faces: Sequence[Face],
    bodies: Sequence[Body],
    links: Sequence[Link],
    cells: int | Sequence[int],
) -> Modes:
    """Cut the stack into cells and find its modes.

    Parameters
    ----------
    layers, faces, bodies, links : sequence
        The stack [SI], each value a float or an array over the cases.
    cells : int or sequence of int
        Cells of every layer, or of each [-], 1 or more.

    Returns
    -------
    Modes
        Arrays over the cases, a case axis of 1 where everything is a float [SI].

    Notes
    -----
    C dT/dt = -K T + heat, K symmetric: with T = C^(-1/2) Q y, Q the eigenvectors of C^(-1/2) K C^(-1/2), each
    mode stands alone. Heat between two nodes is k A / step, a node keeps the halves of its two cells.

    Source
    ------
    Patankar, Numerical Heat Transfer and Fluid Flow, 4.2 (control volumes round nodes; from memory).

    Examples
    --------
    >>> steel = Layer(1e-3, 17.0, 7900.0, 460.0, 4e-4)
    >>> bool(abs(modes_of([steel, steel], [Face(0, 1.0)], [], [], 3).rates[0, 0]) < 1e-9)
    True
    """
    counts = [cells] * len(layers) if isinstance(cells, int) else list(cells)
    starts = np.concatenate([[0], np.cumsum(counts)])
    nodes = int(starts[-1]) + 1
    count = nodes + len(bodies)
    cases = _cases(layers, faces, bodies, links)
    stiff = np.zeros((cases, count, count))
    capacity, leak = np.zeros((cases, count)), np.zeros((cases, count))
    places = np.zeros((count, len(layers) + len(bodies)))
    for n, layer in enumerate(layers):
        own = slice(starts[n], starts[n + 1] + 1)
        steps, weights = _cut(counts[n])
        places[own, n] = weights
        capacity[:, own] += np.multiply.outer(np.broadcast_to(layer.heat_capacity, cases), weights)
        leak[:, own] += np.multiply.outer(np.broadcast_to(layer.loss, cases), weights)
        whole = np.broadcast_to(layer.conductivity * layer.area / layer.thickness, cases)
        for i, step in enumerate(steps, starts[n]):
            _tie(stiff, _unit(i, count) - _unit(i + 1, count), whole / step)
    for n, body in enumerate(bodies):
        capacity[:, nodes + n], leak[:, nodes + n] = body.heat_capacity, body.loss
        places[nodes + n, len(layers) + n] = 1.0
    for link in links:
        conductance = np.broadcast_to(link.conductance, cases)
        _tie(stiff, places[:, link.one] - places[:, link.other], np.asarray(conductance))
    stiff += leak[:, :, np.newaxis] * np.eye(count)
    born = np.array([_unit(starts[face.below + 1], count) for face in faces]).T
    return _turned(stiff, capacity, leak, born, places)


def _cases(*parts: Sequence[object]) -> int:
    shapes = [np.shape(value) for part in parts for one in part for value in vars(one).values()]
    shape = np.broadcast_shapes(*shapes)
    return int(np.prod(shape)) if shape else 1


def _cut(cells: int) -> tuple[Array, Array]:
    """Steps between the nodes of a layer, thin at its faces, and each node's share of it."""
    steps = np.diff((1 - np.cos(np.pi * np.arange(cells + 1) / cells)) / 2)
    return steps, (np.append(steps, 0.0) + np.append(0.0, steps)) / 2


def _unit(place: int, count: int) -> Array:
    found = np.zeros(count)
    found[place] = 1.0
    return found


def _tie(stiff: Array, between: Array, conductance: Array) -> None:
    """Add a way for heat between two places, each a node or a mean over nodes."""
    stiff += conductance[:, np.newaxis, np.newaxis] * np.outer(between, between)


def _turned(stiff: Array, capacity: Array, leak: Array, born: Array, places: Array) -> Modes:
    root = np.sqrt(capacity)
    rates, turn = np.linalg.eigh(stiff / (root[:, :, np.newaxis] * root[:, np.newaxis, :]))
    out = turn / root[:, :, np.newaxis]  # modes into temperatures of the nodes, (c, node, n)
    return Modes(
        rates=np.maximum(rates, 0.0),
        faces=np.einsum("cin,if->cnf", out, born),
        places=np.einsum("cin,ip->cnp", out, places),
        leak=np.einsum("cin,ci->cn", out, leak),
        uniform=np.einsum("cin,ci->cn", turn, root),
        capacity=np.einsum("cin,ci->cn", out, capacity),
    )


def grid(times: Array, wait: float, steps: int) -> tuple[Array, int]:
    """Moments of the steps, and the position of the run's end among them.

    Parameters
    ----------
    times : array
        Moments of the run [s], shape (m,).
    wait : float
        How long the stack is watched after it [s], zero or more.
    steps : int
        Steps of the run at least [-], 1 or more.

    Returns
    -------
    tuple
        Moments [s], shape (t,), and the position of the run's end [-].

    Notes
    -----
    Every moment of the run is hit. The first steps of the run and of the wait are short and grow.

    Source
    ------
    Our own choice; the order of the method is tested.

    Examples
    --------
    >>> moments, end = grid(np.array([0.0, 25.0]), 60.0, 20)
    >>> float(moments[end]), float(moments[-1])
    (25.0, 85.0)
    """
    start, stop = float(times[0]), float(times[-1])
    longest = (stop - start) / steps
    growth = 1 + min(GROWTH / steps, 0.5)
    ramp = start + _growing(FIRST_STEP * (stop - start), growth, longest)
    even = np.linspace(start, stop, steps + 1)
    found = np.unique(np.concatenate([times, ramp, even[even > ramp[-1] + longest / 2]]))
    close = np.diff(found) < 1e-9 * (stop - start)
    kept = found[np.concatenate([[True], ~close])]
    kept[-1] = stop
    if not wait > 0:
        return kept, len(kept) - 1
    after = stop + _growing(10 * FIRST_STEP * (stop - start), growth, wait)
    after = np.append(after[after < stop + wait * (1 - 1e-9)], stop + wait)
    return np.concatenate([kept, after]), len(kept) - 1


def _growing(first: float, growth: float, until: float) -> Array:
    """Sums of steps that grow from `first` until one is as long as `until`, or their sum is."""
    count = int(np.ceil(np.log(max(until / first, 1.0)) / np.log(growth))) + 1
    return np.asarray(np.cumsum(first * growth ** np.arange(count)))


def march(modes: Modes, faces: Sequence[Face], run: Run, moments: Array, start: Array, above: Array) -> March:
    """Step through the run and the wait.

    Parameters
    ----------
    modes : Modes
        The stack in its modes [SI].
    faces : sequence of Face
        Shares and fade of the slipping faces [SI].
    run : Run
        The run [s], [m/s], [N]; after its end nothing slips.
    moments : array
        Moments of the steps [s], shape (t,).
    start : array
        Temperature at the start, above the surroundings [K], shape (c,).
    above : array
        Reference temperature of the friction, above the surroundings [K], shape (c,).

    Returns
    -------
    March
        At every moment [K], [J].

    Notes
    -----
    Two implicit stages a step (SDIRK of order two, L-stable). Heat in and heat lost are summed with the
    method's own weights, so that they balance what is stored to rounding.

    Source
    ------
    Alexander 1977, diagonally implicit Runge-Kutta methods (from memory).

    Examples
    --------
    >>> from spoolwright.mechanics.drag_layers import constant_run
    >>> steel = Layer(1e-3, 17.0, 7900.0, 460.0, 4e-4)
    >>> modes = modes_of([steel, steel], [Face(0, 1.0)], [], [], 3)
    >>> run, zero = constant_run(2.0, 1.0, 10.0), np.zeros(1)
    >>> done = march(modes, [Face(0, 1.0)], run, np.linspace(0, 2, 21), zero, zero)
    >>> round(float(done.heat_in[-1, 0]), 9)
    20.0
    """
    walker = _Walker(modes, faces, run, above)
    y = modes.uniform * start[:, np.newaxis]
    cases = y.shape[0]
    first = walker.at_rest(y)
    rows = [(y, *first, np.zeros(cases), np.zeros(cases))]
    for before, now in pairwise(moments):
        y, temperature, left, gained, lost = walker.step(y, rows[-1][1], float(before), float(now - before))
        rows.append((y, temperature, left, rows[-1][3] + gained, rows[-1][4] + lost))
    parts = zip(*rows, strict=True)
    return March(*(np.asarray(part) for part in parts))


class _Walker:
    """Holds what does not change from step to step."""

    def __init__(self, modes: Modes, faces: Sequence[Face], run: Run, above: Array) -> None:
        cases = modes.rates.shape[0]

        def columns(values: Sequence[object]) -> Array:
            return np.stack([np.broadcast_to(np.asarray(v, float), cases) for v in values], axis=-1)

        self.modes = modes
        self.out = np.ascontiguousarray(np.swapaxes(modes.faces, 1, 2))
        self.share = columns([face.share for face in faces])
        self.fade = columns([face.fade for face in faces])
        self.least = columns([face.least for face in faces])
        self.fades = bool(np.any(self.fade > 0))
        self.above = above[:, np.newaxis]
        self.times, self.power = run.time, run.power

    def heat(self, time: float) -> Array:
        """Heat of the whole stack with no fade [W], shape (1,) or (c,); nothing once the run is over."""
        last = float(self.times[-1])
        if time > last * (1 + 1e-12) or time < self.times[0]:
            return np.zeros(1)
        at = min(int(np.searchsorted(self.times, time, side="right")), len(self.times) - 1)
        part = (time - self.times[at - 1]) / (self.times[at] - self.times[at - 1])
        before, beyond = self.power[..., at - 1], self.power[..., at]
        return np.atleast_1d(before + min(part, 1.0) * (beyond - before))

    def ratio(self, temperature: Array) -> Array:
        """Friction left on each face, 1 at or below the reference temperature."""
        if not self.fades:
            return np.ones_like(temperature)
        return np.clip(1 - self.fade * (temperature - self.above), self.least, 1.0)

    def at_rest(self, y: Array) -> tuple[Array, Array]:
        """Face temperatures and the share of friction left before the first step."""
        temperature = np.einsum("cfn,cn->cf", self.out, y)
        return temperature, np.sum(self.share * self.ratio(temperature), axis=-1)

    def stage(self, known: Array, guess: Array, time: float, length: float) -> tuple[Array, Array, Array]:
        """One implicit stage: modes, face temperatures and heat on each face [W]."""
        modes = self.modes
        damped = 1 / (1 + length * modes.rates)
        full = self.share * self.heat(time)[:, np.newaxis]
        quiet = not np.any(full)
        for _ in range(PASSES if self.fades and not quiet else 1):
            power = full * self.ratio(guess)
            pushed = known if quiet else known + length * np.einsum("cnf,cf->cn", modes.faces, power)
            y = pushed * damped
            guess = np.einsum("cfn,cn->cf", self.out, y)
        return y, guess, power

    def step(
        self, y: Array, guess: Array, time: float, length: float
    ) -> tuple[Array, Array, Array, Array, Array]:
        """Modes, face temperatures, friction left, heat gained and lost in one step of this length."""
        part = GAMMA * length
        over = time >= float(self.times[-1]) * (1 - 1e-12)
        moments = (np.inf, np.inf) if over else (time + part, time + length)
        one, guess, power_one = self.stage(y, guess, moments[0], part)
        known = y + (1 - GAMMA) / GAMMA * (one - y)
        two, temperature, power_two = self.stage(known, guess, moments[1], part)
        weights = ((1 - GAMMA) * length, part)
        gained = weights[0] * power_one.sum(-1) + weights[1] * power_two.sum(-1)
        lost = np.sum(self.modes.leak * (weights[0] * one + weights[1] * two), axis=-1)
        left = np.sum(self.share * self.ratio(temperature), axis=-1)
        return two, temperature, left, gained, lost
