"""Days, hours and minutes as they are said in the shop."""

from __future__ import annotations

from datetime import date, datetime, timedelta

from django.utils import timezone

DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
LONG_DAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
MONTHS = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)


def today() -> date:
    return timezone.localdate()


def local_day(moment: date | datetime) -> date:
    return timezone.localtime(moment).date() if isinstance(moment, datetime) else moment


def day(moment: date | datetime, now: date | None = None) -> str:
    """ "Tue 3 June"; with the year where it is not this one."""
    that = local_day(moment)
    year = "" if that.year == (now or today()).year else f" {that.year}"
    return f"{DAYS[that.weekday()]} {that.day} {MONTHS[that.month - 1]}{year}"


def hour(moment: datetime) -> str:
    return timezone.localtime(moment).strftime("%H:%M")


def since(moment: datetime, now: date | None = None) -> str:
    """How long ago in words: "09:40 today", "16:10 yesterday", "Friday", "27 May"."""
    that, this = local_day(moment), now or today()
    gone = (this - that).days
    if gone in (0, 1):
        return f"{hour(moment)} {'yesterday' if gone else 'today'}"
    if 1 < gone < 7:
        return LONG_DAYS[that.weekday()]
    return plain_day(that, this)


def plain_day(that: date, this: date | None = None) -> str:
    """ "27 May"; with the year where it is not this one."""
    year = "" if that.year == (this or today()).year else f" {that.year}"
    return f"{that.day} {MONTHS[that.month - 1]}{year}"


def dated(moment: date | datetime) -> str:
    """ "27 May 2026": as it stands on a paper, where the year is never left out."""
    that = local_day(moment)
    return f"{that.day} {MONTHS[that.month - 1]} {that.year}"


def minutes(count: int) -> str:
    """ "6 min", "1 h", "1 h 20 min"."""
    whole, rest = divmod(round(count), 60)
    if not whole:
        return f"{rest} min"
    return f"{whole} h {rest} min" if rest else f"{whole} h"


def spread(likely: date | None, late: date | None, now: date | None = None) -> str:
    """A promise as two days: one as likely as not, one that is safe nine times in ten."""
    if likely is None or late is None:
        return "no day promised yet"
    if likely == late:
        return plain_day(late, now)
    if (likely.year, likely.month) == (late.year, late.month):
        return f"{likely.day}–{plain_day(late, now)}"
    return f"{plain_day(likely, now)} – {plain_day(late, now)}"


def days_between(first: date, last: date) -> list[date]:
    return [first + timedelta(days=n) for n in range((last - first).days + 1)]
