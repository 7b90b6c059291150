"""How would many such reels cast, with each option, and which of the things not known decides it?"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor, as_completed
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from spoolwright.judgement.brake_setting import BrakeSetting
from spoolwright.judgement.cast_case import WHY_NOT, CastCase, cast_case, predicted
from spoolwright.judgement.cast_compare import compared, difference
from spoolwright.judgement.cluster import on_cluster
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.narrowing import know
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.sweep_chunk import INPUTS, Cast, Chunk, Option, Order, cast_chunk, chunks
from spoolwright.judgement.taken import Readings, listed
from spoolwright.judgement.throw import Throw
from spoolwright.judgement.works import all_works
from spoolwright.sheets.reel_sheet import ReelSheet

CHUNK = 5000
"""Casts in one chunk: small enough to show progress, large enough that handing it out costs nothing."""

PILOT = 400
"""Casts from which the brake's settings are found before the sweep begins."""

TOUCHES_THE_CAST = frozenset(
    ("bearing_condition", "bearing_lubricant", "end_drag", "train_drag", "spool_inertia", "inertia_factor")
)
"""What a work has to change to be worth a row of its own."""

Progress = Callable[[int, int], None]


@dataclass(frozen=True)
class SweepRow:
    """One option: its casts with the brake as it is today, what it gains over today draw by draw [m], and the
    same with the brake set again for the slack of today (None where there is no brake to set)."""

    name: str
    works: tuple[str, ...]
    values: Mapping[str, Predicted]
    over_runs: float
    gain: Predicted | None = None
    share_again: float | None = None
    gain_again: Predicted | None = None


@dataclass(frozen=True)
class Weight:
    """One thing that is not known, and the share of the distance's spread that goes with it."""

    name: str
    words: str
    share: float


@dataclass(frozen=True)
class Sweep:
    """Many casts of every option. Where a cast has no meaning `why_not` says why and all else is empty."""

    sheet: ReelSheet
    throw: Throw
    rows: tuple[SweepRow, ...]
    weights: tuple[Weight, ...]
    share: float | None
    lip_slack: float
    samples: int
    seed: int
    chunks: int
    why_not: str = ""


def cast_options(kind: str) -> dict[str, tuple[str, ...]]:
    """The works of the list that touch a cast of such a reel, each as an option of its own.

    Parameters
    ----------
    kind : str
        Kind of reel **[-]**.

    Returns
    -------
    dict of str to tuple of str
        Title, and the works **[-]**.

    Source
    ------
    works.toml.

    Examples
    --------
    >>> ("hybrid-spool-bearings",) in cast_options("round multiplier").values()
    True
    """
    return {
        work.title: (work.id,)
        for work in all_works().values()
        if kind in work.kinds and any(_touches(effect.on) for effect in work.effects)
    }


def _touches(on: str) -> bool:
    return on in TOUCHES_THE_CAST or on.startswith(
        ("sheet.brakes", "sheet.level_wind", "sheet.spool", "sheet.bearings.spool")
    )


def sweep(
    sheet: ReelSheet,
    readings: Readings | None,
    options: Mapping[str, Sequence[str]],
    *,
    throw: Throw,
    samples: int = 20_000,
    seed: int = 1,
    cast_with: Callable[[Order, Sequence[Chunk]], Iterable[Cast]] | None = None,
) -> Sweep:
    """Cast over everything that is not known, for the reel as it is and for each option.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken, or None
        This reel's own readings by kind **[SI]**.
    options : mapping of str to sequence of str
        Works by the option's name **[-]**; today's reel comes first by itself.
    throw : Throw
        The throw **[SI]**.
    samples : int
        Casts of every option **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**.
    cast_with : callable or None
        Casts the chunks **[-]**: `in_threads` (the default), or `on_workers`; in any order.

    Returns
    -------
    Sweep
        Rows in SI; the same for the same seed, wherever and in whatever order the chunks were cast.

    Raises
    ------
    ValueError
        Fewer than 100 casts; a work that is not known or not done on this kind of reel.
    NoCluster
        The cluster that is to cast them cannot be used.

    Notes
    -----
    All options share their draws, chunk by chunk, so differences are between casts of one and the same reel,
    arm and day. `weights`: squared correlation of each input with today's distance.

    Source
    ------
    JCGM 101:2008.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> found = sweep(reel_sheet.load("tarvak-58r"), None, {}, throw=Throw(0.150, 55.0), samples=200)
    >>> [row.name for row in found.rows], found.weights[0].name
    (['today'], 'throw_factor')
    """
    wanted = chunks(samples, seed, CHUNK)
    if sheet.reel.kind in WHY_NOT:
        why = WHY_NOT[sheet.reel.kind]
        return Sweep(sheet, throw, (), (), None, 0.0, samples, seed, 0, why_not=why)
    today, order = _pilot(sheet, readings or {}, options, throw, seed)
    done = {one.number: one for one in (cast_with or in_threads)(order, wanted)}
    whole = [done[one.number] for one in wanted]
    measures = {
        name: np.concatenate([one.measures[name] for one in whole], axis=1) for name in whole[0].measures
    }
    return Sweep(
        sheet=sheet,
        throw=throw,
        rows=tuple(_rows(order, measures, today.lip_slack)),
        weights=_weights(whole),
        share=today.share,
        lip_slack=today.lip_slack,
        samples=samples,
        seed=seed,
        chunks=len(wanted),
    )


def in_threads(order: Order, wanted: Sequence[Chunk], workers: int | None = None) -> Iterator[Cast]:
    """Cast chunks on the cores of this machine, each given back as it is done.

    Parameters
    ----------
    order : Order
        Reel, throw and options **[SI]**.
    wanted : sequence of Chunk
        The chunks **[-]**.
    workers : int or None
        Threads **[-]**; None: one a core.

    Returns
    -------
    iterator of Cast
        In the order in which they are done.

    Notes
    -----
    The compiled cast lets go of Python's lock, so threads share the cores.

    Source
    ------
    Python's concurrent.futures.
    """
    with ThreadPoolExecutor(workers or os.cpu_count() or 1) as pool:
        for future in as_completed([pool.submit(cast_chunk, order, one) for one in wanted]):
            yield future.result()


def on_workers(address: str) -> Callable[[Order, Sequence[Chunk]], Iterator[Cast]]:
    """A way to cast chunks on a Dask cluster, for `sweep`.

    Parameters
    ----------
    address : str
        Where the scheduler listens **[-]**.

    Returns
    -------
    callable
        To be given to `sweep` as `cast_with`.

    Source
    ------
    judgement.cluster.
    """
    return lambda order, wanted: on_cluster(address, order, wanted)


def counted(
    cast_with: Callable[[Order, Sequence[Chunk]], Iterable[Cast]], progress: Progress
) -> Callable[[Order, Sequence[Chunk]], Iterator[Cast]]:
    """The same way to cast chunks, telling after each how many of how many are done.

    Parameters
    ----------
    cast_with : callable
        The way to cast them **[-]**.
    progress : callable
        Takes chunks done and chunks in all **[-]**.

    Returns
    -------
    callable
        To be given to `sweep` as `cast_with`.

    Source
    ------
    Our own.
    """

    def told(order: Order, wanted: Sequence[Chunk]) -> Iterator[Cast]:
        progress(0, len(wanted))
        for done, one in enumerate(cast_with(order, wanted), start=1):
            progress(done, len(wanted))
            yield one

    return told


def _pilot(
    sheet: ReelSheet,
    readings: Readings,
    options: Mapping[str, Sequence[str]],
    throw: Throw,
    seed: int,
) -> tuple[CastCase, Order]:
    """Find the brake's settings once, so that no chunk has to."""
    known = know(sheet, readings, samples=PILOT, seed=seed)
    today = cast_case(sheet, throw=throw, known=known)
    share = 1.0 if today.share is None else today.share
    found = [Option("today", (), (share,))]
    for name, works in options.items():
        beside = compared(today, works, known)
        again = beside.again.share if beside is not None and beside.again is not None else None
        found.append(Option(name, tuple(works), (share,) if again is None else (share, again)))
    brake = throw.brake if today.share is None else BrakeSetting(share=share)
    fixed = replace(throw, brake=brake, diameter=today.diameter or throw.diameter)
    return today, Order(sheet, listed(readings), fixed, tuple(found))


def _rows(order: Order, measures: Mapping[str, NDArray[np.float64]], lip_slack: float) -> Iterator[SweepRow]:
    at = 0
    distance = measures["distance"]
    for option in order.options:
        values = {name: predicted(name, rows[at]) for name, rows in measures.items()}
        over_runs = float(np.mean(measures["peak_slack"][at] > lip_slack))
        row = SweepRow(option.name, option.works, values, over_runs)
        if at > 0:
            row = replace(row, gain=difference("distance of the cast", distance[at] - distance[0]))
        if len(option.shares) > 1:
            again = difference("distance of the cast", distance[at + 1] - distance[0])
            row = replace(row, share_again=option.shares[1], gain_again=again)
        yield row
        at += len(option.shares)


def _weights(whole: Sequence[Cast]) -> tuple[Weight, ...]:
    names = whole[0].sums
    total = {name: np.sum([one.sums[name] for one in whole], axis=0) for name in names}
    found = [Weight(name, INPUTS[name], _squared_correlation(sums)) for name, sums in total.items()]
    return tuple(sorted(found, key=lambda weight: -weight.share))


def _squared_correlation(sums: Sample) -> float:
    count, x, y, xx, yy, xy = (float(value) for value in sums)
    spread = (xx - x * x / count) * (yy - y * y / count)
    together = xy - x * y / count
    return min(1.0, together**2 / spread) if spread > 1e-12 * xx * yy else 0.0
