"""How much of a given line goes on a reel, and what does it weigh?"""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import pi

from spoolwright import quantities
from spoolwright.judgement.prediction import Predicted
from spoolwright.sheets.lines import line_material


@dataclass(frozen=True)
class Filled:
    """A spool filled with one line: its length and mass with 90 % intervals, and a word about such line."""

    length: Predicted
    mass: Predicted
    note: str


def filled_with(capacity: Predicted, diameter: float, material: str, system: str = "metric") -> Filled:
    """Fill the spool with another line than the one the prediction was made for.

    Parameters
    ----------
    capacity : Predicted
        `line_capacity` of a prediction **[m]**, its condition `line_diameter` **[m]** among it.
    diameter : float
        Diameter of the line as a caliper reads it **[m]**, more than 0.
    material : str
        Name of a line material **[-]**, as sheets.lines knows it.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    Filled
        Length **[m]** and mass **[kg]**.

    Raises
    ------
    ValueError
        The diameter is not more than 0, or the prediction does not say for which diameter it holds.
    KeyError
        The material is not known.

    Notes
    -----
    The room stays the same, so lengths are as the inverse squares of the diameters; how densely the line
    lies (the prediction's own range) is taken to be the same. Mass = density * pi d^2 / 4 * length. A braid
    is taken as solid, so its mass is an upper end.

    Source
    ------
    Geometry; densities with their sources in sheets/lines.toml.

    Examples
    --------
    >>> forty = Predicted("line", 200.0, 180.0, 220.0, 12.0, "line_length", {"line_diameter": 0.4e-3})
    >>> round(filled_with(forty, 0.2e-3, "nylon").length.middle)
    800
    """
    if not diameter > 0:
        raise ValueError(f"diameter: more than 0 is accepted; got {diameter}")
    before = capacity.conditions.get("line_diameter")
    if not isinstance(before, float):
        raise ValueError("capacity: a prediction with its line_diameter is accepted; got one without")
    known = line_material(material)
    length = _times(capacity, (before / diameter) ** 2, (before / diameter) ** 2)
    words = f"a {known.title} of {quantities.show(diameter, 'length', system)}"
    kept = (why for why in length.rests_on if not why.endswith("as an example"))
    length = replace(length, conditions={"line_diameter": diameter}, rests_on=(*kept, words))
    area = pi * diameter**2 / 4
    mass = _times(length, area * known.density.low, area * known.density.high)
    how = f"density {quantities.show_interval(known.density.low, known.density.high, 'density', system)}"
    mass = replace(mass, quantity="mass of the line", dimension="mass")
    mass = replace(mass, rests_on=(*length.rests_on, f"{how} ({known.density.how})"))
    return Filled(length, mass, known.note)


def _times(value: Predicted, low: float, high: float) -> Predicted:
    middle = (low + high) / 2
    return replace(
        value,
        middle=value.middle * middle,
        low=value.low * low,
        high=value.high * high,
        deviation=value.deviation * middle,
    )
