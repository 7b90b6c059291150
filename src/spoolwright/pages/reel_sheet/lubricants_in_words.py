"""The letters of the lubrication points, in words."""

from __future__ import annotations

from collections.abc import Iterable

from spoolwright import quantities
from spoolwright.pages.words import shown
from spoolwright.sheets import lubricants
from spoolwright.sheets.lubricants import Grease

SHORT = {
    "O1": "very thin oil",
    "O2": "light oil",
    "O3": "heavy oil",
    "G1": "soft grease",
    "G2": "gear grease",
    "G3": "drag grease",
    "AS": "anti-seize",
    "OC": "clutch oil",
    "DRY": "left dry",
    "TL": "thread lock",
}
WARM = 313.15
"""The temperature at which a viscosity is named [K]: 40 °C (ISO 3448)."""
_WITHOUT_OIL = {
    "DRY": "nothing: oil or grease here does harm",
    "TL": "low-strength thread lock on a clean thread, never where plastic could craze",
}


def short(point: str, amount: str | None) -> str:
    """ "gear grease (G2), 10 mg on the thread"."""
    if point == "DRY":
        return SHORT[point]
    return f"{SHORT[point]} ({point})" + (f", {amount}" if amount else "")


def in_full(point: str, system: str) -> str:
    """What the letters mean, and what stands on the house's shelf for them."""
    if point in _WITHOUT_OIL:
        return _WITHOUT_OIL[point]
    known = lubricants.lubricant(point)
    oil = shown.unbroken(quantities.show_stated(known.viscosity_40.middle, "viscosity", system))
    warm = shown.unbroken(quantities.show_stated(WARM, "temperature", system))
    if isinstance(known, Grease):
        return f"{known.title}: {known.name}, NLGI {known.nlgi}, base oil {oil} at {warm}"
    return f"{known.title}: {known.name}, {oil} at {warm}"


def explained(points: Iterable[str], system: str) -> list[tuple[str, str, str]]:
    """The letters that are used, in the order of the list above, each short and in full."""
    used = set(points)
    return [(point, SHORT[point], in_full(point, system)) for point in SHORT if point in used]
