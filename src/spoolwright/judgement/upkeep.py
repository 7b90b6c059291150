"""When should a reel come back? By the water it is fished in, from the day it was last worked on."""

from __future__ import annotations

from calendar import monthrange
from dataclasses import dataclass
from datetime import date

# Months from one service to the next by water, few trips to many; the longest is for a reel that only lies
# in a drawer. Judgement prior, anchored on makers' "yearly" and "after three years in any case".
MONTHS_BETWEEN: dict[str, tuple[int, int]] = {
    "fresh": (12, 36),
    "brackish": (9, 12),
    "salt": (4, 12),
    "": (12, 36),
}


@dataclass(frozen=True)
class NextService:
    """Due between two months: the first for a reel that is used a lot, the second for one that hardly is."""

    earliest: date
    latest: date
    words: str
    mark: str = "judgement prior"

    def is_over(self, today: date) -> bool:
        return today > self.latest


def next_service(last: date, water: str = "") -> NextService:
    """When a reel should be served again.

    Parameters
    ----------
    last : date
        The day of the last service **[-]**.
    water : str
        "fresh", "brackish", "salt", or "" where it is not known **[-]**.

    Returns
    -------
    NextService
        Two days, words and mark **[-]**.

    Raises
    ------
    ValueError
        Another water.

    Notes
    -----
    Months are calendar months; the 31st becomes the last day of a shorter month. Sand, wading and charter use
    halve the interval and are not asked for yet: the first day is for them.

    Source
    ------
    Judgement prior; makers commonly say once a year (common practice, no source).

    Examples
    --------
    >>> next_service(date(2026, 3, 31), "salt").words
    'Next service between July 2026 and March 2027, sooner the more it is used (salt water; judgement prior).'
    """
    if water not in MONTHS_BETWEEN:
        accepted = ", ".join(repr(name) for name in MONTHS_BETWEEN)
        raise ValueError(f"water: {accepted} are accepted; got {water!r}")
    earliest, latest = (_months_after(last, months) for months in MONTHS_BETWEEN[water])
    where = f"{water} water" if water else "water not known"
    span = f"between {_month(earliest)} and {_month(latest)}"
    words = f"Next service {span}, sooner the more it is used ({where}; judgement prior)."
    return NextService(earliest, latest, words)


def _months_after(day: date, months: int) -> date:
    years, month = divmod(day.month - 1 + months, 12)
    year = day.year + years
    return date(year, month + 1, min(day.day, monthrange(year, month + 1)[1]))


def _month(day: date) -> str:
    return f"{day:%B} {day.year}"
