"""What is asked of the reel: what is thrown, how, into which wind, on which line; and how sure that is."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import radians

import numpy as np

from spoolwright.judgement.brake_setting import SET_FOR_SLACK, BrakeSetting
from spoolwright.judgement.monte_carlo import Distribution, Sample, Triangular
from spoolwright.sheets.lines import line_material
from spoolwright.sheets.payloads import PayloadShape, payload_shape
from spoolwright.sheets.sourced import Sourced

EXAMPLE_LINE = 0.30e-3
"""Diameter that is taken where nobody says one [m]."""

LIMITS = {
    "payload": (0.001, 2.0, "1 g to 2 kg"),
    "speed": (2.0, 150.0, "2 m/s to 150 m/s"),
    "angle": (0.0, radians(80.0), "0 deg to 80 deg"),
    "wind": (-30.0, 30.0, "-30 m/s (in the face) to 30 m/s (from behind)"),
    "height": (0.0, 100.0, "0 m to 100 m"),
    "diameter": (0.05e-3, 2e-3, "0.05 mm to 2 mm"),
    "fill": (0.05, 1.0, "5 % to 100 % of the full spool"),
}
"""What a throw may be: least, most, and in words."""

THROW_DRAWS: Mapping[str, Distribution] = {
    "throw_factor": Triangular(0.95, 1.05),
    "shape_density": Triangular(-1.0, 1.0),
    "shape_area": Triangular(-1.0, 1.0),
    "shape_drag": Triangular(-1.0, 1.0),
    "line_drag": Triangular(0.003, 0.006),
    "line_density": Triangular(-1.0, 1.0),
}
"""What is not known of a throw. throw_factor: how alike one caster's throws are, judgement prior. line_drag:
two to three times a flat plate's skin friction, to be calibrated. The others place a value between the ends
of its published range."""


@dataclass(frozen=True)
class Throw:
    """One throw. `speed` is that of the payload once the spool turns in step with the line [m/s].

    `payload` [kg] and its `shape` (sheets/payloads.toml); `angle` above the horizon [rad]; `wind` from behind
    [m/s]; `height` of the release over the water [m]; `line` (sheets/lines.toml) and its `diameter` [m], None
    for the measured one or an example; `fill`, the share of the full spool's line; the brake as it is set.
    """

    payload: float
    speed: float
    shape: str = "bomb lead"
    angle: float = radians(40.0)
    wind: float = 0.0
    height: float = 2.0
    line: str = "nylon"
    diameter: float | None = None
    fill: float = 1.0
    brake: BrakeSetting = SET_FOR_SLACK

    def __post_init__(self) -> None:
        payload_shape(self.shape)
        line_material(self.line)
        for name, (low, high, words) in LIMITS.items():
            value = getattr(self, name)
            if value is not None and not low <= value <= high * (1 + 1e-9):
                raise ValueError(f"{name}: {words} is accepted; got {value:g}")


@dataclass(frozen=True)
class Thrown:
    """The same in numbers for every draw, each of shape `(n,)`, SI."""

    speed: Sample
    drag_area: Sample
    line_drag: Sample
    line_density: Sample


def thrown(throw: Throw, draws: Mapping[str, Sample]) -> Thrown:
    """Speed, drag area and line of a throw, draw by draw.

    Parameters
    ----------
    throw : Throw
        The throw **[SI]**.
    draws : mapping of str to array
        THROW_DRAWS **[-]**, each of shape `(n,)`.

    Returns
    -------
    Thrown
        Arrays of shape `(n,)` in SI.

    Notes
    -----
    drag area = Cd form (m / density)^(2/3).

    Source
    ------
    sheets/payloads.toml and sheets/lines.toml, each range with its own.

    Examples
    --------
    >>> from spoolwright.judgement.monte_carlo import draw
    >>> area = thrown(Throw(0.150, 60.0), draw(THROW_DRAWS, samples=100, seed=1)).drag_area
    >>> bool(5e-5 < np.median(area) < 3e-4)
    True
    """
    shape = payload_shape(throw.shape)
    material = line_material(throw.line)
    return Thrown(
        speed=np.asarray(throw.speed * draws["throw_factor"]),
        drag_area=_drag_area(throw.payload, shape, draws),
        line_drag=draws["line_drag"],
        line_density=_within(material.density, draws["line_density"]),
    )


def _drag_area(mass: float, shape: PayloadShape, draws: Mapping[str, Sample]) -> Sample:
    volume = mass / _within(shape.density, draws["shape_density"])
    area = _within(shape.area_form, draws["shape_area"]) * volume ** (2 / 3)
    return np.asarray(area * _within(shape.drag, draws["shape_drag"]))


def _within(known: Sourced, place: Sample) -> Sample:
    """A value of a range, its place given from -1 at the low end to 1 at the high one."""
    return np.asarray(known.middle + place * (known.high - known.low) / 2)


def usual_throw(kind: str) -> Throw:
    """A throw as such a reel is often asked for, where nobody says which.

    Parameters
    ----------
    kind : str
        Kind of reel, as its sheet names it **[-]**.

    Returns
    -------
    Throw
        Payload, speed and line in SI.

    Source
    ------
    Judgement priors; no release speed of a cast was found measured anywhere.

    Examples
    --------
    >>> usual_throw("low-profile multiplier").payload < usual_throw("round multiplier").payload
    True
    """
    return _USUAL.get(kind, _USUAL["round multiplier"])


_USUAL = {
    "round multiplier": Throw(0.120, 45.0, diameter=0.30e-3),
    "low-profile multiplier": Throw(0.015, 26.0, shape="wobbler", diameter=0.25e-3),
    "lever drag": Throw(0.200, 30.0, diameter=0.50e-3),
    "fixed spool": Throw(0.060, 40.0, diameter=0.25e-3),
    "fly": Throw(0.010, 20.0, shape="wobbler", diameter=0.25e-3),
}
