"""The places of the bench in words: where a reel lies, what is said of an empty place, when one was here."""

from __future__ import annotations

from typing import Any

from spoolwright.pages.words import when

THERE = {
    "mat": "on the mat",
    "bath": "in the bath",
    "drying rack": "on the drying rack",
    "shelf": "on the shelf",
    "asked shelf": "on the asked shelf",
    "waits for a part": "waiting for a part",
    "jig": "on the jig",
    "line winder": "on the line winder",
    "post table": "on the post table",
}

EMPTY = {
    "mat": "The mat is clear.",
    "bath": "Nothing is in the bath.",
    "drying rack": "Nothing is drying.",
    "shelf": "Nothing lies on the shelf.",
    "asked shelf": "No customer is being waited for.",
    "waits for a part": "No part is being waited for.",
    "jig": "The jig is free.",
    "line winder": "Nothing is being wound.",
    "post table": "Nothing is to be sent.",
}


def there(place: str) -> str:
    """ "on the mat": where something is that lies at this place."""
    return THERE[place]


def empty(place: str) -> str:
    """ "The mat is clear.": the quiet line of a place where nothing lies."""
    return EMPTY[place]


def days_here(visit: Any) -> str:
    """ "3 June to 9 June", "3 June" for a visit of one day, "since 3 June" for one that is not over."""
    came = when.plain_day(when.local_day(visit.arrived_at))
    if visit.sent_home_at is None:
        return f"since {came}"
    went = when.plain_day(when.local_day(visit.sent_home_at))
    return came if went == came else f"{came} to {went}"
