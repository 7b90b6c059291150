"""What do this reel's readings say about what is not known of it? Draws that agree with them are kept."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright import quantities
from spoolwright.judgement import drag_train, free_spin
from spoolwright.judgement.monte_carlo import (
    Distribution,
    Normal,
    Rectangular,
    Sample,
    Triangular,
    draw,
    effective,
    resample,
    weights_for,
)
from spoolwright.judgement.reel_state import ReelState
from spoolwright.judgement.taken import Taken
from spoolwright.sheets.reel_sheet import ReelSheet

POOL = 24_000
"""Draws made before readings choose among them."""

ENOUGH = 150.0
"""Effective draws that readings must leave; where fewer are left, the weights are softened."""

MISFIT = 9.0
"""Squared misfit a reading of the best draw, beyond which sheet and readings are said to disagree."""

DISAGREE = (
    "The readings and the reel sheet hardly agree: look for a wrong radius, a wrong washer, another model or "
    "another lubricant before promising anything."
)

DRAG_DRAWS: Mapping[str, Distribution] = {
    "hand": Triangular(0.85, 1.15),
    "thread_friction": Triangular(0.8, 1.25),
    "face": Rectangular(0.0, 0.5),
    "take_up": Rectangular(0.0, 1.0),
    "line_scatter": Normal(0.0, 1.0),
}
"""What is not known of a drag besides its friction: judgement priors. face: 0 run in, 1 even pressure."""

DAY_TO_DAY = {
    "pull_full": 0.03,
    "pull_run": 0.03,
    "pull_start": 0.05,
    "drag_torque": 0.03,
    "start_up_ratio": 0.03,
    "judder": 0.15,
    "spin_time": 0.08,
    "end_float": 0.1,
    "handle_torque": 0.15,
}
"""How far the same reel, read again on another day, comes out differently, as a share: judgement prior."""


@dataclass(frozen=True)
class Narrowed:
    """Draws for the reel as it is and as the works would leave it, and what the readings did to them."""

    before: Mapping[str, Sample]
    after: Mapping[str, Sample]
    used: tuple[Taken, ...]
    notes: tuple[str, ...]


def narrow(
    sheet: ReelSheet,
    before: ReelState,
    after: ReelState,
    taken: Sequence[Taken],
    *,
    samples: int,
    seed: int,
) -> Narrowed:
    """Draw both states, weigh the draws by how well they explain the readings, keep the ones that do.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    before : ReelState
        The reel as the readings found it.
    after : ReelState
        The reel as the works would leave it; ranges no work touches are drawn once for both.
    taken : sequence of Taken
        Readings with their conditions **[SI]**; a pull counts only where its radius and star are known.
    samples : int
        How many draws to keep **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**.

    Returns
    -------
    Narrowed
        Draws by name, each of shape `(samples,)`, the readings that counted and notes in words.

    Raises
    ------
    ValueError
        Fewer than 100 samples.

    Notes
    -----
    Weight of a draw = product of normal likelihoods, each with the reading's own uncertainty and the
    day-to-day scatter of that kind. Where not even the best draw explains them, a note
    says so.

    Source
    ------
    JCGM 101:2008 for the draws; Bayes' rule for the weights.

    Examples
    --------
    >>> from spoolwright.judgement.reel_state import as_built
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> kept = narrow(sheet, as_built(sheet), as_built(sheet), (), samples=500, seed=1)
    >>> kept.before["felt, greased"].shape
    (500,)
    """
    pool = max(samples, POOL) if taken else samples
    drawn = draw(_inputs(before, after), samples=pool, seed=seed)
    weights, used, notes = _weigh(sheet, before, drawn, taken)
    if weights:
        kept = {block: _keep(found, samples, seed) for block, found in weights.items()}
        rest = np.arange(samples)
        drawn = {name: values[kept.get(_block(name), rest)] for name, values in drawn.items()}
    return Narrowed(_plain(drawn), {**_plain(drawn), **_changed(drawn)}, used, notes)


def _weigh(
    sheet: ReelSheet, before: ReelState, drawn: Mapping[str, Sample], taken: Sequence[Taken]
) -> tuple[dict[str, Sample], tuple[Taken, ...], tuple[str, ...]]:
    """Log-weights by block. Blocks share no draw, so each is narrowed alone, with far fewer draws lost."""
    weights: dict[str, Sample] = {}
    counts: dict[str, int] = {}
    used: list[Taken] = []
    notes: list[str] = []
    for one in taken:
        said = _predicted(sheet, before, drawn, one)
        if isinstance(said, str):
            notes.append(said)
        elif said is not None:
            block = _BLOCK_OF_READING.get(one.kind, one.kind)
            weights[block] = weights.get(block, 0.0) + weights_for(said, one.measured.value, _deviation(one))
            counts[block] = counts.get(block, 0) + 1
            used.append(one)
    if any(-2 * float(np.max(found)) > MISFIT * counts[block] for block, found in weights.items()):
        notes.append(DISAGREE)
    return weights, tuple(used), tuple(notes)


def _keep(weights: Sample, samples: int, seed: int) -> NDArray[np.intp]:
    while effective(weights) < ENOUGH:
        weights = weights / 1.5
    # Shuffled, because systematic resampling leaves neighbours that are copies.
    return np.random.default_rng(seed).permutation(resample(weights, samples, seed))


_BLOCK_OF_READING = {
    **dict.fromkeys(("pull_full", "pull_run", "pull_start", "drag_torque", "start_up_ratio"), "drag"),
    "spin_time": "spin",
}
_SPIN_NAMES = {*free_spin.SPIN_DRAWS, "bearing_condition", "end_drag", "train_drag"}
_ALONE = {"judder", "end_float", "handle_torque", "anti_reverse_slips"}


def _block(name: str) -> str:
    plain = name.removeprefix("then ")
    if plain in _SPIN_NAMES:
        return "spin"
    return plain if plain in _ALONE else "drag"


def _plain(drawn: Mapping[str, Sample]) -> dict[str, Sample]:
    return {name: values for name, values in drawn.items() if not name.startswith("then ")}


def _changed(drawn: Mapping[str, Sample]) -> dict[str, Sample]:
    """Ranges that the works touched, from their own draws, under their plain names."""
    return {name.removeprefix("then "): values for name, values in drawn.items() if name.startswith("then ")}


def _inputs(before: ReelState, after: ReelState) -> dict[str, Distribution]:
    inputs: dict[str, Distribution] = {**DRAG_DRAWS, **free_spin.SPIN_DRAWS}
    for state in (before, after):
        for pair in state.pairs:
            name = drag_train.friction_name(pair.face_material, pair.lubrication)
            inputs[name] = Triangular(pair.friction.low, pair.friction.high)
    for name, held in before.ranges.items():
        inputs[name] = held.distribution
    for name, held in after.ranges.items():
        if held != before.ranges[name]:
            inputs[f"then {name}"] = held.distribution
    return inputs


def _deviation(one: Taken) -> float:
    scatter = DAY_TO_DAY[one.kind] * abs(one.measured.value)
    return float(np.hypot(one.measured.uncertainty, scatter)) or 1e-9


def _predicted(
    sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken
) -> Sample | str | None:
    """What each draw says the reading should have been; words where it cannot be used; None to pass by."""
    if one.kind not in DAY_TO_DAY:
        return None
    if one.kind in _PLAIN:
        return draws[one.kind]
    if one.kind == "spin_time":
        speed = one.number("initial_speed")
        return free_spin.spin_time(sheet, state, draws, line_on=one.word("line") == "on", initial_speed=speed)
    if sheet.drag is None or not state.pairs:
        return None
    return _DRAG_READINGS[one.kind](sheet, state, draws, one)


_PLAIN = ("start_up_ratio", "judder", "end_float", "handle_torque")


def _clamp(sheet: ReelSheet, draws: Mapping[str, Sample], turns: float | None) -> Sample:
    assert sheet.drag is not None
    if turns is None:
        return drag_train.greatest_clamp(sheet.drag, draws, draws["spring_force"])[0]
    return drag_train.clamp_at(sheet.drag, turns, draws, draws["spring_force"])


def _torque(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], turns: float | None) -> Sample:
    return drag_train.spool_torque(sheet, state, draws, _clamp(sheet, draws, turns))


def _full(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken) -> Sample:
    radius = one.number("radius") or sheet.spool.full_radius
    return _torque(sheet, state, draws, None) / radius


def _running(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken) -> Sample | str:
    radius, turns = one.number("radius"), one.number("star_turns")
    if radius is None or turns is None:
        said = quantities.show(one.measured.value, "force")
        return f"The pull of {said} was taken at an unknown radius or star: it says nothing of the friction."
    return _torque(sheet, state, draws, turns) / radius


def _starting(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken) -> Sample | str:
    running = _running(sheet, state, draws, one)
    return running if isinstance(running, str) else running * draws["start_up_ratio"]


def _spool(sheet: ReelSheet, state: ReelState, draws: Mapping[str, Sample], one: Taken) -> Sample:
    return _torque(sheet, state, draws, one.number("star_turns"))


_DRAG_READINGS: Mapping[str, Callable[[ReelSheet, ReelState, Mapping[str, Sample], Taken], Sample | str]] = {
    "pull_full": _full,
    "pull_run": _running,
    "pull_start": _starting,
    "drag_torque": _spool,
}
