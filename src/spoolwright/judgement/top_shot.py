"""How much backing goes under a top shot, and what does the reel give with the two lines on it?"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from spoolwright import quantities
from spoolwright.judgement.line_said import read_line
from spoolwright.judgement.monte_carlo import Rectangular, Sample, draw
from spoolwright.judgement.prediction import Predicted
from spoolwright.mechanics import spool
from spoolwright.sheets.reel_sheet import ReelSheet

PACKING = Rectangular(0.62, 0.80)
"""Share of the room that line fills: judgement prior, as in a prediction."""


@dataclass(frozen=True)
class TopShot:
    """A top shot on its backing: lengths [m], where the join lies [m], line that a handle turn wins [m]."""

    top: str
    top_length: float
    backing: str
    backing_length: Predicted
    top_alone: Predicted
    join_radius: Predicted
    turn_full: float | None
    turn_at_join: float | None
    pull_at_join: float
    words: str
    notes: tuple[str, ...]


def top_shot(
    sheet: ReelSheet,
    *,
    top: str = "braid 0.25 mm",
    length: float = 100.0,
    backing: str = "nylon 0.35 mm",
    samples: int = 1000,
    seed: int = 1,
    system: str = "metric",
) -> TopShot:
    """Fill a spool with backing and a top shot so that both together come up to the full line level.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    top : str
        Line on top, material and diameter **[-]**, such as "braid 0.25 mm".
    length : float
        Its length **[m]**, zero or more.
    backing : str
        Line below it **[-]**, such as "nylon 0.35 mm".
    samples : int
        Draws that are kept **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    TopShot
        Backing **[m]** with its 90 % band; the join's radius **[m]**; `pull_at_join` over that at a full
        spool **[-]**.

    Raises
    ------
    NotAQuantity
        A line that cannot be read.
    ValueError
        A length below zero.

    Notes
    -----
    One packing for both lines. Braid on a bare arbor slips: a few turns of nylon or tape under it.

    Source
    ------
    Geometry (mechanics.spool); packing a judgement prior.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> found = top_shot(reel_sheet.load("tarvak-58r"), top="nylon 0.40 mm", length=100.0)
    >>> found.backing_length.low < found.backing_length.middle
    True
    """
    if not 0 <= length < float("inf"):
        raise ValueError(f"length: zero or more and finite is accepted; got {length!r}")
    above, below = read_line(top), read_line(backing)
    packing = draw({"packing": PACKING}, samples=samples, seed=seed)["packing"]
    room = sheet.spool
    size = (room.arbor_radius, room.full_radius, room.width)
    alone = np.asarray(spool.line_length(*size, above.diameter, packing))
    needed = np.asarray(spool.backing_length(*size, below.diameter, length, above.diameter, packing))
    under = np.maximum(needed, 0.0)
    join = np.asarray(spool.fill_radius(room.arbor_radius, under, room.width, below.diameter, packing))
    middle = float(np.median(join))
    ratio = sheet.gear_ratio if sheet.gears is not None else None
    radii = (room.full_radius, middle)
    turns = [None if ratio is None else float(spool.line_per_turn(r, ratio)) for r in radii]
    told = _predicted("backing under it", under)
    lines = (above.words_in(system), below.words_in(system))
    words = _words(lines, length, told, float(np.median(alone)), room.full_radius / middle, system)
    more = room.full_radius / middle
    return TopShot(
        lines[0], length, lines[1], told, _predicted("the top line alone", alone),
        _predicted("radius at the join", join, "length"), turns[0], turns[1], more, words,
        _notes(above.material.name, needed),
    )  # fmt: skip


def _predicted(quantity: str, sample: Sample, dimension: str = "line_length") -> Predicted:
    low, middle, high = np.quantile(sample, [0.05, 0.5, 0.95])
    spread = float(np.std(sample, ddof=1))
    return Predicted(quantity, float(middle), float(low), float(high), spread, dimension)


def _words(
    lines: tuple[str, str], length: float, backing: Predicted, alone: float, more: float, system: str
) -> str:
    top, below = lines
    on_top = quantities.show(length, "line_length", system)
    if backing.middle <= 0:
        holds = quantities.show(alone, "line_length", system)
        return (
            f"{on_top} of {top} is more than goes on: the spool holds about {holds} of it, with no backing."
        )
    span = quantities.show_interval(backing.low, backing.high, "line_length", system)
    return (
        f"Under {on_top} of {top} go {span} of {below}. When the top shot is out, the pull of an unchanged "
        f"drag has grown to {more:.2f} times."
    )


def _notes(material: str, needed: Sample) -> tuple[str, ...]:
    notes = [
        "Wind it the wrong way round first, or weigh it: how densely line lies is known to a tenth only."
    ]
    if material == "braided polyethylene" and float(np.median(needed)) <= 0:
        notes.append("Braid slips on a bare arbor: a few turns of nylon or a strip of tape go under it.")
    return tuple(notes)
