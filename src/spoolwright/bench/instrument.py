"""What one of our own instruments leaves open: by its study if there is one, else by what is stated."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import hypot, sqrt

import numpy as np

from spoolwright.bench import budget, student
from spoolwright.bench.budget import RECTANGLE, ROUNDING, Contribution
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.uncertainty import COVERAGE_FACTOR, Measured

ODD = 0.01
"""Tries whose scatter a study would show once in a hundred times are believed more than the study."""


@dataclass(frozen=True)
class ByStudy:
    """What a repeatability study found [SI]: one hand again, between hands; how well it knows the first."""

    repeatability: float
    between_hands: float
    freedom: int
    words: str = "study"


@dataclass(frozen=True)
class ByCheck:
    """How far off a check found it [SI]; standard uncertainty and value of what it was held against."""

    off: float
    uncertainty: float
    words: str = "last check"
    at: float = 0.0


@dataclass(frozen=True)
class Instrument:
    """An instrument as it stands on the shelf today, SI.

    Parameters
    ----------
    name : str
        As the bench calls it.
    dimension : str
        Key of `quantities.DIMENSIONS` of what it measures.
    resolution : float
        Its smallest step.
    limit : float or None
        Largest error that its maker states, if he does.
    share : float or None
        The same as a share of what it shows [-].
    study, check : or None
        Its latest study and its latest check.
    """

    name: str
    dimension: str
    resolution: float
    limit: float | None = None
    share: float | None = None
    study: ByStudy | None = None
    check: ByCheck | None = None

    @property
    def rests_on(self) -> str:
        """What its uncertainty is taken from: "study" or "stated"."""
        return "study" if self.study else "stated"

    def stated_limit(self, value: float) -> float | None:
        """Largest stated error at this value; None where nothing is stated."""
        if self.limit is None and self.share is None:
            return None
        return (self.limit or 0.0) + (self.share or 0.0) * abs(value)

    @property
    def is_off(self) -> bool:
        """Whether the last check found more than is stated and than the check itself leaves open."""
        if self.check is None:
            return False
        stated = self.stated_limit(self.check.at) or 0.0
        open_ = COVERAGE_FACTOR * hypot(self.check.uncertainty, self.resolution * ROUNDING)
        return abs(self.check.off) > stated + open_

    def as_gauge(self) -> Gauge:
        """The same as a pull trace takes it: a share of the pull, and what does not grow with it."""
        stated = (self.limit or 0.0) * RECTANGLE
        if self.check and (self.is_off or self.stated_limit(0.0) is None):
            stated = hypot(self.check.off, self.check.uncertainty)
        study = (self.study.repeatability, self.study.between_hands) if self.study else (0.0, 0.0)
        fixed = hypot(stated, *study)
        # A limit that is the same at any pull is the whole of a range that is as wide as itself.
        return Gauge(
            accuracy_of_reading=self.share if self.limit is None else self.share or 0.0,
            accuracy_of_range=1.0 if fixed else None,
            resolution=self.resolution or None,
            range=fixed / RECTANGLE if fixed else None,
        )

    def measured(self, result: str, tries: Sequence[float], step: float = 0.0) -> Taken:
        """The mean of some tries with what this instrument leaves open of it.

        `step` is what the last typed digit is worth, if that is coarser than its display. The scatter of
        the tries, or of one hand again in a study, is widened by Student's factor for the number that it was
        learned from, so that k = 2 covers 95 % (JCGM 100:2008, G.3.2; `student.of_mean`). What lies between
        hands is not: those of a small shop are all in its study.
        """
        values = np.asarray(tries, dtype=np.float64)
        mean = float(values.mean())
        rows = tuple(self._rows(result, values, mean, max(self.resolution, step)))
        return Taken(budget.measured(mean, self.dimension, rows), rows)

    def _rows(self, result: str, values: np.ndarray, mean: float, step: float) -> Iterable[Contribution]:
        yield from self._scatter(result, values, step)
        if self.study and self.study.between_hands:
            yield Contribution(
                result, f"between hands, by the {self.study.words}", "A", self.study.between_hands
            )
        yield self._trueness(result, mean)

    def _scatter(self, result: str, values: np.ndarray, step: float) -> Iterable[Contribution]:
        n = len(values)
        own = float(values.std(ddof=1)) if n > 1 else 0.0
        widened = student.of_mean(values.tolist()) if n > 1 else 0.0
        if self.study is None:
            if own:
                yield Contribution(result, f"scatter of {n} tries, widened for their number", "A", widened)
            yield Contribution(result, "smallest step of the display", "B", step * ROUNDING)
            return
        again, rounding = self.study.repeatability, self.resolution * ROUNDING
        known = max(again, rounding)
        learned = max(again * student.widening(self.study.freedom), rounding)
        if n > 1 and _is_odd(own, known, n - 1, self.study.freedom):
            yield Contribution(result, f"scatter of {n} tries, more than the study allows", "A", widened)
        else:
            words = f"one hand again, by the {self.study.words}" + (f", mean of {n} tries" if n > 1 else "")
            yield Contribution(result, words, "A", learned / sqrt(n))
        if step > self.resolution:
            yield Contribution(result, "last digit that was typed", "B", step * ROUNDING)

    def _trueness(self, result: str, mean: float) -> Contribution:
        stated = self.stated_limit(mean)
        if self.check and (self.is_off or stated is None):
            found = hypot(self.check.off, self.check.uncertainty)
            return Contribution(result, f"how far off the {self.check.words} found it", "B", found)
        if stated is None:
            return Contribution(result, "its limit of error is not stated", "B", self.resolution * RECTANGLE)
        return Contribution(result, "its stated limit of error", "B", stated * RECTANGLE)


@dataclass(frozen=True)
class Taken:
    """The mean of some tries with its standard uncertainty [SI], and the rows behind it."""

    measured: Measured
    budget: tuple[Contribution, ...]


def _is_odd(own: float, known: float, freedom: int, of_study: int) -> bool:
    from scipy import stats

    return known > 0 and bool(stats.f.sf((own / known) ** 2, freedom, of_study) < ODD)
