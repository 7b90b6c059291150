"""What do this reel's readings say about what is not known of it? Draws that agree with them are kept."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from spoolwright.judgement import drag_train, free_spin
from spoolwright.judgement.book_lessons import (
    NOTHING_LEARNED,
    Learned,
    Lesson,
    Lessons,
    for_state,
    moved_over,
)
from spoolwright.judgement.expected_readings import deviation, expected
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
from spoolwright.judgement.reel_state import ReelState, as_built, as_found
from spoolwright.judgement.taken import Readings, Taken, listed
from spoolwright.sheets.reel_sheet import ReelSheet

POOL = 16_000
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


@dataclass(frozen=True)
class Known:
    """What is known of one reel as it stands: draws that agree with its readings, shape `(samples,)` each."""

    sheet: ReelSheet
    state: ReelState
    draws: Mapping[str, Sample]
    taken: tuple[Taken, ...]
    used: tuple[Taken, ...]
    notes: tuple[str, ...]
    start_speed: float | None
    samples: int
    seed: int
    learned: Lessons = NOTHING_LEARNED


def know(
    sheet: ReelSheet,
    readings: Readings,
    *,
    samples: int,
    seed: int,
    learned: Lessons = NOTHING_LEARNED,
) -> Known:
    """Draw what is not known of a reel, and keep the draws that explain its readings.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken
        Readings with their conditions **[SI]**; none at all: a sound reel of this model is meant. A
        running pull counts only where its radius and star are known.
    samples : int
        How many draws to keep **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**.
    learned : Lessons
        What the shop book has taught **[-]**; nothing: the sheets' own ranges.

    Returns
    -------
    Known
        Draws by name, the readings that counted, and notes in words.

    Raises
    ------
    ValueError
        Fewer than 100 samples.

    Notes
    -----
    Weight of a draw = product of normal likelihoods. Where not even the best draw explains the readings, a
    note says so.

    Source
    ------
    JCGM 101:2008 for the draws; Bayes' rule for the weights.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> know(reel_sheet.load("tarvak-52"), {}, samples=500, seed=1).draws["felt, greased"].shape
    (500,)
    """
    taken = listed(readings)
    state = as_found(sheet) if taken else as_built(sheet)
    speed = next((one.measured.value for one in taken if one.kind == "spin_initial_speed"), None)
    pool = max(samples, POOL) if taken else samples
    drawn = draw(inputs(state, for_state(learned, sheet, state)), samples=pool, seed=seed)
    weights, used, notes = _weigh(sheet, state, drawn, taken, speed)
    kept = {block: _keep(found, samples, seed) for block, found in weights.items()}
    rest = np.arange(samples)
    draws = {name: values[kept.get(_block(name), rest)] for name, values in drawn.items()}
    return Known(sheet, state, draws, taken, used, notes, speed, samples, seed, learned)


def then(known: Known, after: ReelState, sheet: ReelSheet | None = None) -> dict[str, Sample]:
    """The draws for the same reel after some works: what they renew is drawn anew, everything else stays.

    Parameters
    ----------
    known : Known
        The reel as it stands **[SI]**.
    after : ReelState
        The state that the works would leave **[SI]**.
    sheet : ReelSheet or None
        The reel as they would leave it, where they change it **[SI]**.

    Returns
    -------
    dict of str to array
        Draws by name, each of shape `(samples,)`.

    Source
    ------
    JCGM 101:2008, 7.3.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> known = know(reel_sheet.load("tarvak-52"), {}, samples=500, seed=1)
    >>> then(known, known.state)["hand"] is known.draws["hand"]
    True
    """
    before = known.state.ranges
    fresh = {name: held.distribution for name, held in after.ranges.items() if held != before[name]}
    faces = _frictions(after)
    # New discs are of another lot: what the old ones did says nothing of them.
    new_faces = faces if after.new_discs else {n: d for n, d in faces.items() if n not in known.draws}
    was = for_state(known.learned, known.sheet, known.state)
    now = for_state(known.learned, sheet or known.sheet, after)
    anew = _as_learned({**fresh, **new_faces}, now)
    kept = moved_over({n: d for n, d in known.draws.items() if n not in anew}, was, now)
    return {**known.draws, **kept, **draw(anew, samples=known.samples, seed=known.seed + 1)}


def _weigh(
    sheet: ReelSheet,
    state: ReelState,
    drawn: Mapping[str, Sample],
    taken: Sequence[Taken],
    speed: float | None,
) -> tuple[dict[str, Sample], tuple[Taken, ...], tuple[str, ...]]:
    """Log-weights by block. Blocks share no draw, so each is narrowed alone, with far fewer draws lost."""
    weights: dict[str, Sample] = {}
    counts: dict[str, int] = {}
    used: list[Taken] = []
    notes: list[str] = []
    for one in taken:
        said = expected(sheet, state, drawn, one, speed)
        if isinstance(said, str):
            notes.append(said)
        elif said is not None:
            block = _BLOCK_OF_READING.get(one.kind, one.kind)
            weights[block] = weights.get(block, 0.0) + weights_for(said, one.measured.value, deviation(one))
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
    **dict.fromkeys(("spin_time", "stop_time"), "spin"),
}
_SPIN_NAMES = {*free_spin.SPIN_DRAWS, "bearing_condition", "end_drag", "train_drag"}
_ALONE = {"judder", "end_float", "handle_torque", "anti_reverse_slips"}


def _block(name: str) -> str:
    if name in _SPIN_NAMES:
        return "spin"
    return name if name in _ALONE else "drag"


def inputs(state: ReelState, taught: Mapping[str, Lesson] | None = None) -> dict[str, Distribution]:
    """Everything that is not known of a reel in a state, as it is drawn.

    Parameters
    ----------
    state : ReelState
        The state **[SI]**.
    taught : mapping of str to Lesson or None
        Lessons of the shop book by name of draw **[-]**.

    Returns
    -------
    dict of str to Distribution
        By name **[SI]**.

    Source
    ------
    JCGM 101:2008, 6.4; ranges with their marks.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> "felt, greased" in inputs(as_built(reel_sheet.load("tarvak-52")))
    True
    """
    held = {name: known.distribution for name, known in state.ranges.items()}
    drawn = {**DRAG_DRAWS, **free_spin.SPIN_DRAWS, **_frictions(state), **held}
    return _as_learned(drawn, taught or {})


def _as_learned(drawn: Mapping[str, Distribution], taught: Mapping[str, Lesson]) -> dict[str, Distribution]:
    return {name: Learned(one, taught[name]) if name in taught else one for name, one in drawn.items()}


def _frictions(state: ReelState) -> dict[str, Distribution]:
    return {
        drag_train.friction_name(pair.face_material, pair.lubrication): Triangular(
            pair.friction.low, pair.friction.high
        )
        for pair in state.pairs
    }
