"""The gears of a reel's sheet, or typed as teeth."""

from __future__ import annotations

from spoolwright.bench.gear_noise import Gears
from spoolwright.bench.unreadable import Unreadable
from spoolwright.sheets.reel_sheet import ReelSheet

ACCEPTED = "teeth of main gear and pinion such as 98, 17; a third for a wheel between them"
_LEAST, _MOST = 5, 400


def at(sheet: ReelSheet, *, low: bool = False, where: str = "") -> Gears:
    """The wheels that mesh in a reel, by its sheet.

    Parameters
    ----------
    sheet : ReelSheet
        The reel's sheet [-].
    low : bool
        Whether the low gear was in [-].
    where : str
        What to point at in a refusal [-].

    Returns
    -------
    Gears
        Teeth of main gear and pinion [-].

    Raises
    ------
    Unreadable
        A reel without gears, or without a low gear.

    Source
    ------
    The reel's own sheet.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> at(reel_sheet.load("tarvak-58r")).main > 20
    True
    """
    found = sheet.gears
    if found is None:
        raise Unreadable("the sheet has no gears", where, ACCEPTED)
    if not low:
        return Gears(found.main_teeth, found.pinion_teeth)
    if found.low_main_teeth is None or found.low_pinion_teeth is None:
        raise Unreadable("the sheet has no low gear", where, ACCEPTED)
    return Gears(found.low_main_teeth, found.low_pinion_teeth)


def typed(text: str, where: str = "") -> Gears:
    """Teeth as typed: main gear, pinion, and a wheel between them if there is one.

    Parameters
    ----------
    text : str
        Two or three whole numbers with commas between them [-], each 5 to 400.
    where : str
        What to point at in a refusal [-].

    Returns
    -------
    Gears
        Teeth [-].

    Raises
    ------
    Unreadable
        Anything else.

    Source
    ------
    Common practice.

    Examples
    --------
    >>> typed("98, 17")
    Gears(main=98, pinion=17, idler=0)
    """
    parts = [part.strip() for part in text.split(",")]
    if len(parts) not in (2, 3) or not all(part.isascii() and part.isdigit() for part in parts):
        raise Unreadable(f"“{text[:40]}” are no teeth of gears", where, ACCEPTED)
    teeth = [int(part[:6]) for part in parts]
    if not all(_LEAST <= count <= _MOST for count in teeth):
        reason = f"“{text[:40]}”: a wheel has {_LEAST} to {_MOST} teeth"
        raise Unreadable(reason, where, ACCEPTED)
    return Gears(*teeth)
