"""The places of the bench as they are said in a sentence, and what is said of one that is empty."""

from __future__ import annotations

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
