"""What has to fit together in what is written about a reel."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from spoolwright.pages.arrival.which import NEW
from spoolwright.shop.acts import clock
from spoolwright.shop.questions import customers, reel_sheets

if TYPE_CHECKING:
    from spoolwright.pages.arrival.forms import ArrivalForm

TWINS = (
    "{} and this one look alike. Give this one a visible difference before either is opened, "
    "and write down which. Accepted: a dot of red removable paint under the foot."
)

NOTHING_WEIGHS = "This weighs nothing or less. Accepted: a mass such as 338 g."
NOTHING_THICK = "This is no thickness. Accepted: a length such as 0.40 mm."


def check_row(form: ArrivalForm, row: int) -> None:
    given = {name: form.cleaned_data.get(f"r{row}_{name}") for name in CHECKED}
    for name, complaint in complaints(form, given):
        form.add_error(f"r{row}_{name}", complaint)
    for fault in form.around.photos[row].faults:
        form.add_error(f"r{row}_photos", fault)


CHECKED = (
    "which",
    "sheet",
    "described",
    "mass",
    "mass_line",
    "line_diameter",
    "under_water",
    "under_water_at",
)


def complaints(form: ArrivalForm, given: dict[str, Any]) -> Iterator[tuple[str, str]]:
    which = given["which"] or NEW
    if which != NEW and form.known_reels.chosen(which) is None:
        yield "which", "This is no reel of this customer that could come in now. Choose once more."
    if which == NEW and not given["sheet"] and not given["described"]:
        yield "described", "What it is has to be written down, or its sheet chosen."
    if given["mass"] is not None and given["mass"] <= 0:
        yield "mass", NOTHING_WEIGHS
    if given["line_diameter"] is not None and given["line_diameter"] <= 0:
        yield "line_diameter", NOTHING_THICK
    if given["mass"] is not None and not given["mass_line"]:
        yield "mass_line", "A mass is not comparable without this. Accepted: with its line, without line."
    if given["under_water"] and given["under_water_at"] is None:
        yield "under_water_at", "When, even roughly? Accepted: a day and an hour."
    if given["under_water_at"] is not None and given["under_water_at"] > clock.now():
        yield "under_water_at", "This is still to come. Accepted: a day and an hour that are over."


def check_twins(form: ArrivalForm) -> None:
    """Two of one model from one customer: the second has to be told from the first."""
    seen = {name(reel.described): reel.described for reel in reels_known(form)}
    for row in form.rows:
        shown = described(form, row.row)
        if not shown:
            continue
        if name(shown) in seen and not form.cleaned_data.get(f"r{row.row}_twin_mark"):
            form.add_error(f"r{row.row}_twin_mark", TWINS.format(seen[name(shown)]))
        seen.setdefault(name(shown), f"Reel {row.number}, {shown},")


def reels_known(form: ArrivalForm) -> tuple[Any, ...]:
    return customers.reels_of(form.chosen.pk) if form.chosen else ()


def described(form: ArrivalForm, row: int) -> str:
    """What a new reel will be called; empty for one that is known already."""
    if (form.cleaned_data.get(f"r{row}_which") or NEW) != NEW:
        return ""
    if said := form.cleaned_data.get(f"r{row}_described"):
        return said
    version = reel_sheets.version(form.cleaned_data.get(f"r{row}_sheet") or "")
    return version.sheet.shown if version else ""


def name(text: str) -> str:
    return text.strip().casefold()
