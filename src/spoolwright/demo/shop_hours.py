"""When the two of them are at the bench: Monday to Friday, half past eight to half past four, shop time."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta

from django.utils import timezone

OPENS, SHUTS = time(8, 30), time(16, 30)
_DAY = timedelta(days=1)


def at(day: date, clock: str) -> datetime:
    """A moment as the diary would say it: `at(day, "09:12")`."""
    return datetime.combine(day, time.fromisoformat(clock), tzinfo=timezone.get_current_timezone())


def open_day(day: date, back: bool = False) -> date:
    """This day if the shop is open on it, else the next such day (or the one before)."""
    while day.weekday() >= 5:
        day += -_DAY if back else _DAY
    return day


def working_days(day: date, count: int) -> date:
    """So many working days later, or earlier where the count is below nothing."""
    step = _DAY if count >= 0 else -_DAY
    day = open_day(day, back=count < 0)
    for _ in range(abs(count)):
        day = open_day(day + step, back=count < 0)
    return day


def onwards(moment: datetime, minutes: float) -> datetime:
    """So many minutes of open shop later; what does not fit into a day goes on the next morning."""
    moment, left = _within(moment), timedelta(minutes=minutes)
    while (rest := _at(moment.date(), SHUTS) - moment) < left:
        left -= rest
        moment = _at(open_day(moment.date() + _DAY), OPENS)
    return moment + left


def _within(moment: datetime) -> datetime:
    day = moment.date()
    if open_day(day) != day or moment >= _at(day, SHUTS):
        return _at(open_day(day + _DAY), OPENS)
    return max(moment, _at(day, OPENS))


def _at(day: date, clock: time) -> datetime:
    return datetime.combine(day, clock, tzinfo=timezone.get_current_timezone())
