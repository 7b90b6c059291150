"""One chunk of a sweep: so many casts of every option, drawn from the chunk's own seed, wherever it runs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from spoolwright.judgement.cast_inputs import CAST_DRAWS
from spoolwright.judgement.cast_reckoned import reckoned
from spoolwright.judgement.monte_carlo import Sample, draw
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.throw import Throw
from spoolwright.mechanics import cast
from spoolwright.sheets.reel_sheet import ReelSheet

MEASURES = ("distance", "peak_slack", "flight_time")
"""What a sweep keeps of every cast."""

INPUTS = {
    "throw_factor": "how hard the caster throws",
    "shape_drag": "air on the payload",
    "line_drag": "air on the line",
    "bearing_condition": "state of the bearings",
    "temperature": "warmth of the oil",
    "end_drag": "end discs",
    "train_drag": "level wind",
    "train_growth": "how a level wind's drag grows with speed",
    "windage_factor": "air round the spool",
    "inertia_factor": "inertia of the spool",
    "packing": "how densely the line lies",
    "block_friction": "friction of the brake blocks",
    "magnet_field": "strength of the magnets",
}
"""The uncertain inputs that a sweep weighs, in words."""


@dataclass(frozen=True)
class Option:
    """One set of works with the brake's settings tried with it, as `shares` of all that the reel has."""

    name: str
    works: tuple[str, ...]
    shares: tuple[float, ...]


@dataclass(frozen=True)
class Order:
    """Everything that a chunk needs besides its seed; sent whole, so that nothing dies with a worker."""

    sheet: ReelSheet
    taken: tuple[Taken, ...]
    throw: Throw
    options: tuple[Option, ...]


@dataclass(frozen=True)
class Chunk:
    """One share of the casts: its place in the row, how many, and the seed that is its own."""

    number: int
    samples: int
    seed: int


@dataclass(frozen=True, eq=False)
class Cast:
    """One chunk done: `measures[name]` of shape (settings, samples), sums of how inputs move the distance."""

    number: int
    measures: Mapping[str, NDArray[np.float64]]
    sums: Mapping[str, Sample] = field(default_factory=dict)


def chunks(samples: int, seed: int, size: int) -> tuple[Chunk, ...]:
    """Share a number of casts out into chunks, each with a seed of its own.

    Parameters
    ----------
    samples : int
        Casts of every option **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**, zero or more.
    size : int
        About how many casts a chunk has **[-]**, 100 or more.

    Returns
    -------
    tuple of Chunk
        In order; their seeds depend on nothing but `seed` and their number.

    Raises
    ------
    ValueError
        Fewer than 100 casts, or chunks of fewer than 100; a seed below zero.

    Source
    ------
    NumPy's SeedSequence.spawn, made for work that is shared out.

    Examples
    --------
    >>> [chunk.samples for chunk in chunks(1000, 1, 300)]
    [334, 333, 333]
    """
    if samples < 100 or size < 100:
        raise ValueError(f"samples, size: 100 or more are accepted; got {samples}, {size}")
    if seed < 0:
        raise ValueError(f"seed: zero or more is accepted; got {seed}")
    count = max(1, round(samples / size))
    least, more = divmod(samples, count)
    seeds = np.random.SeedSequence(seed).spawn(count)
    return tuple(
        Chunk(number, least + (number < more), int(own.generate_state(1, np.uint64)[0] >> np.uint64(1)))
        for number, own in enumerate(seeds)
    )


def cast_chunk(order: Order, chunk: Chunk) -> Cast:
    """Cast one chunk: the same order and chunk give the same numbers on any machine of a kind.

    Parameters
    ----------
    order : Order
        Reel, throw and options **[SI]**.
    chunk : Chunk
        Its number, casts and seed **[-]**.

    Returns
    -------
    Cast
        Distances and slack **[m]**, times **[s]**, shape `(settings, samples)`, in the options' order.

    Raises
    ------
    ValueError
        A work that is not known or not done on this kind of reel.

    Source
    ------
    mechanics.cast; JCGM 101:2008.
    """
    taken: dict[str, list[Taken]] = {}
    for one in order.taken:
        taken.setdefault(one.kind, []).append(one)
    known = know(order.sheet, taken, samples=chunk.samples, seed=chunk.seed)
    found: dict[str, list[Sample]] = {name: [] for name in MEASURES}
    for option in order.options:
        inputs = reckoned(known, option.works, order.throw).inputs
        for share in option.shares:
            arguments = inputs.arguments(share, order.throw.brake.constant)
            flown = cast.simulate(**arguments, variant=inputs.variant)
            for name in MEASURES:
                found[name].append(np.broadcast_to(getattr(flown, name), (chunk.samples,)))
    measures = {name: np.array(rows) for name, rows in found.items()}
    draws = {**known.draws, **draw(CAST_DRAWS, samples=known.samples, seed=known.seed + 2)}
    return Cast(chunk.number, measures, _sums(measures["distance"][0], draws))


def _sums(distance: Sample, draws: Mapping[str, Sample]) -> dict[str, Sample]:
    """For each input: count, sums of it, of the distance, of both squares and of their product."""
    y = distance
    return {
        name: np.array([len(y), x.sum(), y.sum(), (x * x).sum(), (y * y).sum(), (x * y).sum()])
        for name, x in draws.items()
        if name in INPUTS
    }
