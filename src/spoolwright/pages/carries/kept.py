"""Ladders and wound spools, worked out once for what was asked and kept in this process."""

from __future__ import annotations

from functools import lru_cache

from spoolwright.judgement.load_ladder import Ladder, load_ladder
from spoolwright.judgement.reel_state import after
from spoolwright.judgement.works import chosen
from spoolwright.judgement.wound_line import WoundLine, wound_line
from spoolwright.pages.gathered import kept_known
from spoolwright.pages.gathered.kept_readings import thawed
from spoolwright.pages.gathered.subject import State, Subject

KEPT = 128


def ladder(subject: Subject, state: State, *, line: str = "", fill: float = 1.0) -> Ladder:
    """The ladder of one state of the subject."""
    return _ladder(
        (subject.sheet, subject.taken, state.works, subject.system, subject.learned), line, round(fill, 4)
    )


def wound(subject: Subject, *, line: str, tension: float, fill: float) -> WoundLine:
    """What the line does to the spool when it is wound on under this tension; works do not change it."""
    return _wound((subject.sheet, subject.taken, subject.system), line, round(tension, 4), round(fill, 4))


def disc(subject: Subject, state: State) -> str:
    """What the drag's discs are faced with in this state; empty where nothing slips."""
    before = kept_known.known(subject.sheet, subject.taken, subject.learned).state
    pairs = after(before, subject.sheet, chosen(state.works, subject.sheet.reel.kind)).pairs
    return pairs[0].face_material if pairs else ""


@lru_cache(maxsize=KEPT)
def _ladder(who: tuple, line: str, fill: float) -> Ladder:  # type: ignore[type-arg]
    sheet, taken, works, system, learned = who
    known = kept_known.known(sheet, taken, learned)
    return load_ladder(sheet, thawed(taken), works, line=line, fill=fill, system=system, known=known)


@lru_cache(maxsize=KEPT)
def _wound(who: tuple, line: str, tension: float, fill: float) -> WoundLine:  # type: ignore[type-arg]
    sheet, taken, system = who
    return wound_line(sheet, thawed(taken), line=line, tension=tension, fill=fill, system=system)
