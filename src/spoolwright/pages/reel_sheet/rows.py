"""One thing that is known of a part: what it is, how much, and how well it is known."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright import quantities
from spoolwright.pages.words import shown
from spoolwright.sheets.materials import StructuralMaterial, structural_material, structural_names
from spoolwright.sheets.sourced import Sourced

MARKS = {
    "opened": "published",
    "from memory": "published, quoted from memory",
    "judgement prior": "a guess (judgement prior)",
    "derived": "worked out from published values",
    "definition": "by definition",
}


@dataclass(frozen=True)
class Row:
    """`mark` says where a value is from that the sheet itself does not state; empty: from the sheet."""

    label: str
    text: str
    mark: str = ""


def marked(how: str) -> str:
    """How a value of the data files was got, in words for the bench."""
    return MARKS.get(how, how)


def coefficients(low: float, high: float) -> str:
    """A range of friction or of a ratio: nobody knows its third decimal."""
    return f"{low:.2f}" if f"{low:.2f}" == f"{high:.2f}" else f"{low:.2f} to {high:.2f}"


def size(label: str, value: float | None, system: str, dimension: str = "length") -> list[Row]:
    """A row for a size that the sheet states, none for one that it does not."""
    return (
        []
        if value is None
        else [Row(label, shown.unbroken(quantities.show_stated(value, dimension, system)))]
    )


def worked_out(label: str, value: float, dimension: str, system: str) -> Row:
    """A value that follows from the sheet's sizes."""
    return Row(label, shown.quantity(value, dimension, system), "worked out from the sheet")


def published(label: str, value: Sourced, dimension: str, system: str) -> Row:
    """A range from a data file, with how it was got."""
    if dimension == "ratio":
        return Row(label, coefficients(value.low, value.high), marked(value.how))
    if value.low == value.high:
        return Row(label, shown.quantity(value.low, dimension, system), marked(value.how))
    return Row(label, shown.interval(value.low, value.high, dimension, system), marked(value.how))


def material(name: str | None, system: str) -> list[Row]:
    """The material by name, with the pull it yields at and its density where they are known."""
    if name is None:
        return []
    rows = [Row("material", name)]
    if name not in structural_names():
        return rows
    known: StructuralMaterial = structural_material(name)
    return [
        *rows,
        published("yields at", known.yield_strength, "pressure", system),
        published("density", known.density, "density", system),
    ]
