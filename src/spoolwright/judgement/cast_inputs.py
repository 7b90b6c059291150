"""From a reel, its state and a throw to the arguments of a cast, draw by draw."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from math import inf, pi, sin

import numpy as np

from spoolwright.judgement import free_spin
from spoolwright.judgement.brake_setting import BRAKE_DRAWS, ReelBrakes, brakes_of
from spoolwright.judgement.monte_carlo import Distribution, Sample, Triangular
from spoolwright.judgement.reel_state import ReelState
from spoolwright.judgement.spool_drag import SPOOL_DRAWS, SpoolDrag, spool_drag
from spoolwright.judgement.throw import EXAMPLE_LINE, THROW_DRAWS, Throw, Thrown, thrown
from spoolwright.mechanics import brakes, spool
from spoolwright.sheets.reel_sheet import ReelSheet

LIP_DRAWS: Mapping[str, Distribution] = {"lip_rubbing": Triangular(0.05, 0.15)}
"""Friction of line on the polished lip of a fixed spool (nylon or polyethylene on ceramic, from memory)."""

CAST_DRAWS: Mapping[str, Distribution] = {**THROW_DRAWS, **BRAKE_DRAWS, **SPOOL_DRAWS, **LIP_DRAWS}
"""Everything that is not known of a cast besides the reel itself."""

LEAST_LEVEL = 0.5e-3
MEAN_SQUARE = 0.5
"""Of the square of a cast's speed over its length, to that at the release: judgement prior."""
THUMB = 3.0
"""How much harder than needed at the release a thumb can press: judgement prior."""


@dataclass(frozen=True, eq=False)
class CastInputs:
    """Arguments of a cast that do not depend on how the brake is set, each an array `(n,)` or a number.

    `brakes` at their hardest, `drag` of the spool without them, `lip_slack`: the slack at which the loose
    turns of the top layer stand as high as the spool's lip [m]; `gum`: drag of the bearings over that of
    sound ones, the middle of what is known.
    """

    plain: Mapping[str, Sample | float]
    drag: SpoolDrag
    brakes: ReelBrakes
    thumb_force: Sample
    lip_slack: float
    variant: str
    gum: float = 1.0

    def arguments(self, share: float, constant: float | None = None) -> dict[str, Sample | float]:
        """Arguments of mechanics.cast, the brake at a share of its hardest or a measured one in its place."""
        held = self.drag
        thumb = not self.brakes.has_any and constant is None
        return {
            **self.plain,
            "bearing_constant": held.bearing_constant,
            "bearing_viscous": held.bearing_viscous + held.train_viscous,
            "bearing_quadratic": held.train_quadratic,
            "level_wind_torque": held.train_constant,
            "windage": held.windage,
            "brake_magnetic": self.brakes.magnetic * share if constant is None else constant,
            "brake_centrifugal": self.brakes.centrifugal * share if constant is None else 0.0,
            "thumb_force": self.thumb_force if thumb else 0.0,
            "slack_limit": self.lip_slack / 2 if thumb else inf,
        }

    def with_drag(self, drag: SpoolDrag) -> CastInputs:
        """The same with another drag of the spool."""
        return replace(self, drag=drag)

    def with_plain(self, **changed: Sample | float) -> CastInputs:
        """The same with other plain arguments."""
        return replace(self, plain={**self.plain, **changed})

    @cached_property
    def middle(self) -> CastInputs:
        """The cast in the middle of all drawn: each argument its median, arrays of one."""
        held = replace(
            self.brakes, centrifugal=_one(self.brakes.centrifugal), magnetic=_one(self.brakes.magnetic)
        )
        names = SpoolDrag.__dataclass_fields__
        drag = SpoolDrag(**{name: _one(getattr(self.drag, name)) for name in names})
        plain = {name: _one(value) for name, value in self.plain.items()}
        return replace(self, plain=plain, drag=drag, brakes=held, thumb_force=_one(self.thumb_force))


def _one(value: Sample | float) -> Sample:
    return np.array([float(np.median(value)) if isinstance(value, np.ndarray) else value])


def diameter_of(throw: Throw, measured: float | None) -> float:
    """The line's diameter: as asked, else as measured on this reel, else an example.

    Parameters
    ----------
    throw : Throw
        The throw **[SI]**.
    measured : float or None
        A reading of this reel's line **[m]**.

    Returns
    -------
    float
        Diameter **[m]**.

    Source
    ------
    The example is a judgement prior.

    Examples
    --------
    >>> diameter_of(Throw(0.150, 60.0), None)
    0.0003
    """
    return throw.diameter or measured or EXAMPLE_LINE


def cast_inputs(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], throw: Throw, diameter: float
) -> CastInputs:
    """The arguments of a cast for every draw.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    state : ReelState
        State of the reel **[SI]**.
    draws : mapping of str to array
        CAST_DRAWS and those of the reel (narrowing.then), shape `(n,)` **[SI]**.
    throw : Throw
        The throw **[SI]**.
    diameter : float
        Diameter of the line **[m]**.

    Returns
    -------
    CastInputs
        Arguments in SI.

    Notes
    -----
    The line left on the spool at this fill gives its length and the radius from which the cast begins. A
    reel without brakes is held by a thumb that presses three times as hard as is needed at the release, from
    half of the slack that the lip allows. A fixed spool's lip takes mu v^2 (e^(f bend) - 1), the line turning
    through a right angle and the rise from the fill to the lip.

    Source
    ------
    docs/derivations/cast_case.md.

    Examples
    --------
    >>> from spoolwright.judgement.narrowing import know
    >>> from spoolwright.judgement.monte_carlo import draw
    >>> from spoolwright.sheets import reel_sheet
    >>> known = know(reel_sheet.load("tarvak-58r"), {}, samples=200, seed=1)
    >>> draws = {**known.draws, **draw(CAST_DRAWS, samples=200, seed=2)}
    >>> found = cast_inputs(known.sheet, known.state, draws, Throw(0.150, 55.0), 0.3e-3)
    >>> found.variant, bool(np.all(found.plain["line_length"] > 300.0))
    ('multiplier', True)
    """
    room, packing = sheet.spool, draws["packing"]
    flies = thrown(throw, draws)
    whole = spool.line_length(room.arbor_radius, room.full_radius, room.width, diameter, packing)
    length = np.asarray(whole * throw.fill)
    start = np.asarray(spool.fill_radius(room.arbor_radius, length, room.width, diameter, packing))
    inertia = np.asarray(free_spin.bare_inertia(sheet) * draws["inertia_factor"])
    plain: dict[str, Sample | float] = {
        "payload_mass": throw.payload,
        "payload_drag_area": flies.drag_area,
        "release_speed": flies.speed,
        "release_angle": throw.angle,
        "release_height": throw.height,
        "wind": throw.wind,
        "spool_inertia": inertia,
        "full_radius": start,
        "arbor_radius": room.arbor_radius,
        "spool_width": room.width,
        "packing": packing,
        "line_diameter": diameter,
        "line_density": flies.line_density,
        "line_length": length,
        "line_drag": flies.line_drag,
    }
    radius = float(np.median(start))
    is_fixed = sheet.reel.kind == "fixed spool"
    if is_fixed:
        plain["lip_friction"] = _lip(sheet, radius, diameter, flies, draws["lip_rubbing"])
    return CastInputs(
        plain=plain,
        drag=spool_drag(sheet, state, draws, throw.speed / radius),
        brakes=brakes_of(sheet, draws),
        thumb_force=_thumb(throw, flies, plain),
        lip_slack=lip_slack(sheet, diameter, radius),
        variant="fixed spool" if is_fixed else "multiplier",
        gum=float(np.median(draws["bearing_condition"])),
    )


def _thumb(throw: Throw, flies: Thrown, plain: Mapping[str, Sample | float]) -> Sample:
    """Force of a thumb on the rim [N]: THUMB times what keeps the line tight as the payload leaves."""
    radius = np.asarray(plain["full_radius"])
    density, packing = flies.line_density, plain["packing"]
    arbor, width = plain["arbor_radius"], plain["spool_width"]
    line = spool.line_inertia(arbor, radius, width, density, packing)
    slowing = free_spin.GRAVITY * sin(throw.angle) + 0.6 * flies.drag_area * flies.speed**2 / throw.payload
    torque = brakes.holding_torque(
        plain["spool_inertia"] + line, flies.speed, slowing, radius, plain["line_diameter"], width, packing
    )
    return np.asarray(THUMB * torque / radius)


def _lip(sheet: ReelSheet, radius: float, diameter: float, flies: Thrown, rubbing: Sample) -> Sample:
    """Pull that the lip of a fixed spool takes [N]: the line runs up from the fill and turns forward."""
    depth = max(sheet.spool.flange_diameter / 2 - radius, 0.0)
    bend = pi / 2 + np.arctan2(depth, sheet.spool.width / 2)
    heavy = flies.line_density * pi * diameter**2 / 4
    return np.asarray(heavy * MEAN_SQUARE * flies.speed**2 * (np.exp(rubbing * bend) - 1.0))


def lip_slack(sheet: ReelSheet, diameter: float, radius: float) -> float:
    """Slack at which the loose turns of the top layer stand as high as the spool's lip: the over-run begins.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    diameter : float
        Diameter of the line **[m]**.
    radius : float
        Radius of the line's top at the release **[m]**.

    Returns
    -------
    float
        Slack **[m]**.

    Notes
    -----
    2 pi (width / diameter) (lip - radius), the slack spread evenly over the turns of one layer; half a
    millimetre of room at least. A real over-run begins with one turn that jumps, so this is a guess.

    Source
    ------
    Geometry; that the top layer takes the slack is a judgement prior.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-58r")
    >>> round(lip_slack(sheet, 0.30e-3, sheet.spool.full_radius), 2)
    1.38
    """
    room = max(sheet.spool.flange_diameter / 2 - radius, LEAST_LEVEL)
    return 2 * pi * sheet.spool.width / diameter * room
