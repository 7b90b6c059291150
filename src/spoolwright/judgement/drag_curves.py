"""What pull each cause would give at each setting: many draws of one reel's clamp force and friction."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.judgement import drag_train
from spoolwright.judgement.drag_faults import Cause, Setup
from spoolwright.judgement.monte_carlo import Distribution, Rectangular, Sample, Triangular, draw
from spoolwright.judgement.reel_state import ReelState, as_built
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Drag

SHAPES, LEVERAGES = 900, 64
"""Draws of how the clamp grows, and of friction times radius: each of the first meets each of the second."""

HEIGHTS = 12
"""Steps in which a spring's lost height is drawn, because each needs its own curve."""

MORE, FRICTIONS = 3, 3
"""So many times the draws for a cause that loses height, where more is open; and the frictions that each
clamp curve is tried with."""


@dataclass(frozen=True)
class Leverage:
    """Pull for one newton of clamp force **[-]** and the friction behind it **[-]**; shape `(m,)`, rising."""

    pull: Sample
    friction: Sample


@dataclass(frozen=True)
class Curves:
    """What one cause makes of a drag; draws of shape `(n,)`, clamp forces of shape `(n, settings)`.

    `now` and `then`: clamp force times what is left of the friction **[N]**, at the settings of this series
    and of an earlier one; `clamp` without friction **[N]**. `start_ratio` **[-]**; `lost` of the stack's
    thickness **[m]**; `friction` left as a share **[-]**.
    """

    now: NDArray[np.float64]
    then: NDArray[np.float64]
    clamp: NDArray[np.float64]
    start_ratio: Sample
    lost: Sample
    friction: Sample


@dataclass(frozen=True)
class Settings:
    """Where the drag stood: settings now and in an earlier series **[turns]**; `felt`: free found by feel."""

    now: Sequence[float]
    then: Sequence[float] = ()
    felt: bool = False


def leverage(sheet: ReelSheet, radius: float, seed: int = 1) -> Leverage:
    """Pull for each newton of clamp force, for a sound reel of this model.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**, with a drag.
    radius : float
        Radius where the line leaves **[m]**, above 0.
    seed : int
        Start of the generator **[-]**.

    Returns
    -------
    Leverage
        64 values that stand for as many equal parts of the distribution **[-]**.

    Raises
    ------
    ValueError
        The radius is not above 0.

    Notes
    -----
    sum over the slipping pairs of friction * effective radius / (gear ratio * radius at the line).

    Source
    ------
    Plate clutch, mechanics.clutch; friction from materials.toml, each range with its mark.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> found = leverage(reel_sheet.load("tarvak-54c"), 0.02)
    >>> found.pull.shape, bool(found.pull[0] < found.pull[-1])
    ((64,), True)
    """
    if not radius > 0:
        raise ValueError(f"radius: above 0 is accepted; got {radius}")
    state = as_built(sheet)
    drawn = draw(_frictions(state), samples=20 * LEVERAGES, seed=seed)
    pull = drag_train.spool_torque(sheet, state, drawn, np.ones(20 * LEVERAGES)) / radius
    order = np.argsort(pull).reshape(LEVERAGES, 20)
    friction = _mean_friction(state, drawn)
    return Leverage(pull[order].mean(axis=1), friction[order].mean(axis=1))


def _frictions(state: ReelState) -> dict[str, Distribution]:
    faces: dict[str, Distribution] = {
        drag_train.friction_name(p.face_material, p.lubrication): Triangular(p.friction.low, p.friction.high)
        for p in state.pairs
    }
    condition = state.ranges["drag_condition"].distribution
    return faces | {"face": Rectangular(0.0, 0.5), "drag_condition": condition}


def _mean_friction(state: ReelState, drawn: Mapping[str, Sample]) -> Sample:
    names = [drag_train.friction_name(p.face_material, p.lubrication) for p in state.pairs]
    return np.asarray(np.mean([drawn[name] for name in names], axis=0) * drawn["drag_condition"])


def curves(sheet: ReelSheet, cause: Cause, at: Settings, setup: Setup, seed: int = 1) -> Curves:
    """What a drag with this cause would clamp at each setting.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**, with a drag.
    cause : Cause
        What is wrong, with its ranges **[-]**.
    at : Settings
        Where the drag stood **[turns]**.
    setup : Setup
        How exactly a drag is set **[turns, shares]**.
    seed : int
        Start of the generator **[-]**.

    Returns
    -------
    Curves
        2700 draws **[N]**, three times as many where springs may have lost height.

    Notes
    -----
    travel = turns * pitch = loose + thickness lost + height lost + deflection of the springs + give of the
    stack; the hand on the star caps the clamp force. Where "free" was found by feel, the loose part is what
    the feel left, and nothing that is lost shows. The earlier series is of the same reel, sound.

    Source
    ------
    EN 16984 for the springs, screw statics for the hand; what is not known of them: judgement priors.

    Examples
    --------
    >>> from spoolwright.judgement.drag_faults import causes, setup
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-54c")
    >>> made = curves(sheet, causes()["sound"], Settings((1.0, 4.0)), setup())
    >>> made.now.shape, bool(made.now[:, 1].mean() > made.now[:, 0].mean())
    ((2700, 2), True)
    """
    assert sheet.drag is not None
    drag, state = sheet.drag, as_built(sheet)
    count = SHAPES * (MORE if cause.lost_height[1] > 0 else 1)
    drawn = draw(_unknown(state, cause), samples=count, seed=seed + 1)
    drawn["take_up"] = _evenly(count, seed)
    lost = _lost_thickness(drag, cause, setup, count, seed)
    heights = np.linspace(*cause.lost_height, HEIGHTS if cause.lost_height[1] > 0 else 1)
    level = np.arange(count) % len(heights)
    now = np.empty((count, len(at.now)))
    for step, height in enumerate(heights):
        mine = np.flatnonzero(level == step)
        part = {name: values[mine] for name, values in drawn.items()}
        now[mine] = _clamp(drag, float(height), at.now, part, np.maximum(lost[mine], 0.0), at.felt, setup)
    sound = {**drawn, "weakened": np.ones(count)}
    then = _clamp(drag, 0.0, at.then, sound, np.zeros(count), at.felt, setup)
    return _with_friction(state, cause, setup, (now, then, lost), seed)


def _with_friction(
    state: ReelState,
    cause: Cause,
    setup: Setup,
    shapes: tuple[NDArray[np.float64], NDArray[np.float64], Sample],
    seed: int,
) -> Curves:
    """Each clamp curve with several frictions: a curve costs far more to draw than a friction."""
    now, then, lost = (np.repeat(part, FRICTIONS, axis=0) for part in shapes)
    count = len(lost)
    rng = np.random.default_rng(seed + 3)
    low, high = cause.friction
    friction = (low + (high - low) * _evenly(count, seed + 6)) * _pairs_left(state, cause, count, seed)
    day = rng.normal(1.0, setup.day_to_day, count) if then.shape[1] else np.ones(count)
    start = draw(_starts(state, cause), samples=count, seed=seed + 7)
    left = (friction * day)[:, np.newaxis]
    return Curves(now * left, then, now, start["start"] * start["start_times"], lost, friction)


def _starts(state: ReelState, cause: Cause) -> dict[str, Distribution]:
    held = state.ranges["start_up_ratio"].distribution
    return {"start": held, "start_times": Rectangular(*cause.start_ratio)}


def _unknown(state: ReelState, cause: Cause) -> dict[str, Distribution]:
    return {
        "hand": Triangular(0.85, 1.15),
        "thread_friction": Triangular(0.8, 1.25),
        "spring_force": state.ranges["spring_force"].distribution,
        "weakened": Rectangular(*cause.spring_force),
        "felt": Rectangular(0.0, 1.0),
    }


def _evenly(samples: int, seed: int) -> Sample:
    """Every part of the range once, in a random order: far less noise than drawing."""
    return np.random.default_rng(seed + 2).permutation((np.arange(samples) + 0.5) / samples)


def _lost_thickness(drag: Drag, cause: Cause, setup: Setup, count: int, seed: int) -> Sample:
    discs = friction_thickness(drag)
    rng = np.random.default_rng(seed + 4)
    tolerance = rng.normal(0.0, setup.new_thickness * discs, count)
    return np.asarray(discs * rng.uniform(*cause.lost_thickness, count) + tolerance)


def friction_thickness(drag: Drag) -> float:
    """Thickness of all friction discs of a stack together, new.

    Parameters
    ----------
    drag : Drag
        Drag table of a reel sheet **[SI]**.

    Returns
    -------
    float
        Thickness **[m]**; that of the whole stack where no disc is loose.

    Source
    ------
    The reel sheet.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> round(1000 * friction_thickness(reel_sheet.load("tarvak-54c").drag), 3)
    4.8
    """
    loose = [washer.thickness for washer in drag.stack if washer.turns_with == "neither"]
    return float(sum(loose or [washer.thickness for washer in drag.stack]))


def _pairs_left(state: ReelState, cause: Cause, count: int, seed: int) -> Sample:
    """Share of the slipping pairs that are left: one lost pair counts twice as often as two."""
    pairs = len(state.pairs)
    lost = [count for count in cause.pairs if count < pairs]
    if not lost:
        return np.ones(count)
    weight = np.array([0.5**k for k in range(len(lost))])
    chosen = np.random.default_rng(seed + 5).choice(lost, count, p=weight / weight.sum())
    return np.asarray((pairs - chosen) / pairs)


def _clamp(
    drag: Drag,
    lost_height: float,
    settings: Sequence[float],
    drawn: Mapping[str, Sample],
    lost: Sample,
    felt: bool,
    setup: Setup,
) -> NDArray[np.float64]:
    way = drag_train.travel(drag)
    springs = drag.springs
    low = springs.cone_height * (1 - lost_height)
    weak = drag_train.travel(
        drag.model_copy(update={"springs": springs.model_copy(update={"cone_height": low})})
    )
    loose = way.spare * drawn["take_up"]
    shift = loose + lost + len(springs.nests) * lost_height * springs.cone_height
    if felt:
        shift = drawn["felt"] * way.per_turn * (setup.felt_way if drag.lever else setup.felt)
    give = (way.spare - loose) * way.gives
    share = weak.force / way.force[-1]
    used = weak.deflection + give[:, np.newaxis] * share
    cap = drag_train.clamp_by_hand(drag, drawn)
    made = np.empty((len(lost), len(settings)))
    for place, turns in enumerate(settings):
        wanted = np.maximum(turns * way.per_turn - shift, 0.0)
        force = _along(used, wanted, weak.force) * drawn["spring_force"] * drawn["weakened"]
        made[:, place] = np.minimum(force, cap)
    return made


def _along(used: NDArray[np.float64], wanted: Sample, force: Sample) -> Sample:
    """Force at the travel that is wanted, each draw on its own curve; beyond its end the end."""
    at = np.clip((used < wanted[:, np.newaxis]).sum(axis=1), 1, used.shape[1] - 1)
    row = np.arange(len(at))
    before, beyond = used[row, at - 1], used[row, at]
    part = np.clip((wanted - before) / (beyond - before), 0.0, 1.0)
    return np.asarray(force[at - 1] + part * (force[at] - force[at - 1]))
