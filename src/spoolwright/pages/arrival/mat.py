"""The mat: what is counted out of a parcel, in the order in which it is counted."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any

from django import forms

from spoolwright.shop.acts.receive_parcel import Counted
from spoolwright.shop.questions.choices import CONTENTS

REELS = "count_0"
MOST_REELS = 24
MOST = 99
ROW = re.compile(r"r([0-9]{1,2})_(?!which$|.*_unit$)")
"""A field of one reel in which somebody has written, if there is anything in it: units and the choice of a
new reel stand there untouched."""


def fields() -> Iterable[tuple[str, forms.Field]]:
    for place, what in enumerate(CONTENTS):
        yield f"count_{place}", count_of(what, least=int(place == 0))


def count_of(what: str, least: int) -> forms.IntegerField:
    """A plain number field with the number keypad; a script sets a minus and a plus beside it."""
    most = MOST_REELS if what == "reel" else MOST
    accepted = f"Accepted: a whole number from {least} to {most}."
    return forms.IntegerField(
        label=what,
        required=False,
        initial=least,
        min_value=least,
        max_value=most,
        widget=forms.NumberInput({"inputmode": "numeric", "autocomplete": "off"}),
        error_messages=dict.fromkeys(("invalid", "min_value", "max_value"), f"This is no count. {accepted}"),
    )


def counted(given: Mapping[str, Any]) -> list[Counted]:
    """What lay beside the reels. The reels and their line are counted with each reel."""
    rows = [(what, given.get(f"count_{place}") or 0) for place, what in enumerate(CONTENTS)]
    return [Counted(what, count) for what, count in rows if count and what not in ("reel", "line")]


def lines_counted(given: Mapping[str, Any]) -> int:
    return given.get(f"count_{CONTENTS.index('line')}") or 0


def reels_counted(data: Mapping[str, Any]) -> int:
    """How many reels are to be described: as many as were counted, one at least."""
    text = str(data.get(REELS, "")).strip()
    if text.isascii() and text.isdigit() and 0 < int(text[:9]) <= MOST_REELS:
        return int(text)
    return max(reels_described(data), 1)


def reels_described(data: Mapping[str, Any]) -> int:
    """How many reels have something written about them, the last of them counted from the first."""
    rows = [int(found[1]) for name in data if (found := ROW.match(name)) and str(data[name]).strip()]
    return min(max(rows, default=-1) + 1, MOST_REELS)
