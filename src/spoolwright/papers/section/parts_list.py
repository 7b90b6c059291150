"""Which lines of a sheet's parts list belong to a part that the drawing shows, and the other way round."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache, lru_cache

from spoolwright.papers.section.arrangement import reel_parts
from spoolwright.papers.section.measures import measure
from spoolwright.papers.section.stack import washer_key
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Part

# Words in the name of a line; the line goes to the key with the longest words in it. Of words in a row all
# must be there. A drawing lacks the keys of other kinds, and then they do not count. What no drawing shows
# (click, clutch cam, kick lever) has no words here.
_WORDS: dict[str, tuple[tuple[str, ...], ...]] = {
    "frame": (
        ("frame",),
        ("gear bridge",),
        ("bridge screw",),
        ("body",),
        ("body cover",),
        ("cover gasket",),
        ("rear cap",),
        ("body with stem and foot",),
        ("body-cover screw",),
        ("off-side",),
        ("gear-side",),
        ("side-plate gasket",),
        ("harness lug",),
    ),
    "pillars": (("pillar",), ("frame pillar",), ("pillar screw",), ("cross bar",)),
    "gear-cover": (("gear-side plate",), ("gear-side cover",)),
    "off-cover": (("off-side plate",), ("off-side cover",), ("palm-side cover",), ("palm-side o-ring",)),
    "cast-cap": (
        ("cast-control cap",),
        ("cast cap",),
        ("cap o-ring",),
        ("cap friction disc",),
        ("cap shim",),
        ("cap end pad",),
        ("spool cap",),
        ("release spring",),
    ),
    "foot": (("foot",), ("rod clamp",)),
    "spool": (("spool",), ("spool cross pin",)),
    "spool-shaft": (
        ("spool shaft",),
        ("spool spindle",),
        ("spindle",),
        ("main shaft",),
        ("off-side end disc",),
    ),
    "bearing-gear-side": (
        ("spool bearing", "gear side"),
        ("bearing clip", "gear side"),
        ("front bearing",),
    ),
    "bearing-off-side": (
        ("off-side spool bearing",),
        ("off-side bearing clip",),
        ("spool bearing", "off side"),
        ("rear bearing",),
    ),
    "brakes": (("brake",), ("magnet",), ("shoe wheel",), ("dial click",)),
    "thumb-bar": (("thumb bar",), ("thumb-bar guide",)),
    "level-wind": (("worm",), ("pawl",), ("line-guide",), ("line guide",), ("guide bar",), ("front cover",)),
    "level-wind-cogs": (("idler cog",), ("drive cog",), ("cog on the worm",), ("cog clip",), ("cog",)),
    "pinion": (("pinion",), ("yoke",)),
    "bearing-pinion": (("pinion bearing",), ("bearing retainer",), ("bearing-retainer screw",)),
    "main-gear": (("main gear",), ("gear spacer",), ("shifter key",)),
    "drive-shaft": (("drive shaft",), ("drive-shaft",), ("clutch sleeve",)),
    "gear-shaft": (("main-gear shim",),),
    "bearing-drive-shaft": (("drive-shaft lower bearing",), ("drive-shaft lower bush",)),
    "bearing-drive-outer": (("drive-shaft bearing", "outer"),),
    "bearing-drive-inner": (("drive-shaft bearing", "inner"),),
    "roller-clutch": (
        ("roller clutch",),
        ("roller-clutch",),
        ("cover screw",),
        ("one-way clutch",),
        ("clutch cover",),
        ("clutch screw",),
        ("clutch seal",),
        ("clutch sleeve",),
        ("clutch carrier",),
        ("clutch clip",),
    ),
    "bearing-handle": (
        ("handle bearing",),
        ("handle-bearing",),
        ("handle bush",),
        ("main-gear bearing", "handle side"),
    ),
    "bearing-far-side": (("main-gear bearing", "far side"),),
    "rotor": (("rotor",), ("bail",), ("balance weight",), ("trip",), ("far bail lever",), ("spring guide",)),
    "rotor-nut": (("rotor nut",), ("rotor-nut",)),
    "bearing-rotor-nut": (("rotor-nut bearing",),),
    "line-roller": (("line roller",), ("line-roller",)),
    "oscillation": (("oscillation",), ("slider",), ("worm",), ("worm pawl",), ("guide rod",), ("guide-rod",)),
    "oscillation-cogs": (("worm cog",), ("idler cog",)),
    "check": (("click",), ("click gear",), ("click-gear screw",), ("pawl screw",), ("click pawl",)),
    "cam": (("moving cam",), ("fixed cam",), ("cam return spring",), ("thrust bearing",)),
    "preset": (("preset",),),
    "springs": (("cupped spring",), ("spring washer",)),
    "star": (
        ("star",),
        ("drag star",),
        ("star click spring",),
        ("drag lever",),
        ("lever screw",),
        ("lever pad",),
        ("lever detent",),
        ("quadrant",),
        ("strike stop",),
        ("stop-button",),
        ("drag knob",),
        ("knob detent",),
        ("knob click leaf",),
        ("drag screw",),
    ),
    "handle": (("handle",), ("knob",), ("handle thrust washer",)),
}


def drawn_as(sheet: ReelSheet, line: Part) -> str:
    """The key of the part under which the drawing shows this line of the list; empty where it does not."""
    return _key_of(line, *_drawn(sheet))


def all_drawn_as(sheet: ReelSheet) -> tuple[str, ...]:
    """The same for every line of the sheet's own list, in its order; worked out once for a sheet."""
    return _all_drawn_as(sheet)


@lru_cache(maxsize=64)
def _all_drawn_as(sheet: ReelSheet) -> tuple[str, ...]:
    stack, drawn = _drawn(sheet)
    return tuple(_key_of(line, stack, drawn) for line in sheet.parts)


def _drawn(sheet: ReelSheet) -> tuple[dict[str, str], frozenset[str]]:
    """Names of the stack's members with their keys, and the keys of everything that is drawn."""
    m = measure(sheet)
    stack = {w.name.casefold(): washer_key(w, place) for place, w in enumerate(m.stack, start=1)}
    return stack, frozenset(part.key for part in reel_parts(m, m.full))


def _key_of(line: Part, stack: Mapping[str, str], drawn: frozenset[str]) -> str:
    name = line.name.casefold()
    if name in stack:
        return stack[name]
    best, length = "", 0
    for key, choices in _WORDS.items():
        for words in choices if key in drawn else ():
            if sum(map(len, words)) > length and all(_begins(word).search(name) for word in words):
                best, length = key, sum(map(len, words))
    return best


@cache
def _begins(word: str) -> re.Pattern[str]:
    """The word where a word begins: the lever of a free spool is no part of the spool."""
    return re.compile(rf"(?<![\w-]){re.escape(word)}")


def lines_of(sheet: ReelSheet, key: str) -> tuple[Part, ...]:
    """The lines of the parts list that belong to a drawn part, in the order in which they come off."""
    found = tuple(line for line, own in zip(sheet.parts, all_drawn_as(sheet), strict=True) if own == key)
    return found if found or not _is_the_spools(sheet, key) else lines_of(sheet, "spool")


def _is_the_spools(sheet: ReelSheet, key: str) -> bool:
    """A face of the spool that stands in the stack as a member has no line of its own."""
    members = enumerate(measure(sheet).stack, start=1)
    return any(washer_key(w, place) == key and w.turns_with == "spool" for place, w in members)
