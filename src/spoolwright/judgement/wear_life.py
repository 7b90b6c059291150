"""What wears in this reel, how deep in so many weeks of such use, and how long until it is at its limit?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from spoolwright.judgement.bush_wear import bush_faces
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.disc_wear import NOT_BY_SLIDING, disc_faces
from spoolwright.judgement.monte_carlo import Sample
from spoolwright.judgement.narrowing import Known, know, then
from spoolwright.judgement.pawl_wear import level_wind_faces
from spoolwright.judgement.reel_state import after
from spoolwright.judgement.taken import Readings
from spoolwright.judgement.works import Work, chosen
from spoolwright.judgement.worn_face import Face, Use, common_draws
from spoolwright.mechanics import wear
from spoolwright.sheets.reel_sheet import ReelSheet

YEAR = 52.0
"""Weeks in a year of fishing every week."""
FOREVER = 30 * YEAR
"""Beyond this no number is told: other things end the reel first."""
POINTS = 27
MOST = 1000
"""Draws that wear: of more that are known the first so many, which are as good as any."""
SEED = 1
USED = 0.7
"""Most of its limit that a part of an unknown reel may already have been worn: judgement prior."""


@dataclass(frozen=True)
class Lasts:
    """Weeks until the limit: 5, 50 and 95 of a hundred such parts reach it by then; infinite where never."""

    low: float
    middle: float
    high: float


@dataclass(frozen=True)
class PartWear:
    """One part: its limit [m] and depth [m] against weeks with its 90 % band, and how long it lasts."""

    key: str
    part: str
    made_of: str
    limit: float
    limit_source: str
    depth_low: tuple[float, ...]
    depth: tuple[float, ...]
    depth_high: tuple[float, ...]
    lasts: Lasts
    chance: float
    slide_per_week: float
    pressure: float
    renewed: bool
    words: str
    rests_on: tuple[str, ...]


@dataclass(frozen=True)
class WearLife:
    """All parts that wear, the soonest first; `weeks` is the axis of their depths."""

    weeks: tuple[float, ...]
    parts: tuple[PartWear, ...]
    use: Use
    words: str
    notes: tuple[str, ...]
    why_not: str
    works: tuple[str, ...]
    samples: int
    seed: int


def wear_life(
    sheet: ReelSheet,
    readings: Readings,
    works: Sequence[str] = (),
    *,
    use: Use | None = None,
    weeks: float = 5 * YEAR,
    samples: int = 2000,
    known: Known | None = None,
) -> WearLife:
    """Tell how parts of a reel wear with such use, as it is or after some works.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken
        This reel's own readings by kind **[SI]**; none at all: a sound, new reel of this model is meant. Of
        a reel with readings nobody knows how far it is worn, so up to 70 % of each limit is taken as gone.
    works : sequence of str
        Ids of works **[-]**; parts that they renew start at zero.
    use : Use or None
        A week of it **[SI]**; None: an ordinary one.
    weeks : float
        How far to look ahead **[weeks]**, above zero.
    samples : int
        Draws that are kept **[-]**, 100 or more.
    known : Known or None
        What `know` made of the same sheet and readings, its samples and its seed with it **[SI]**.

    Returns
    -------
    WearLife
        Depths **[m]** against weeks, life **[weeks]**; `why_not` in words where nothing of it is known.

    Raises
    ------
    ValueError
        A work that is not known or not done on this kind of reel, weeks not above zero, fewer than 100
        samples.

    Notes
    -----
    Depth = worn already + weeks k p s. 90 % bands mostly say how little is known of wear rates; the order of
    the parts and the effect of oil and grit are firmer than any single life.

    Source
    ------
    J. F. Archard 1953; ranges with their marks in `rests_on` and in sheets/wear.toml.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> found = wear_life(reel_sheet.load("tarvak-58r"), {})
    >>> "pawl" in [part.key for part in found.parts]
    True
    """
    if not 0 < weeks < float("inf"):
        raise ValueError(f"weeks: more than 0 and finite is accepted; got {weeks!r}")
    use = use or Use()
    known = known or know(sheet, readings, samples=samples, seed=SEED)
    done = chosen(tuple(works), sheet.reel.kind)
    state, sheet = after(known.state, sheet, done), changed(sheet, done)
    kept = min(known.samples, MOST)
    draws = common_draws(kept, known.seed)
    friction = {name: values[:kept] for name, values in then(known, state).items()}
    faces = (
        *level_wind_faces(sheet, use, draws),
        *bush_faces(sheet, use, draws),
        *disc_faces(sheet, state, use, draws, friction),
    )
    axis = np.linspace(0.0, weeks, POINTS)
    fresh = _renewed(done, state.new_discs)
    told = [_told(face, axis, draws, fresh, bool(known.taken)) for face in faces]
    parts = tuple(sorted(told, key=lambda part: part.lasts.middle))
    notes = _notes(parts, bool(known.taken))
    why_not = "" if parts else _NOTHING
    words = _words(parts, use)
    return WearLife(tuple(axis.tolist()), parts, use, words, notes, why_not, tuple(works), kept, known.seed)


_NOTHING = (
    "The sheet of this reel names no level wind, no drag of slipping discs and no plain bush: nothing that "
    "wears by sliding is known here."
)
_RENEWS = {"pawl": "pawl", "worm": "worm", "end disc or shim": "end-disc"}


def _renewed(works: Sequence[Work], new_discs: bool) -> set[str]:
    """Keys of the faces that these works renew for sure."""
    fitted = {part.name for work in works for part in work.parts if part.sure == "sure"}
    found = {key for name, key in _RENEWS.items() if name in fitted}
    return {*found, "disc"} if new_discs else found


def _told(face: Face, axis: Sample, draws: dict[str, Sample], fresh: set[str], in_use: bool) -> PartWear:
    key = face.key.split("-")[0] if face.key.startswith("disc-") else face.key
    renewed = key in fresh
    worn = USED * draws[f"{key}.worn"] * face.limit if in_use and not renewed else np.zeros_like(face.limit)
    per_week = np.broadcast_to(face.per_week, face.limit.shape)
    depths = worn[:, None] + per_week[:, None] * axis
    low, middle, high = np.quantile(depths, [0.05, 0.5, 0.95], axis=0)
    life = np.asarray(wear.life(face.limit, per_week, 1.0, 1.0, worn))
    lasts = Lasts(*(float(v) for v in np.quantile(life, [0.05, 0.5, 0.95], method="inverted_cdf")))
    return PartWear(
        face.key, face.part, face.made_of, float(np.median(face.limit)), face.limit_source,
        tuple(low.tolist()), tuple(middle.tolist()), tuple(high.tolist()), lasts,
        float(np.mean(life <= axis[-1])), float(np.median(face.slide)), float(np.median(face.pressure)),
        renewed, f"{face.part}: {in_words(lasts)}", face.rests_on,
    )  # fmt: skip


def in_words(lasts: Lasts) -> str:
    """A life as a person says it.

    Parameters
    ----------
    lasts : Lasts
        Weeks **[weeks]**.

    Returns
    -------
    str
        Such as "about 4 years (8 months to more than 30 years)".

    Source
    ------
    Our own wording.

    Examples
    --------
    >>> in_words(Lasts(10.0, 104.0, 5000.0))
    'about 2 years (10 weeks to more than 30 years)'
    """
    if lasts.low >= FOREVER:
        return "more than 30 years"
    low, middle, high = (_span(weeks) for weeks in (lasts.low, lasts.middle, lasts.high))
    about = middle if middle.startswith(("more", "less")) else f"about {middle}"
    return about if low == high else f"{about} ({low} to {high})"


def _span(weeks: float) -> str:
    if weeks >= FOREVER:
        return "more than 30 years"
    if weeks < 1:
        return "less than a week"
    if weeks < 20:
        return f"{weeks:.0f} week{'' if round(weeks) == 1 else 's'}"
    if weeks < 2 * YEAR:
        return f"{weeks * 12 / YEAR:.0f} months"
    return f"{weeks / YEAR:.0f} years"


def _words(parts: Sequence[PartWear], use: Use) -> str:
    if not parts:
        return ""
    first = parts[0]
    if all(part.key.startswith("disc-") for part in parts):
        line = "so much line a week taken by fish"
    else:
        how = "oiled" if use.oiled else "dry"
        line = f"{use.casts:g} casts a week, {how}, grit in {use.grit:.0%} of the winding"
    if first.lasts.middle >= FOREVER:
        return f"With {line}, nothing here wears out by sliding: dirt, rust and knocks come first."
    return f"With {line}, the {first.part} goes first: {in_words(first.lasts)}."


def _notes(parts: Sequence[PartWear], in_use: bool) -> tuple[str, ...]:
    notes = []
    if any(part.key.startswith("disc-") for part in parts):
        notes.append(NOT_BY_SLIDING)
    if in_use:
        notes.append(
            "How far this reel is worn already is not known: up to 70 % of each limit (judgement prior)."
        )
    if parts:
        notes.append(
            "Wear rates are known to a factor of ten at best; a depth measured at two visits beats them."
        )
    return tuple(notes)
