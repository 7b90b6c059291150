"""Wear and cold of one reel, worked out once for what was asked and kept in this process."""

from __future__ import annotations

from functools import lru_cache

from spoolwright.judgement.cold_morning import ColdMorning, cold_morning
from spoolwright.judgement.wear_life import WearLife, wear_life
from spoolwright.judgement.worn_face import Use
from spoolwright.pages.gathered import kept_known
from spoolwright.pages.gathered.kept_readings import thawed
from spoolwright.pages.gathered.subject import State, Subject

KEPT = 128


def parts(subject: Subject) -> list[tuple[str, str]]:
    """Key and words of every part that wears in this reel, with ordinary use the soonest first."""
    return [(part.key, part.part) for part in life(subject, subject.states[0], Use()).parts]


def life(subject: Subject, state: State, use: Use) -> WearLife:
    """How the parts of one state wear with this use."""
    return _life((subject.sheet, subject.taken, state.works, subject.learned), use)


def curve(subject: Subject, state: State) -> ColdMorning:
    """Spin time of one state against temperature."""
    return _cold(_who(subject, state), None)


def morning(subject: Subject, state: State, temperature: float) -> ColdMorning:
    """Spin time of one state on one morning."""
    return _cold(_who(subject, state), round(temperature, 2))


def _who(subject: Subject, state: State) -> tuple:  # type: ignore[type-arg]
    return subject.sheet, subject.taken, state.works, subject.system, subject.learned


@lru_cache(maxsize=KEPT)
def _life(who: tuple, use: Use) -> WearLife:  # type: ignore[type-arg]
    sheet, taken, works, learned = who
    known = kept_known.known(sheet, taken, learned)
    return wear_life(sheet, thawed(taken), works, use=use, known=known)


@lru_cache(maxsize=KEPT)
def _cold(who: tuple, temperature: float | None) -> ColdMorning:  # type: ignore[type-arg]
    sheet, taken, works, system, learned = who
    known = kept_known.known(sheet, taken, learned)
    if temperature is None:
        return cold_morning(sheet, thawed(taken), works, system=system, known=known)
    return cold_morning(
        sheet, thawed(taken), works, morning=temperature, temperatures=(), system=system, known=known
    )
