"""Which reading has a meaning for which kind of reel, and in words why it has none for the others."""

from __future__ import annotations

from collections.abc import Mapping

from spoolwright.sheets.reel_sheet import ReelSheet

_NO_SPIN = {
    "fixed spool": "The spool of a fixed-spool reel stands still in the cast and the line leaves over its "
    "lip: there is no free spin to time.",
    "fly": "A fly reel's spool is never free: the check and the drag hold it, and the line is pulled off by "
    "hand before the cast. There is no free spin to time.",
}
_NO_FLOAT = {
    "fixed spool": "A fixed spool slides on its shaft by design and is held by the drag knob: it has no end "
    "float to set. Rock on the shaft is felt with the knob hard on.",
    "fly": "A fly reel's spool is held on its spindle by a latch: what is read there is the wobble of its "
    "rim, not an end float.",
}
_NO_HANDLE = {
    "fly": "The handle of a fly reel sits on the spool itself: what turns heavy there is the drag or the "
    "check, and both are read at the line.",
}
_NOT_FOR: Mapping[str, Mapping[str, str]] = {
    "spin_time": _NO_SPIN,
    "stop_time": _NO_SPIN,
    "end_float": _NO_FLOAT,
    "handle_torque": _NO_HANDLE,
}
NO_DRAG = "This reel has no drag of slipping discs."
NO_BEARINGS = "The sheet names no bearing of the spool, so no free spin can be reckoned."


def why_not(sheet: ReelSheet, kind: str) -> str:
    """Why this kind of reading has no meaning for this reel; nothing where it has one.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    kind : str
        Id of a kind of reading or of a predicted value **[-]**.

    Returns
    -------
    str
        One or two sentences **[-]**, empty where the reading has a meaning.

    Source
    ------
    Trade sense, common practice: which bench reading belongs to which kind of reel.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> why_not(reel_sheet.load("tarvak-54c"), "spin_time")
    ''
    >>> why_not(reel_sheet.load("lumvik-4000"), "spin_time").endswith("no free spin to time.")
    True
    """
    said = _NOT_FOR.get(kind, {}).get(sheet.reel.kind, "")
    if said or kind not in ("spin_time", "stop_time"):
        return said
    return "" if any("spool" in bearing.place.lower() for bearing in sheet.bearings) else NO_BEARINGS


def without_meaning(sheet: ReelSheet) -> dict[str, str]:
    """Every predicted value that has no meaning for this reel, with the words that say why.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.

    Returns
    -------
    dict of str to str
        Words by id of the value.

    Source
    ------
    As why_not.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> list(without_meaning(reel_sheet.load("lumvik-4000")))
    ['spin_time', 'end_float']
    """
    names = ("spin_time", "end_float", "handle_torque")
    return {name: said for name in names if (said := why_not(sheet, name))}
