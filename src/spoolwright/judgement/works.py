"""The works a shop sells: what each changes, which findings it answers, its minutes, parts and cautions."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any, Literal

Role = Literal["base", "mend", "improve", "most", "asked"]
Way = Literal["becomes", "times", "plus"]


@dataclass(frozen=True)
class Effect:
    """What a work does to one key of the reel's state; a range is [low, high] in SI."""

    on: str
    way: Way
    value: tuple[float, float] | str | int
    mark: str


@dataclass(frozen=True)
class PartNeeded:
    """A part that a work takes, with what one usually sells for without tax, from and to."""

    name: str
    count: int
    sells_usd: tuple[float, float]
    sure: str = "sure"


@dataclass(frozen=True)
class Work:
    """One work: `minutes_open` counts while the reel lies stripped, `minutes_alone` from closed to closed."""

    id: str
    title: str
    says: str
    kinds: tuple[str, ...]
    role: Role
    answers: tuple[str, ...]
    betters: tuple[str, ...]
    readings: tuple[str, ...]
    instead_of: tuple[str, ...]
    within: tuple[str, ...]
    needs_open: bool
    minutes_open: Mapping[str, int]
    minutes_alone: Mapping[str, int]
    parts: tuple[PartNeeded, ...]
    effects: tuple[Effect, ...]
    caution: str
    row: str

    def minutes(self, kind: str, *, reel_is_open: bool) -> int:
        """Bench minutes on this kind of reel [min]; a judgement prior."""
        table = self.minutes_open if reel_is_open else self.minutes_alone
        return table[kind] if kind in table else table["all"]


@lru_cache(maxsize=1)
def all_works() -> Mapping[str, Work]:
    """Every work that the house knows, by its id, in the order of the list.

    Returns
    -------
    mapping of str to Work
        Minutes **[min]**, prices of parts **[USD]**, ranges of effects in SI.

    Source
    ------
    works.toml: judgement priors and common practice, each row marked.

    Examples
    --------
    >>> all_works()["new-pawl"].parts[0].name
    'pawl'
    """
    return {row["id"]: _work(row) for row in _table()["works"]}


@lru_cache(maxsize=1)
def finding_words() -> Mapping[str, str]:
    """The findings that works answer: id and what it means in words.

    Returns
    -------
    mapping of str to str
        Words by id **[-]**.

    Source
    ------
    Trade words, common practice.

    Examples
    --------
    >>> finding_words()["pawl-worn"]
    'level-wind pawl worn at the tip'
    """
    return dict(_table()["findings"])


def finding_of(part: str, fault: str) -> str:
    """Which finding a row of the fault table comes to, on this part.

    Parameters
    ----------
    part : str
        The part in the bench's own words **[-]**.
    fault : str
        Row of the fault table, or a finding's own id **[-]**.

    Returns
    -------
    str
        Id of the finding **[-]**; empty where no work of the list answers it.

    Source
    ------
    Fault table of the trade, common practice.

    Examples
    --------
    >>> finding_of("level-wind pawl", "F15"), finding_of("worm", "F15"), finding_of("frame", "F31")
    ('pawl-worn', 'worm-notched', '')
    """
    if fault in finding_words():
        return fault
    row: Mapping[str, str] = _table()["faults"].get(fault, {})
    for word, found in row.items():
        if word != "else" and word in part.lower():
            return found
    return row.get("else", "")


def band_findings() -> Mapping[str, Mapping[str, str]]:
    """What a reading outside its good range comes to: kind of reading, then band, then finding.

    Returns
    -------
    mapping
        Finding ids **[-]**.

    Source
    ------
    Judgement priors.

    Examples
    --------
    >>> band_findings()["end_float"]["act"]
    'end-float-large'
    """
    return _bands()


@lru_cache(maxsize=1)
def _bands() -> Mapping[str, Mapping[str, str]]:
    return {kind: dict(row) for kind, row in _table()["bands"].items()}


def chosen(ids: tuple[str, ...] | list[str], kind: str) -> tuple[Work, ...]:
    """The works of those ids, in the order of the list, each fit for this kind of reel.

    Parameters
    ----------
    ids : sequence of str
        Work ids **[-]**.
    kind : str
        Kind of reel **[-]**, as on its sheet.

    Returns
    -------
    tuple of Work
        One each, list order, doubles dropped.

    Raises
    ------
    ValueError
        An id is not known, or that work is not done on this kind of reel.

    Source
    ------
    Our own list.

    Examples
    --------
    >>> [work.id for work in chosen(["new-pawl", "strip-and-wash"], "round multiplier")]
    ['strip-and-wash', 'new-pawl']
    """
    known = all_works()
    for name in ids:
        if name not in known:
            raise ValueError(f"works: {name!r} is not on the list; accepted: {', '.join(known)}")
        if kind not in known[name].kinds:
            raise ValueError(
                f"works: {name!r} is not done on a {kind}; it is for {', '.join(known[name].kinds)}"
            )
    wanted = set(ids)
    return tuple(work for name, work in known.items() if name in wanted)


@lru_cache(maxsize=1)
def _table() -> Mapping[str, Any]:
    return tomllib.loads((Path(__file__).parent / "works.toml").read_text(encoding="utf-8"))


def _work(row: Mapping[str, Any]) -> Work:
    return Work(
        id=row["id"],
        title=row["title"],
        says=row["says"],
        kinds=tuple(row["kinds"]),
        role=row["role"],
        answers=tuple(row.get("answers", ())),
        betters=tuple(row.get("betters", ())),
        readings=tuple(row.get("readings", ())),
        instead_of=tuple(row.get("instead_of", ())),
        within=tuple(row["within"]),
        needs_open=row.get("needs_open", True),
        minutes_open=dict(row["minutes"]["open"]),
        minutes_alone=dict(row["minutes"]["alone"]),
        parts=tuple(_part(part) for part in row.get("parts", ())),
        effects=tuple(_effect(effect) for effect in row.get("effects", ())),
        caution=row.get("caution", ""),
        row=row["row"],
    )


def _part(row: Mapping[str, Any]) -> PartNeeded:
    low, high = row["sells_usd"]
    return PartNeeded(row["name"], row["count"], (low, high), row.get("sure", "sure"))


def _effect(row: Mapping[str, Any]) -> Effect:
    ways: tuple[Way, ...] = ("becomes", "times", "plus")
    way = next(way for way in ways if way in row)
    value = row[way]
    return Effect(row["on"], way, (value[0], value[1]) if isinstance(value, list) else value, row["mark"])
