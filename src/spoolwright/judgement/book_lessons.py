"""What predictions take from the shop book: how far a drawn quantity moves, and how much narrower it is."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import sqrt

import numpy as np

from spoolwright.judgement.book_chapter import Chapter, usual_scatter
from spoolwright.judgement.book_fit import NINETY
from spoolwright.judgement.book_kinds import (
    Kind,
    bearing_kind,
    friction_kinds,
    slug,
    start_kind,
)
from spoolwright.judgement.free_spin import SPIN_DRAWS, spool_bearings
from spoolwright.judgement.monte_carlo import Distribution, Sample, Triangular
from spoolwright.judgement.reel_state import ReelState
from spoolwright.sheets.reel_sheet import ReelSheet

NARROWEST = 0.15
"""The least share of a sheet's spread that is left, however many proofs there are: judgement prior."""


ENTRIES = 3
"""Entries in which a work has to stand before its promised minutes follow the book: judgement prior."""


@dataclass(frozen=True)
class Lesson:
    """How a drawn quantity differs from its sheet: logarithms about `middle` are shifted and scaled.

    `low` and `high` are the ends of what the book believes of the coefficient, `proofs` how many are its own.
    """

    key: str
    middle: float
    shift: float
    ratio: float
    proofs: int
    low: float
    high: float

    def put_on(self, sample: Sample) -> Sample:
        """Draws by the sheet as draws by the book."""
        about = np.log(sample / self.middle)
        return np.asarray(self.middle * np.exp(self.shift + self.ratio * about))

    def taken_off(self, sample: Sample) -> Sample:
        """Draws by the book as draws by the sheet."""
        about = np.log(sample / self.middle) - self.shift
        return np.asarray(self.middle * np.exp(about / self.ratio))


@dataclass(frozen=True)
class Learned:
    """A distribution of a sheet as the book has changed it."""

    sheet: Distribution
    lesson: Lesson

    def draw(self, generator: np.random.Generator, samples: int) -> Sample:
        return self.lesson.put_on(self.sheet.draw(generator, samples))


@dataclass(frozen=True)
class Lessons:
    """The lessons of a shop; it can be kept as a key, so that predictions may be kept by it."""

    rows: tuple[Lesson, ...] = ()
    minutes: tuple[tuple[str, float], ...] = ()

    def of(self, key: str) -> Lesson | None:
        """The lesson on a coefficient, where the book has one."""
        return next((row for row in self.rows if row.key == key), None)

    def minutes_of(self, work: str, reel: str, minutes: int) -> int:
        """Minutes of a work on a kind of reel, as this shop takes them [min]."""
        factor = dict(self.minutes).get(slug("minutes", work, reel), 1.0)
        return max(1, round(minutes * factor)) if minutes else 0


NOTHING_LEARNED = Lessons()


def lessons(chapters: Sequence[Chapter]) -> Lessons:
    """What predictions take from the chapters of the book.

    Parameters
    ----------
    chapters : sequence of Chapter
        Friction, bearings, start-up and minutes, in any order **[-]**.

    Returns
    -------
    Lessons
        Only coefficients that a proof has moved **[-]**; none at all without proofs.

    Notes
    -----
    Variance of the drawn logarithm: s_n^2 + c^2 w^2 + (c^2 - 1) v + d^2, with s_n of the coefficient, w its
    reel-to-reel part, v the scatter that other draws bring into its own proofs, c the factor on scatter, d
    the day-to-day scatter; over the sheet's s_0^2 + w^2. Never wider than the sheet unless proofs scatter
    more than thought.

    Source
    ------
    book_fit; log-normal throughout.

    Examples
    --------
    >>> lessons(()) == NOTHING_LEARNED
    True
    """
    rows: list[Lesson] = []
    minutes: list[tuple[str, float]] = []
    for chapter in chapters:
        if not chapter.weighed:
            continue
        for kind in chapter.kinds:
            if kind.family == "minutes" and len(chapter.of(kind.key)) >= ENTRIES:
                minutes.append((kind.key, float(np.exp(chapter.held.believed(kind.key)[0]))))
            elif kind.family != "minutes":
                rows.append(_lesson(chapter, kind))
    return Lessons(tuple(rows), tuple(minutes))


def _lesson(chapter: Chapter, kind: Kind) -> Lesson:
    mean, deviation = chapter.held.believed(kind.key)
    scatter = chapter.held.scatter**2
    other = max(usual_scatter(chapter, kind.key) ** 2 - kind.within**2 - kind.day**2, 0.0)
    wanted = deviation**2 + scatter * kind.within**2 + (scatter - 1) * other + kind.day**2
    ratio = sqrt(max(wanted, 0.0) / (kind.spread**2 + kind.within**2))
    ends = (kind.middle * float(np.exp(mean + way * NINETY * deviation)) for way in (-1, 1))
    most = max(1.0, chapter.held.scatter)
    return Lesson(
        kind.key, kind.middle, mean, min(max(ratio, NARROWEST), most), len(chapter.of(kind.key)), *ends
    )


def for_state(learned: Lessons, sheet: ReelSheet, state: ReelState) -> Mapping[str, Lesson]:
    """The lessons that speak of a reel in this state, by the name under which predictions draw.

    Parameters
    ----------
    learned : Lessons
        What the book has taught **[-]**.
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        The state of the reel **[SI]**.

    Returns
    -------
    mapping
        Lessons by name of draw **[-]**.

    Notes
    -----
    Proofs of bearings are taken after work on them: what a found spool's bearings are like nobody has proved,
    so there the sheet's range stays.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> dict(for_state(NOTHING_LEARNED, sheet, as_built(sheet)))
    {}
    """
    if not learned.rows:
        return {}
    kinds: list[Kind | None] = [*friction_kinds(state).values(), start_kind(state)]
    kinds.append(bearing_kind_of(sheet, state))
    found = {}
    for kind in kinds:
        lesson = learned.of(kind.key) if kind else None
        if kind and lesson:
            found[kind.draws] = lesson
    return found


def bearing_kind_of(sheet: ReelSheet, state: ReelState) -> Kind | None:
    """The coefficient of the bearings on which the spool of a reel turns free.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        The state, with the lubricant in them **[SI]**.

    Returns
    -------
    Kind or None
        None where the sheet has no such bearings, or where nothing was done to them.

    Source
    ------
    The reel sheet.

    Examples
    --------
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-58r")
    >>> bearing_kind_of(sheet, as_built(sheet)).draws
    'oil_factor'
    """
    bearings, held = spool_bearings(sheet), state.ranges["bearing_condition"]
    if not bearings or held.high / held.low > FOUND_BEARINGS:
        return None
    kinds = " and ".join(sorted({bearing.kind for bearing in bearings}))
    factors = {
        name: drawn
        for name in ("oil_factor", "grease_factor")
        if isinstance(drawn := SPIN_DRAWS[name], Triangular)
    }
    return bearing_kind(kinds, state.bearing_lubricant, factors)


FOUND_BEARINGS = 4.0
"""Highest over lowest condition of bearings, beyond which nobody has worked on them."""


def said(lesson: Lesson) -> str:
    """What the book says of a coefficient, for the reasons beside a prediction.

    Parameters
    ----------
    lesson : Lesson
        The lesson **[-]**.

    Returns
    -------
    str
        Words **[-]**.

    Source
    ------
    Our own wording.

    Examples
    --------
    >>> said(Lesson("k", 0.155, 0.0, 0.5, 1, 0.14, 0.17))
    "this shop's book: 0.14 to 0.17 after 1 proof"
    """
    count = f"{lesson.proofs} proof{'' if lesson.proofs == 1 else 's'}"
    behind = f"after {count}" if lesson.proofs else "by its relatives alone"
    return f"this shop's book: {lesson.low:.2f} to {lesson.high:.2f} {behind}"


def moved_over(
    draws: Mapping[str, Sample], before: Mapping[str, Lesson], after: Mapping[str, Lesson]
) -> dict[str, Sample]:
    """Draws of a reel as it stands, for the state that works leave: each keeps its place within its kind.

    Parameters
    ----------
    draws : mapping of str to array
        Draws by name **[SI]**, shape `(n,)`.
    before, after : mapping of str to Lesson
        The lessons that speak of the two states **[-]**.

    Returns
    -------
    dict of str to array
        Only the draws that change **[SI]**.

    Source
    ------
    A place within a distribution, kept: judgement prior.

    Examples
    --------
    >>> moved_over({}, {}, {})
    {}
    """
    changed = {}
    for name in {*before, *after}:
        was, now = before.get(name), after.get(name)
        if name not in draws or was == now or not np.all(draws[name] > 0):
            continue
        by_sheet = was.taken_off(draws[name]) if was else draws[name]
        changed[name] = now.put_on(by_sheet) if now else by_sheet
    return changed
