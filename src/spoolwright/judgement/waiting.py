"""What does each reel wait for, since when, and when will it be ready? A date is a spread, not one day."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from spoolwright.judgement.what_next import Facts, what_next

# P90 of a queue is about 2.3 times its middle when job times scatter as they come: judgement prior, a guess.
QUEUE_SPREAD = 0.65
WORKING_MINUTES_A_DAY = 450
BILLABLE_SHARE = 0.62
NORMAL_90 = 1.2815515655446004

_WAITS_FOR = {
    "answer": "the customer's answer",
    "arrival": "its parcel to be opened",
    "reading": "its readings",
    "finding": "a look inside",
    "quote": "its quote",
    "work": "a hand at the bench",
    "proof": "its proof",
    "invoice": "its invoice",
    "dispatch": "the post",
    "nothing": "nothing",
}
_PLACE_WAITS = {"waits for a part": "a part", "bath": "the bath", "drying rack": "drying"}


@dataclass(frozen=True)
class Waiting:
    """What a reel waits for and since when; `days` are whole days up to the moment asked about."""

    waits_for: str
    since: datetime | None
    days: int
    words: str


@dataclass(frozen=True)
class PromisedSpread:
    """Ready by `likely` in one case of two, by `safe` in nine of ten; a guess until our own dates are in."""

    likely: date
    safe: date
    words: str
    mark: str = "judgement prior"


def waits(facts: Facts, now: datetime) -> Waiting:
    """What a visit waits for and since when.

    Parameters
    ----------
    facts : Facts
        The visit, entries with their times **[-]**.
    now : datetime
        The moment asked about **[-]**, aware or naive like the entries' times.

    Returns
    -------
    Waiting
        In words, with the time of the last entry that is no plain word, and whole days **[day]**.

    Source
    ------
    Trade words; places say more than a state. Common practice, no source.

    Examples
    --------
    >>> from spoolwright.judgement.what_next import EntryFact
    >>> asked = [EntryFact("arrival"), EntryFact("reading"), EntryFact("finding"),
    ...          EntryFact("quote", written_at=datetime(2026, 3, 2, 9, 0))]
    >>> waits(Facts(asked, place="asked shelf"), datetime(2026, 3, 5, 10, 0)).words
    "waits for the customer's answer, 3 days"
    """
    following = what_next(facts)
    place_waits = _PLACE_WAITS.get(facts.place) if following.act == "work" else None
    waits_for = place_waits or _WAITS_FOR[following.act]
    since = _last_step(facts)
    days = max(0, (now - since).days) if since is not None else 0
    return Waiting(waits_for, since, days, _words(waits_for, days))


def _last_step(facts: Facts) -> datetime | None:
    # A plain word moves nothing on: a reel that is waited for is waited for no less after a telephone call.
    steps = [entry for entry in facts.entries if not entry.struck and entry.kind != "word"]
    times = [entry.written_at for entry in steps if entry.written_at is not None]
    return times[-1] if times else None


def _words(waits_for: str, days: int) -> str:
    if days == 0:
        return f"waits for {waits_for}"
    return f"waits for {waits_for}, {days} day{'' if days == 1 else 's'}"


def promised_spread(
    minutes_ahead: int,
    own_minutes: int,
    today: date,
    *,
    hands: int = 2,
    waiting_days: int = 0,
    spread: float = QUEUE_SPREAD,
) -> PromisedSpread:
    """When a reel will be ready, from the minutes of work ahead of it.

    Parameters
    ----------
    minutes_ahead : int
        Work that comes before this reel **[min]**, 0 or more.
    own_minutes : int
        Work on this reel **[min]**, 0 or more.
    today : date
        The day counted from **[-]**.
    hands : int
        People at the bench **[-]**, 1 or more.
    waiting_days : int
        Working days until a part or an answer is here **[day]**, 0 or more.
    spread : float
        Standard deviation of the logarithm of the time taken **[-]**, 0 or more.

    Returns
    -------
    PromisedSpread
        Two dates, Monday to Friday, with words and mark.

    Raises
    ------
    ValueError
        Minutes, days or spread are negative, or there are no hands.

    Notes
    -----
    Middle: minutes / (hands * 450 min/day * 0.62 billable). P90 = middle * exp(1.2816 * spread),
    log-normal. Only working days count; public holidays are not known here.

    Source
    ------
    Judgement prior, a guess; the shop's own kept dates are to take its place.

    Examples
    --------
    >>> promised_spread(1000, 68, date(2026, 3, 2)).words
    'likely by 4 March, safely by 9 March (a guess: 1068 minutes of work, two hands)'
    """
    for name, number in (("minutes_ahead", minutes_ahead), ("own_minutes", own_minutes),
                         ("waiting_days", waiting_days), ("spread", spread)):  # fmt: skip
        if number < 0:
            raise ValueError(f"{name}: 0 or more is accepted; got {number}")
    if hands < 1:
        raise ValueError(f"hands: 1 or more is accepted; got {hands}")
    middle = (minutes_ahead + own_minutes) / (hands * WORKING_MINUTES_A_DAY * BILLABLE_SHARE)
    likely = _working_day(today, waiting_days + math.ceil(middle))
    safe = _working_day(today, waiting_days + math.ceil(middle * math.exp(NORMAL_90 * spread)))
    return PromisedSpread(likely, safe, _spread_words(likely, safe, minutes_ahead + own_minutes, hands))


def _working_day(start: date, days: int) -> date:
    day = start
    while day.weekday() >= 5:
        day += timedelta(days=1)
    for _ in range(days):
        day += timedelta(days=3 if day.weekday() == 4 else 1)
    return day


def _spread_words(likely: date, safe: date, minutes: int, hands: int) -> str:
    said = {1: "one hand", 2: "two hands"}.get(hands, f"{hands} hands")
    first, second = (f"{day.day} {day.strftime('%B')}" for day in (likely, safe))
    return f"likely by {first}, safely by {second} (a guess: {minutes} minutes of work, {said})"
