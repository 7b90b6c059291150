"""The shop's own instruments: what is known of each, its checks, its studies, what it leaves open today."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from django.db.models import Prefetch

from spoolwright.bench import gauge_study
from spoolwright.bench.gauge_study import StudyRead
from spoolwright.bench.gauge_study_file import Tries
from spoolwright.bench.instrument import ByCheck, ByStudy
from spoolwright.bench.instrument import Instrument as OnTheShelf
from spoolwright.sheets import instrument_kinds
from spoolwright.sheets.instrument_kinds import InstrumentKind
from spoolwright.shop.records.instrument import (
    GaugeStudy,
    Instrument,
    InstrumentCheck,
    InstrumentVersion,
)
from spoolwright.shop.records.reading import Reading


@dataclass(frozen=True)
class Study:
    """A study in ink with what it says."""

    row: Any
    tries: Tries

    @cached_property
    def read(self) -> StudyRead:
        return gauge_study.read(self.tries.values, self.row.tolerance_si)

    @property
    def words(self) -> str:
        return f"study of {_day(self.row.day)}"


@dataclass(frozen=True)
class Shelved:
    """One instrument with everything that was written of it; the latest of each stands first."""

    row: Any
    versions: tuple[Any, ...]
    checks: tuple[Any, ...]
    studies: tuple[Study, ...]

    @property
    def known(self) -> Any:
        return self.versions[0]

    @property
    def kind(self) -> InstrumentKind:
        return instrument_kinds.kind(self.row.kind)

    @property
    def is_put_away(self) -> bool:
        return bool(self.known.retired)

    @property
    def called(self) -> str:
        """ "The long caliper (C1)"."""
        return f"{self.known.name} ({self.row.mark})"

    @property
    def now(self) -> OnTheShelf:
        """What it leaves open today, in its own dimension."""
        return self.measuring(self.row.dimension)

    def measuring(self, dimension: str) -> OnTheShelf:
        """What it leaves open of such a quantity; what it says of another one is not carried over."""
        own = dimension == self.row.dimension
        study = next((one for one in self.studies if one.row.dimension == dimension), None)
        known, check = self.known, self.checks[0] if self.checks and own else None
        return OnTheShelf(
            name=self.called,
            dimension=dimension,
            resolution=known.resolution_si if own else 0.0,
            limit=known.limit_si if own else None,
            share=known.limit_share,
            study=_by_study(study) if study else None,
            check=_by_check(check) if check else None,
        )


def every(*, put_away: bool = True) -> tuple[Shelved, ...]:
    """Every instrument by its mark; without those that were put away, if so asked."""
    found = _shelved(Instrument.objects.order_by("mark"))
    return tuple(one for one in found if put_away or not one.is_put_away)


def marked(mark: str) -> Shelved | None:
    """The instrument that carries this mark."""
    return next(iter(_shelved(Instrument.objects.filter(mark__iexact=mark))), None)


def numbered(number: int) -> Shelved | None:
    """The instrument with this number of the house."""
    return next(iter(_shelved(Instrument.objects.filter(pk=number))), None)


def taken_with(number: int) -> int:
    """How many readings were taken with it."""
    return Reading.objects.filter(instrument=number).count()


def measuring(dimension: str) -> tuple[Shelved, ...]:
    """Those in use that measure such a quantity, as it was written down for each."""
    return tuple(one for one in every(put_away=False) if one.row.dimension == dimension)


def taking(way: str, dimensions: Sequence[str] = ()) -> tuple[Shelved, ...]:
    """Those in use that record such a signal by themselves, then those that measure one of these."""
    found = every(put_away=False)
    by_itself = [one for one in found if way in one.kind.takes]
    by_hand = [one for key in dimensions for one in found if one.row.dimension == key]
    return tuple({one.row.pk: one for one in (*by_itself, *by_hand)}.values())


def study(number: int) -> tuple[Shelved, Study] | None:
    """One study with its instrument."""
    row = GaugeStudy.objects.filter(pk=number).select_related("instrument").first()
    found = marked(row.instrument.mark) if row else None
    if found is None:
        return None
    return found, next(one for one in found.studies if one.row.pk == number)


def _shelved(rows: Any) -> Sequence[Shelved]:
    with_all = rows.prefetch_related(
        Prefetch("versions", InstrumentVersion.objects.select_related("author").order_by("-number")),
        Prefetch("checks", InstrumentCheck.objects.select_related("author").order_by("-day", "-id")),
        Prefetch("studies", GaugeStudy.objects.select_related("author").order_by("-day", "-id")),
        "studies__trials",
    )
    return [
        Shelved(
            row,
            tuple(row.versions.all()),
            tuple(row.checks.all()),
            tuple(Study(s, Tries(tuple(_tries(s.trials.all())))) for s in row.studies.all()),
        )
        for row in with_all
    ]


def _tries(trials: Iterable[Any]) -> Iterable[tuple[str, str, int, float]]:
    return ((t.part, t.person, t.trial, t.value_si) for t in trials)


def _by_study(found: Study) -> ByStudy:
    read = found.read
    return ByStudy(read.repeatability, read.between_hands, read.anova.repeatability.freedom, found.words)


def _by_check(check: Any) -> ByCheck:
    off = check.found_si - check.nominal_si
    words = f"check of {_day(check.day)}"
    return ByCheck(off, check.standard_uncertainty_si, words, at=check.nominal_si)


def _day(day: Any) -> str:
    return f"{day.day} {day:%B %Y}"
