"""Which lines of a sheet's parts list belong to a part that the drawing shows, and the other way round."""

from __future__ import annotations

import re
from functools import cache

from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.stack import washer_key
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Part

# Words in the name of a line; the line goes to the key with the longest words in it. Of words in a row all
# must be there. What the drawing does not show (click, clutch cam, kick lever) has no words here.
_WORDS: dict[str, tuple[tuple[str, ...], ...]] = {
    "frame": (("frame",), ("gear bridge",), ("bridge screw",)),
    "pillars": (("pillar",), ("frame pillar",), ("pillar screw",), ("cross bar",)),
    "gear-cover": (("gear-side plate",), ("gear-side cover",)),
    "off-cover": (("off-side plate",), ("off-side cover",)),
    "cast-cap": (
        ("cast-control cap",),
        ("cast cap",),
        ("cap o-ring",),
        ("cap friction disc",),
        ("cap shim",),
    ),
    "foot": (("foot",), ("rod clamp",)),
    "spool": (("spool",), ("spool cross pin",)),
    "spool-shaft": (("spool shaft",), ("spool spindle",), ("off-side end disc",)),
    "bearing-gear-side": (("spool bearing", "gear side"), ("bearing clip", "gear side")),
    "bearing-off-side": (
        ("off-side spool bearing",),
        ("off-side bearing clip",),
        ("spool bearing", "off side"),
    ),
    "brakes": (("brake",),),
    "level-wind": (("worm",), ("pawl",), ("line-guide",), ("line guide",), ("guide bar",)),
    "level-wind-cogs": (("idler cog",), ("drive cog",), ("cog on the worm",), ("cog clip",), ("cog",)),
    "pinion": (("pinion",), ("yoke",)),
    "bearing-pinion": (("pinion bearing",),),
    "main-gear": (("main gear",),),
    "drive-shaft": (("drive shaft",), ("drive-shaft",), ("clutch sleeve",)),
    "bearing-drive-shaft": (("drive-shaft lower bearing",), ("drive-shaft lower bush",)),
    "roller-clutch": (("roller clutch",), ("roller-clutch",), ("cover screw",)),
    "bearing-handle": (("handle bearing",), ("handle-bearing",), ("handle bush",)),
    "springs": (("cupped spring",), ("spring washer",)),
    "star": (("star",), ("drag star",), ("star click spring",), ("drag lever",), ("drag knob",)),
    "handle": (("handle",), ("knob",), ("handle thrust washer",)),
}


def drawn_as(sheet: ReelSheet, line: Part) -> str:
    """The key of the part under which the drawing shows this line of the list; empty where it does not."""
    for place, washer in enumerate(measure(sheet).stack, start=1):
        if washer.name.casefold() == line.name.casefold():
            return washer_key(washer, place)
    name = line.name.casefold()
    best, length = "", 0
    for key, choices in _WORDS.items():
        for words in choices:
            if sum(map(len, words)) > length and all(_begins(word).search(name) for word in words):
                best, length = key, sum(map(len, words))
    return best


@cache
def _begins(word: str) -> re.Pattern[str]:
    """The word where a word begins: the lever of a free spool is no part of the spool."""
    return re.compile(rf"(?<![\w-]){re.escape(word)}")


def lines_of(sheet: ReelSheet, key: str) -> tuple[Part, ...]:
    """The lines of the parts list that belong to a drawn part, in the order in which they come off."""
    return tuple(line for line in sheet.parts if drawn_as(sheet, line) == key)
