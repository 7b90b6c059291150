"""One part that carries the pull: at which pull at the line it gives, and what says so."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np

from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.prediction import COVERAGE, Predicted

Borne = Literal["drag", "reel", "line"]


@dataclass(frozen=True)
class Limit:
    """What a part's own file found: the pull at which it gives, for every draw [N], and why.

    `lasts` is the pull that the part bears for its life, where that is less and known [N]. `borne` says what
    the limit is held against: a part of the "reel" meets the drag's greatest pull; what hangs on the "line"
    meets the drag as it is set for that line.
    """

    part: str
    name: str
    what_gives: str
    pull: Sample
    source: str
    mark: str
    borne: Borne = "reel"
    lasts: Sample | None = None


@dataclass(frozen=True)
class Rung:
    """One step of the ladder: the pull at the line [N] at which this part reaches its limit, as a band.

    `over` is that pull over the pull it is held against (see `Limit.borne`), also as a band; `lasts` the pull
    that the part bears for its life, None where nothing says so.
    """

    part: str
    name: str
    what_gives: str
    limit: Predicted
    over: Predicted
    borne: Borne
    source: str
    mark: str
    lasts: Predicted | None = None


def band(quantity: str, sample: Sample, dimension: str, why: tuple[str, ...] = ()) -> Predicted:
    """The middle of a sample and the ends that leave 5 % out on either side.

    Parameters
    ----------
    quantity : str
        What it is, in words **[-]**.
    sample : array
        Draws **[SI unit of the dimension]**, shape `(n,)`, n of 2 or more.
    dimension : str
        Its dimension **[-]**, as `spoolwright.quantities` knows it.
    why : tuple of str
        What it rests on **[-]**.

    Returns
    -------
    Predicted
        Middle, ends and standard deviation in the same SI unit.

    Source
    ------
    JCGM 101:2008, 7.7 (probabilistically symmetric interval).

    Examples
    --------
    >>> band("pull", np.arange(101.0), "force").middle
    50.0
    """
    low, middle, high = np.quantile(sample, [(1 - COVERAGE) / 2, 0.5, (1 + COVERAGE) / 2])
    spread = float(np.std(sample, ddof=1))
    return Predicted(quantity, float(middle), float(low), float(high), spread, dimension, rests_on=why)


def rung(limit: Limit, held_against: Sample) -> Rung:
    """A limit as a rung.

    Parameters
    ----------
    limit : Limit
        What the part's own file found **[N]**.
    held_against : array
        The pull that it has to hold **[N]**, shape `(n,)`.

    Returns
    -------
    Rung
        Limit as a pull at the line **[N]** and as a share of that pull **[-]**.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> held = Limit("shaft", "spool shaft", "it bends", np.full(9, 90.0), "statics", "textbook")
    >>> rung(held, np.full(9, 60.0)).over.middle
    1.5
    """
    why = (limit.source, limit.mark)
    pull = band(f"pull at the line at which this gives: {limit.name}", limit.pull, "force", why)
    over = band(f"{limit.name} over the drag", limit.pull / held_against, "ratio", why)
    lasts = None
    if limit.lasts is not None:
        lasts = band(f"pull at the line that it bears for its life: {limit.name}", limit.lasts, "force", why)
    return Rung(
        limit.part, limit.name, limit.what_gives, pull, over, limit.borne, limit.source, limit.mark, lasts
    )
